package rigside.decide;

/**
 * The differences too small to matter, on the analysis scale (natural log for ratios).
 *
 * @param low the smallest meaningful decrease; finite, below 0
 * @param high the smallest meaningful increase; finite, above 0
 */
public record Band(double low, double high) {

    /**
     * @throws IllegalArgumentException unless low &lt; 0 &lt; high, both finite
     */
    public Band {
        if (!(low < 0 && high > 0) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException(
                    "band from " + low + " to " + high + " must reach from below 0 to above 0");
        }
    }
}
