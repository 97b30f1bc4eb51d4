package rigside.decide;

import java.util.OptionalInt;
import org.apache.commons.math3.special.Erf;

/**
 * How long a plan would have to be for a true difference and spread.
 *
 * <p>The chance of settling at a plan's last look of n rounds is that of a normal mean falling
 * clear of the band's edges by the half width. The last critical value is taken as the t quantile
 * at the tail it has in the present plan, and the spread as seen exactly.
 */
final class Needed {
    private final Rules rules;
    private final double difference;
    private final double spread;
    private final double nominal;

    /**
     * @param difference the true difference, on the analysis scale
     * @param spread the true standard deviation of one value (one difference when paired)
     */
    Needed(Rules rules, double difference, double spread) {
        this.rules = rules;
        this.difference = difference;
        this.spread = spread;
        double[] critical = rules.criticalValues();
        double df = rules.schedule().last().degreesOfFreedom();
        this.nominal = StudentT.upperTail(critical[critical.length - 1], df);
    }

    /**
     * The fewest rounds, more than the present plan has, that settle with this chance.
     *
     * @return empty when more than {@link Forecasts#FARTHEST} would be needed
     */
    OptionalInt rounds(double chance) {
        Schedule.Arms last = rules.schedule().last().arms();
        int low = Math.min(last.reference(), last.other());
        int high = Forecasts.FARTHEST + 1;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (settles(middle) >= chance) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high > Forecasts.FARTHEST ? OptionalInt.empty() : OptionalInt.of(high);
    }

    private double settles(int n) {
        boolean paired = rules.schedule().design() == Schedule.Design.PAIRED;
        double information = paired ? n : n / 2.0;
        double critical = StudentT.upperQuantile(nominal, paired ? n - 1 : 2 * n - 2);
        double scale = spread / Math.sqrt(information);
        double overHigh = (difference - rules.band().high()) / scale;
        double overLow = (difference - rules.band().low()) / scale;
        return settles(overHigh, overLow, critical);
    }

    /** Distances of the true difference from the edges, in standard errors. */
    private double settles(double overHigh, double overLow, double c) {
        double increase = normal(overHigh - c);
        double noIncrease = normal(-overHigh - c);
        double decrease = normal(-overLow - c);
        double noDecrease = normal(overLow - c);
        return switch (rules.matters()) {
            case INCREASE -> increase + noIncrease;
            case DECREASE -> decrease + noDecrease;
            case EITHER -> increase + decrease + Math.max(0, noIncrease + noDecrease - 1);
        };
    }

    private static double normal(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }
}
