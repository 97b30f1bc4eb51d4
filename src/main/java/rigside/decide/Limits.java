package rigside.decide;

/**
 * A lower and an upper limit.
 *
 * @param low the lower limit
 * @param high the upper limit; may be infinite
 */
public record Limits(double low, double high) {}
