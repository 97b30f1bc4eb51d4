package rigside.decide;

/**
 * Everything about one comparison that is fixed before the first value.
 *
 * @param schedule the looks planned
 * @param alpha two-sided error over all looks of this comparison (already divided among comparisons
 *     that share it), in (0, 1)
 * @param exponent of the spending function, above 0
 * @param band what is too small to matter, on the analysis scale
 * @param matters the direction in which a change matters
 * @param resolution the step to which one value is read, on the analysis scale (for ratios the
 *     relative step: step / typical value); 0 when unknown
 */
public record Rules(
        Schedule schedule,
        double alpha,
        double exponent,
        Band band,
        Matters matters,
        double resolution) {

    /**
     * @throws IllegalArgumentException if alpha, exponent or resolution is outside its range
     */
    public Rules {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("alpha " + alpha + " must be in (0, 1)");
        }
        if (!(exponent > 0 && exponent < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("exponent " + exponent + " must be above 0");
        }
        if (!(resolution >= 0 && resolution < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("resolution " + resolution + " must be 0 or more");
        }
    }

    /** Critical values, one a look of the schedule. */
    public double[] criticalValues() {
        return CriticalValues.of(schedule, alpha, exponent);
    }

    /**
     * The standard deviation of what is analysed, from that of one value: sqrt(2) times it for a
     * difference of two values that share nothing, the value itself for independent arms.
     */
    public double analysedSpread(double ofOneValue) {
        return schedule.design() == Schedule.Design.PAIRED ? ofOneValue * Math.sqrt(2) : ofOneValue;
    }

    /**
     * The standard deviation that rounding alone gives to what is analysed; for one value step /
     * sqrt(12), the standard deviation of a uniform distribution one step wide (the idea of
     * Sheppard's correction).
     */
    public double roundingSpread() {
        return analysedSpread(resolution / Math.sqrt(12));
    }

    /**
     * The spread from which on rounding needs no further thought: twice what it gives alone. Below
     * it most values stand on two neighbouring steps, whose own spread is at most sqrt(3) times
     * that of rounding, and their mean may be off by a fair part of a step, always the same way.
     */
    double ampleSpread() {
        return 2 * roundingSpread();
    }

    /**
     * The interval of a look. Its spread is never taken below that of rounding; below {@link
     * #ampleSpread} a whole step is added on each side, the most by which half a step in each of
     * two values can shift their difference ({@code RoundingStudy} plays what it is without).
     *
     * @param estimate of the difference
     * @param spread seen, of one difference or one value
     */
    Interval interval(Schedule.Look look, double estimate, double spread, double critical) {
        double error = Math.max(spread, roundingSpread()) / Math.sqrt(look.information());
        double shift = spread < ampleSpread() ? resolution : 0;
        return new Interval(estimate, error, look.degreesOfFreedom(), critical, shift);
    }
}
