package rigside.rig;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
     */
    public record Behaviour(Level fitFactor, Level inhalation, Level peak) {}

    /**
     * A quantity that varies log-normally.
     *
     * @param median its median
     * @param between standard deviation between donnings, natural-log scale
     * @param within standard deviation within a donning, natural-log scale
     */
    public record Level(double median, double between, double within) {}

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
                new Level(160 * seal, 0.25, 0.15),
                new Level(6 * effort, 0.03, 0.045),
                new Level(110 * effort, 0.04, 0.08));
    }

    Behaviour behaviour(String condition) {
        return conditions.getOrDefault(condition, otherwise);
    }
}
