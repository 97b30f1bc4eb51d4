package rigside.analysis;

import java.util.List;

/**
 * Something in the values that is worth a second look. A flag never acts by itself: nothing is left
 * out because of it.
 *
 * @param kind what was noticed
 * @param reason what was noticed and how likely that is by chance, in one or two plain sentences
 * @param donnings the donnings it is about, rising; empty when it is about all
 * @param whatIf what the comparisons would say without these donnings; empty where leaving
 *     something out answers nothing
 */
public record Flag(Kind kind, String reason, List<Integer> donnings, List<WhatIf> whatIf) {

    public Flag {
        donnings = List.copyOf(donnings);
        whatIf = List.copyOf(whatIf);
    }

    /** What can be noticed. */
    public enum Kind {
        /** A value far from the others (Grubbs). */
        FAR_VALUE,
        /** One trial far from the others of its donning (Grubbs). */
        FAR_TRIAL,
        /** Values drift from round to round. */
        ROUND_TREND,
        /** Values drift from trial to trial within donnings. */
        TRIAL_TREND,
        /** One condition spreads more than the other. */
        SPREAD,
        /** The ambient concentration moved during a donning. */
        AIR_MOVED,
        /** What comes second in a round differs from what comes first. */
        ORDER
    }

    /**
     * One comparison with and without something.
     *
     * @param without what is left out, in words: "without round 4"
     * @param with the comparison as it stands
     * @param then the comparison as it would stand; nothing but a view, since a verdict reached by
     *     choosing values is none
     */
    public record WhatIf(String without, Comparison with, Comparison then) {}
}
