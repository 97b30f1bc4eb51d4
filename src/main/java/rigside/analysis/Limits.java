package rigside.analysis;

/**
 * The two ends of an interval or band on the scale people read: ratios, or differences in the
 * measure's unit.
 *
 * @param low its lower end
 * @param high its upper end; not below {@code low}
 */
public record Limits(double low, double high) {}
