package rigside.protocol;

import java.util.LinkedHashMap;
import java.util.Map;
import rigside.protocol.Plan.Order;
import rigside.protocol.Plan.Until;
import rigside.protocol.PlanReader.DesignWord;
import rigside.protocol.PlanReader.MaskWord;
import rigside.protocol.PlanReader.Replicates;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** How often, in which order, and what is concealed meanwhile. */
final class PlanElements {
    static final Element CONCEAL =
            Element.of(
                    "conceal",
                    "What the tester may not see, and until when. Breathing effort adapts without"
                            + " one's knowing, so a result that is seen changes the next one.",
                    Key.optional(
                            "trial-clock",
                            until(),
                            PlanReader.word(Until.DONNING_ENDS),
                            "Until when the time of a trial is concealed, and all that is made of"
                                    + " times."),
                    Key.optional(
                            "result",
                            until(),
                            PlanReader.word(Until.DONNING_ENDS),
                            "Until when the running result is concealed; what is made of times of"
                                    + " trials waits for the trial clock too, since it tells of them."));

    static final Element PLAN =
            Element.of(
                    "plan",
                    "How many rounds you can afford, in which order conditions are worn, and what"
                            + " is concealed. A round is one donning of each condition. The plan is"
                            + " fixed before the first donning: that is what lets you look after every"
                            + " round without being fooled. 'rigside plan FILE' tells what a plan can"
                            + " be expected to bring.",
                    Key.sometimes(
                            "fewest",
                            new Shape.Whole(Plan.LEAST_ROUNDS, Plan.MOST_ROUNDS),
                            "where conditions are compared",
                            "Rounds before the first verdict; 3 is a good number. Where the design is"
                                    + " independent, values of each condition."),
                    Key.required(
                            "most",
                            new Shape.Whole(Plan.LEAST_ROUNDS, Plan.MOST_ROUNDS),
                            "Rounds after which the plan is used up; not below 'fewest'."),
                    Key.optional(
                            "confidence",
                            Lines.share(
                                    "a percentage from "
                                            + percent(Plan.LEAST_CONFIDENCE)
                                            + " to "
                                            + percent(Plan.MOST_CONFIDENCE),
                                    "95 %"),
                            percent(PlanReader.DEFAULT_CONFIDENCE),
                            "How often all intervals of the plan together hold the truth."),
                    Key.optional(
                            "order",
                            Shape.Word.of(Order.class, PlanElements::meaning),
                            Shape.Word.word(Order.BALANCED),
                            "The order of conditions within a round."),
                    Key.optional(
                            "mask",
                            Shape.Word.of(MaskWord.class, PlanElements::meaning),
                            Shape.Word.word(MaskWord.COMES_OFF),
                            "What becomes of the mask between the conditions of a round."),
                    Key.optional(
                            "conceal",
                            new Shape.Group(CONCEAL),
                            "both until the donning ends",
                            "What the tester may not see yet."),
                    Key.optional(
                            "donning-takes",
                            Lines.TIME,
                            "what its steps add up to",
                            "What one donning costs in time, all but its trials; not less than its"
                                    + " waits and exercises."),
                    Key.optional(
                            "trial-takes",
                            Lines.TIME,
                            "what its parts add up to",
                            "What one trial costs in time, with its rest."),
                    Key.optional(
                            "design",
                            Shape.Word.of(DesignWord.class, PlanElements::meaning),
                            Shape.Word.word(DesignWord.ROUNDS),
                            "How values are set against each other; leave it out unless you know"
                                    + " why."),
                    Key.optional(
                                    "replicates",
                                    Shape.Word.of(Replicates.class, PlanElements::meaning),
                                    Shape.Word.word(Replicates.DONNINGS),
                                    "What counts as one value, where the design is independent.")
                            .with("design"),
                    Key.optional(
                            "share-error-over-measures",
                            new Shape.YesOrNo(),
                            "no",
                            "Whether the confidence covers all deciding measures together: safer,"
                                    + " with wider intervals."),
                    Key.optional(
                            "exponent",
                            new Shape.Numeric(Plan.LEAST_EXPONENT, true, Plan.MOST_EXPONENT),
                            QuantityText.plain(Plan.DEFAULT_EXPONENT),
                            "How the chance of a wrong claim is spent over the rounds: higher"
                                    + " spends it later; leave it out unless you know why."));

    private PlanElements() {}

    private static Shape until() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Until until : Until.values()) {
            words.put(PlanReader.word(until), meaning(until));
        }
        return new Shape.Word(words);
    }

    private static String percent(double share) {
        return QuantityText.plain(share * 100) + " %";
    }

    private static String meaning(Until until) {
        return switch (until) {
            case SHOWN -> "it is never concealed";
            case DONNING_ENDS -> "it is seen when the mask is off again";
            case SESSION_ENDS -> "it is seen when all is over";
        };
    }

    private static String meaning(Order order) {
        return switch (order) {
            case BALANCED ->
                    "each condition comes first, second and so on equally often, otherwise at"
                            + " random";
            case RANDOM -> "drawn anew for every round";
            case AS_LISTED ->
                    "always as in the file: fatigue and a drifting room then leak into the"
                            + " comparison";
        };
    }

    private static String meaning(MaskWord word) {
        return switch (word) {
            case COMES_OFF -> "it comes off and is put on anew for each";
            case STAYS_ON ->
                    "it stays on: conditions are settings tried within one donning, and the result"
                            + " speaks for those only";
        };
    }

    private static String meaning(DesignWord word) {
        return switch (word) {
            case ROUNDS -> "conditions are compared within each round";
            case INDEPENDENT -> "each value stands alone, rounds do not matter";
        };
    }

    private static String meaning(Replicates word) {
        return switch (word) {
            case DONNINGS -> "each donning";
            case TRIALS -> "each trial: the result then speaks for these donnings only";
        };
    }
}
