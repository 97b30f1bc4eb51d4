package rigside.measure;

/**
 * One breath of free breathing, from the beginning of its inhalation to that of the next.
 *
 * @param startSeconds when its inhalation began, on the trace's clock
 * @param seconds its duration
 * @param inhalationSeconds how long its inhalation took
 * @param peakInhalationPa the largest suction, above 0
 * @param peakExhalationPa the largest pressure, above 0
 * @param inhalationIntegral of the suction over the inhalation in Pa s
 * @param exhalationIntegral of the pressure over the rest of the breath in Pa s
 */
public record Breath(
        double startSeconds,
        double seconds,
        double inhalationSeconds,
        double peakInhalationPa,
        double peakExhalationPa,
        double inhalationIntegral,
        double exhalationIntegral) {}
