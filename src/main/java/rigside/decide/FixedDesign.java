package rigside.decide;

import java.util.stream.DoubleStream;

/**
 * What a plan of one look brings, exactly: a fixed number of rounds, and nothing looked at before.
 *
 * <p>Given the sample's standard deviation, S times the true one, the estimate is normal and free
 * of it, so each chance is one integral over S of a normal tail. No meaningful difference either
 * way is the power of two one-sided tests (Owen 1965, A special case of a bivariate non-central
 * t-distribution, Biometrika 52, 437, from memory; here as one integral instead of his Q).
 *
 * @param meaningful chance to settle on a meaningful difference
 * @param noMeaningful chance to settle on no meaningful difference
 */
public record FixedDesign(double meaningful, double noMeaningful) {

    /**
     * The chances for one true difference.
     *
     * @param rules with a schedule of one look
     * @param truth on the analysis scale; finite
     * @param spread the true standard deviation of one value, on the analysis scale; above 0
     * @throws IllegalArgumentException if the rules have more than one look
     */
    public static FixedDesign of(Rules rules, double truth, double spread) {
        if (rules.schedule().looks().size() != 1) {
            throw new IllegalArgumentException(
                    rules.schedule().looks().size() + " looks, must be one");
        }
        Schedule.Look look = rules.schedule().last();
        double analysed = rules.analysedSpread(spread);
        double error = analysed / Math.sqrt(look.information());
        Edges edges =
                new Edges(
                        (rules.band().low() - truth) / error,
                        (rules.band().high() - truth) / error,
                        rules.criticalValues()[0],
                        new SpreadDensity(look.degreesOfFreedom()),
                        // Below what rounding explains nothing settles.
                        rules.roundingSpread() / analysed);
        return switch (rules.matters()) {
            case INCREASE -> new FixedDesign(edges.above(edges.high), edges.below(edges.high));
            case DECREASE -> new FixedDesign(edges.below(edges.low), edges.above(edges.low));
            case EITHER ->
                    new FixedDesign(
                            edges.above(edges.high) + edges.below(edges.low), edges.inside());
        };
    }

    /** The chance to settle. */
    public double settles() {
        return meaningful + noMeaningful;
    }

    /**
     * The band's edges as seen from the truth, in standard errors.
     *
     * @param critical the interval reaches this many times S on each side
     * @param least the smallest S that counts
     */
    private record Edges(
            double low, double high, double critical, SpreadDensity spread, double least) {

        /** The whole interval is above an edge. */
        double above(double edge) {
            return spread.integrate(
                    least,
                    Double.POSITIVE_INFINITY,
                    NoncentralT.turns(critical, -edge),
                    s -> NoncentralT.normalUpper(edge + critical * s));
        }

        /** The whole interval is below an edge. */
        double below(double edge) {
            return new Edges(-high, -low, critical, spread, least).above(-edge);
        }

        /** The whole interval is between the edges: not when it is wider than they are apart. */
        double inside() {
            double[] turns =
                    DoubleStream.of(high, -low)
                            .flatMap(edge -> DoubleStream.of(NoncentralT.turns(critical, edge)))
                            .toArray();
            return spread.integrate(
                    least,
                    (high - low) / (2 * critical),
                    turns,
                    s ->
                            NoncentralT.normalUpper(low + critical * s)
                                    - NoncentralT.normalUpper(high - critical * s));
        }
    }
}
