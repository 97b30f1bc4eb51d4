package rigside.protocol;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.protocol.Plan.Design;
import rigside.protocol.Plan.Order;
import rigside.protocol.Plan.Until;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Shape;
import rigside.yaml.Value;

/** Reads the plan. Unless the file says otherwise: 95 %, rounds in balanced order, concealed. */
final class PlanReader {
    static final double DEFAULT_CONFIDENCE = 0.95;

    private static final Map<String, Until> UNTIL =
            Arrays.stream(Until.values())
                    .collect(
                            Collectors.toMap(
                                    PlanReader::word,
                                    until -> until,
                                    (one, other) -> one,
                                    LinkedHashMap::new));

    /** The two words for a design; which independent one it is, {@code replicates} says. */
    enum DesignWord {
        ROUNDS,
        INDEPENDENT
    }

    /** What becomes of the mask between the conditions of a round. */
    enum MaskWord {
        COMES_OFF,
        STAYS_ON
    }

    enum Replicates {
        DONNINGS,
        TRIALS
    }

    /** What is concealed and until when. */
    private record Conceal(Until trialClock, Until result) {
        static final Conceal DEFAULT = new Conceal(Until.DONNING_ENDS, Until.DONNING_ENDS);
    }

    /**
     * A plan with the places of what other parts of the file are checked against.
     *
     * @param most the most rounds, or values per condition
     * @param donningTakes seconds; absent if not stated
     * @param replicates the word for them; absent if not stated
     * @param ofComparisons the first key given that is for comparisons only; empty if none is
     */
    record Planned(
            Plan plan,
            Value<Integer> most,
            Value<Double> donningTakes,
            Value<?> replicates,
            Optional<String> ofComparisons) {}

    /** What a plan says of comparisons only. */
    private static final List<String> OF_COMPARISONS =
            List.of(
                    "fewest",
                    "exponent",
                    "design",
                    "replicates",
                    "order",
                    "mask",
                    "share-error-over-measures");

    private PlanReader() {}

    /** As a file writes it. */
    static String word(Until until) {
        return (until == Until.SHOWN ? "" : "until-") + Shape.Word.word(until);
    }

    /**
     * @param compares whether there is more than one condition, so that there are looks
     */
    static Value<Planned> read(Fields fields, boolean compares) {
        fields.is(PlanElements.PLAN);
        Value<Integer> fewest =
                (compares ? fields.required("fewest") : fields.optional("fewest"))
                        .whole(Plan.LEAST_ROUNDS, Plan.MOST_ROUNDS);
        Value<Integer> most = fields.required("most").whole(Plan.LEAST_ROUNDS, Plan.MOST_ROUNDS);
        if (fewest.isPresent() && most.isPresent() && most.get() < fewest.get()) {
            most.wrong(
                    "'most' is " + most.get() + ", below 'fewest', which is " + fewest.get(),
                    "write the larger number in 'most'");
        }
        Value<Double> confidence = confidence(fields.optional("confidence"));
        Value<Double> exponent = exponent(fields.optional("exponent"));
        Value<Replicates> replicates = fields.optional("replicates").oneOf(Replicates.class);
        Value<Design> design = design(fields, replicates);
        Value<Order> order = fields.optional("order").oneOf(Order.class);
        Value<MaskWord> mask = mask(fields, design);
        Value<Conceal> conceal = fields.optional("conceal").fields(PlanReader::conceal);
        Value<Boolean> shared = fields.optional("share-error-over-measures").yesOrNo();
        Value<Double> donning = QuantityText.seconds(fields.optional("donning-takes"));
        Value<Double> trial = QuantityText.seconds(fields.optional("trial-takes"));
        return fields.make(
                () ->
                        new Planned(
                                new Plan(
                                        fewest.orElse(Plan.LEAST_ROUNDS),
                                        most.get(),
                                        confidence.orElse(DEFAULT_CONFIDENCE),
                                        exponent.orElse(Plan.DEFAULT_EXPONENT),
                                        design.orElse(Design.ROUNDS),
                                        order.orElse(Order.BALANCED),
                                        conceal.orElse(Conceal.DEFAULT).trialClock(),
                                        conceal.orElse(Conceal.DEFAULT).result(),
                                        mask.orElse(MaskWord.COMES_OFF) == MaskWord.STAYS_ON,
                                        shared.orElse(false),
                                        seconds(donning),
                                        seconds(trial)),
                                most,
                                donning,
                                replicates,
                                OF_COMPARISONS.stream()
                                        .filter(key -> fields.optional(key).isGiven())
                                        .findFirst()));
    }

    private static Value<Double> confidence(Entry entry) {
        return QuantityText.share(entry.line(), "95 %")
                .must(
                        share -> share >= Plan.LEAST_CONFIDENCE && share <= Plan.MOST_CONFIDENCE,
                        share -> "'confidence' is " + QuantityText.plain(share * 100) + " %",
                        "write a percentage from 80 % to 99.9 %, usually 95 %");
    }

    private static Value<Double> exponent(Entry entry) {
        return entry.number()
                .must(
                        power -> power >= Plan.LEAST_EXPONENT && power <= Plan.MOST_EXPONENT,
                        power -> "'exponent' is " + QuantityText.plain(power),
                        "write a number from 0.5 to 5, or delete the line: 2 is good for most"
                                + " plans");
    }

    /** Rounds unless the file says otherwise; independent values are donnings unless it does. */
    private static Value<Design> design(Fields fields, Value<Replicates> replicates) {
        Value<DesignWord> word = fields.optional("design").oneOf(DesignWord.class);
        if (word.orElse(DesignWord.ROUNDS) == DesignWord.ROUNDS) {
            fields.refused(
                    "replicates",
                    "is for 'design: independent'",
                    "delete it: in rounds every donning is compared within its round");
            return word.map(rounds -> Design.ROUNDS);
        }
        return word.map(
                independent ->
                        replicates.orElse(Replicates.DONNINGS) == Replicates.DONNINGS
                                ? Design.INDEPENDENT_DONNINGS
                                : Design.INDEPENDENT_TRIALS);
    }

    /** Within one donning there are no independent values, but rounds. */
    private static Value<MaskWord> mask(Fields fields, Value<Design> design) {
        return fields.optional("mask")
                .oneOf(MaskWord.class)
                .must(
                        word ->
                                word == MaskWord.COMES_OFF
                                        || design.orElse(Design.ROUNDS) == Design.ROUNDS,
                        word -> "the mask stays on, but values are independent",
                        "delete 'design': settings of one donning are compared within it");
    }

    private static Value<Conceal> conceal(Fields fields) {
        fields.is(PlanElements.CONCEAL);
        Value<Until> clock = fields.optional("trial-clock").oneOf(UNTIL);
        Value<Until> result = fields.optional("result").oneOf(UNTIL);
        return fields.make(
                () ->
                        new Conceal(
                                clock.orElse(Until.DONNING_ENDS),
                                result.orElse(Until.DONNING_ENDS)));
    }

    private static OptionalDouble seconds(Value<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
