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
                        new SpreadDensity(look.degreesOfFreedom()));
        double ample = rules.ampleSpread() / analysed;
        // Below what rounding alone gives nothing settles; up to twice that a step is added.
        return edges.chance(rules.matters(), ample, Double.POSITIVE_INFINITY)
                .plus(
                        edges.shifted(rules.resolution() / error)
                                .chance(rules.matters(), ample / 2, ample));
    }

    private FixedDesign plus(FixedDesign other) {
        return new FixedDesign(meaningful + other.meaningful, noMeaningful + other.noMeaningful);
    }

    /** The chance to settle. */
    public double settles() {
        return meaningful + noMeaningful;
    }

    /**
     * The band's edges as seen from the truth, in standard errors.
     *
     * @param critical the interval reaches this many times S on each side
     * @param shift and this much further
     */
    private record Edges(
            double low, double high, double critical, SpreadDensity spread, double shift) {

        Edges(double low, double high, double critical, SpreadDensity spread) {
            this(low, high, critical, spread, 0);
        }

        Edges shifted(double by) {
            return new Edges(low, high, critical, spread, by);
        }

        /** What is settled where S lies between two values. */
        FixedDesign chance(Matters matters, double from, double to) {
            return switch (matters) {
                case INCREASE -> new FixedDesign(above(high, from, to), below(high, from, to));
                case DECREASE -> new FixedDesign(below(low, from, to), above(low, from, to));
                case EITHER ->
                        new FixedDesign(
                                above(high, from, to) + below(low, from, to), inside(from, to));
            };
        }

        /** The whole interval is above an edge. */
        private double above(double edge, double from, double to) {
            double reached = edge + shift;
            return spread.integrate(
                    from,
                    to,
                    NoncentralT.turns(critical, -reached),
                    s -> NoncentralT.normalUpper(reached + critical * s));
        }

        /** The whole interval is below an edge. */
        private double below(double edge, double from, double to) {
            return new Edges(-high, -low, critical, spread, shift).above(-edge, from, to);
        }

        /** The whole interval is between the edges: not when it is wider than they are apart. */
        private double inside(double from, double to) {
            double least = low + shift;
            double most = high - shift;
            double[] turns =
                    DoubleStream.of(most, -least)
                            .flatMap(edge -> DoubleStream.of(NoncentralT.turns(critical, edge)))
                            .toArray();
            return spread.integrate(
                    from,
                    Math.min(to, (most - least) / (2 * critical)),
                    turns,
                    s ->
                            NoncentralT.normalUpper(least + critical * s)
                                    - NoncentralT.normalUpper(most - critical * s));
        }
    }
}
