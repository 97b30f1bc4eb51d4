package rigside.measure;

import java.util.List;

/**
 * The share of the ambient particles that is inside the mask, as an interval.
 *
 * <p>A measured penetration is a point. A mask concentration at or below the counter's detection
 * limit gives the interval from 0 to limit over ambient; a mean over such and measured ones lies in
 * between. Above 1 is possible, by noise or by particles made in the mask.
 *
 * @param low the least it can be, 0 or above; 0 exactly when nothing it is made of was resolved
 * @param high the most it can be, above 0 and at least {@code low}
 */
public record Penetration(double low, double high) {
    /**
     * @throws IllegalArgumentException unless 0 &lt;= low &lt;= high, high above 0 and finite
     */
    public Penetration {
        Check.notNegative("low penetration", low);
        Check.positive("high penetration", high);
        if (!(low <= high)) {
            throw Check.refused(
                    "low penetration", low, "must be at most the high one " + Numbers.plain(high));
        }
    }

    /**
     * Mask over ambient concentration; from 0 to limit over ambient where the mask is at or below
     * the limit. All three in the same unit.
     *
     * @param ambient above 0
     * @param mask 0 or above
     * @param detectionLimit the lowest mask concentration the counter resolves; 0 where none is
     *     stated, which leaves no bound for a mask concentration of 0
     * @throws IllegalArgumentException if one is out of its range, NaN or infinite, or if mask and
     *     detection limit are both 0
     */
    public static Penetration of(double ambient, double mask, double detectionLimit) {
        Check.positive("ambient concentration", ambient);
        Check.notNegative("mask concentration", mask);
        Check.notNegative("detection limit", detectionLimit);
        if (mask > detectionLimit) {
            return new Penetration(mask / ambient, mask / ambient);
        }
        if (detectionLimit == 0) {
            throw Check.refused(
                    "mask concentration",
                    mask,
                    "must be above 0 where no detection limit is known");
        }
        return new Penetration(0, detectionLimit / ambient);
    }

    /** Whether the counter only bounded it, in whole or in part. */
    public boolean bounded() {
        return low < high;
    }

    /** Whether nothing was resolved: every concentration was at or below the detection limit. */
    public boolean unresolved() {
        return low == 0;
    }

    /** One over the penetration; where bounded, the lower bound ("at least"). */
    public double fitFactor() {
        return 1 / high;
    }

    /**
     * The arithmetic mean of the lows and of the highs. The fit factor of it is the harmonic mean
     * of the fit factors: FF = k / (1/FF_1 + ... + 1/FF_k), 29 CFR 1910.134 appendix A, part
     * I.C.2(b)(8) (paragraph number from memory).
     *
     * @param exercises at least one
     * @throws IllegalArgumentException if there is none
     */
    public static Penetration mean(List<Penetration> exercises) {
        if (exercises.isEmpty()) {
            throw new IllegalArgumentException("0 penetrations, must be at least 1");
        }
        double lows = 0;
        double highs = 0;
        for (Penetration exercise : exercises) {
            lows += exercise.low;
            highs += exercise.high;
        }
        return new Penetration(lows / exercises.size(), highs / exercises.size());
    }

    /**
     * The same reading analysed again with what was bounded at half its bound and what was measured
     * as it is: a point, by convention, not a measurement.
     *
     * <p>It is the middle of the interval. A bounded exercise runs from 0 to b and its middle is
     * b/2; a measured one is its own middle; and middles pass through the mean, so the overall
     * value of a donning is halved with no look back at its exercises. Not half the overall: in
     * 1/500 (bounded), 1/250, 1/250 only the first is halved, and at least 300 becomes 333.3.
     */
    public Penetration halved() {
        double middle = low + (high - low) / 2;
        return new Penetration(middle, middle);
    }
}
