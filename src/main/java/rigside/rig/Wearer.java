package rigside.rig;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigside.measure.Dimension;

/**
 * The invented wearer and room behind a simulated rig.
 *
 * @param title what it is, in words
 * @param ambient the particle concentration of the room, 1/m3
 * @param ambientSpread its standard deviation from sample to sample, natural-log scale
 * @param conditions how the wearer fares in each condition, by its id
 * @param otherwise how the wearer fares in a condition not listed
 * @param gauge whether a gauge follows the pressure in the mask, so that pulls and breaths are
 *     traced
 */
public record Wearer(
        String title,
        double ambient,
        double ambientSpread,
        Map<String, Behaviour> conditions,
        Behaviour otherwise,
        boolean gauge) {
    public Wearer {
        conditions = Map.copyOf(conditions);
    }

    /** Without a gauge that is followed. */
    public Wearer(
            String title,
            double ambient,
            double ambientSpread,
            Map<String, Behaviour> conditions,
            Behaviour otherwise) {
        this(title, ambient, ambientSpread, conditions, otherwise, false);
    }

    /**
     * How the wearer fares in one condition.
     *
     * @param fitFactor of a donning
     * @param inhalation time of one inhalation, s
     * @param peak peak inhalation pressure, Pa
     * @param measures what a measure of the protocol gives instead, by its id, SI
     */
    public record Behaviour(
            Level fitFactor, Level inhalation, Level peak, Map<String, Level> measures) {
        public Behaviour {
            measures = Map.copyOf(measures);
        }

        /** Every measure gives what its kind gives. */
        public Behaviour(Level fitFactor, Level inhalation, Level peak) {
            this(fitFactor, inhalation, peak, Map.of());
        }

        /** The same with a measure of its own. */
        public Behaviour with(String measure, Level level) {
            Map<String, Level> more = new TreeMap<>(measures);
            more.put(measure, level);
            return new Behaviour(fitFactor, inhalation, peak, more);
        }
    }

    /**
     * A quantity that varies from donning to donning, and within one.
     *
     * @param median its median
     * @param between standard deviation between donnings, on the scale of {@code scatter}
     * @param within standard deviation within a donning, on the scale of {@code scatter}
     * @param scatter how it varies
     * @param dimension what it is an amount of
     */
    public record Level(
            double median, double between, double within, Scatter scatter, Dimension dimension) {

        /** What varies by amounts never comes nearer to 0 than this share of its median. */
        private static final double LEAST_SHARE = 0.01;

        /** One that varies by factors. */
        public Level(double median, double between, double within, Dimension dimension) {
            this(median, between, within, Scatter.BY_FACTORS, dimension);
        }

        /**
         * A value of it.
         *
         * @param donning a standard normal number of the donning
         * @param once a standard normal number of this value alone
         */
        double value(double donning, double once) {
            double off = between * donning + within * once;
            if (scatter == Scatter.BY_FACTORS) {
                return median * Math.exp(off);
            }
            return median > 0 ? Math.max(LEAST_SHARE * median, median + off) : median + off;
        }
    }

    /** How a quantity varies. */
    public enum Scatter {
        /** Log-normally: its spreads are standard deviations of its natural log. */
        BY_FACTORS,
        /** Normally: its spreads are standard deviations in its SI unit. */
        BY_AMOUNTS
    }

    /**
     * Somebody for a protocol without a rig file of its own: the later conditions seal a little
     * worse and breathe a little harder. The spreads are planning figures: common practice, no
     * source.
     */
    public static Wearer plain(List<String> conditionIds) {
        Map<String, Behaviour> conditions = new TreeMap<>();
        for (int at = 0; at < conditionIds.size(); at++) {
            conditions.put(conditionIds.get(at), plain(Math.pow(0.9, at), Math.pow(1.15, at)));
        }
        return new Wearer("a plain invented wearer", 4e9, 0.03, conditions, plain(1, 1));
    }

    private static Behaviour plain(double seal, double effort) {
        return new Behaviour(
                new Level(160 * seal, 0.25, 0.15, Dimension.NUMBER),
                new Level(6 * effort, 0.03, 0.045, Dimension.TIME),
                new Level(110 * effort, 0.04, 0.08, Dimension.PRESSURE));
    }

    /** How the wearer fares in a condition, listed or not. */
    public Behaviour behaviour(String condition) {
        return conditions.getOrDefault(condition, otherwise);
    }
}
