package rigside.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigside.measure.Counted;

/** What counting particles alone leaves open of the fit factors of a session, in a sentence. */
final class CountingRemark {
    private CountingRemark() {}

    /** About the donning it leaves most open; empty where no volume is known. */
    static Optional<String> of(List<DonningValue> values) {
        return values.stream()
                .filter(value -> value.counts() && value.counting().isPresent())
                .max(Comparator.comparingDouble(value -> width(value.counting().orElseThrow())))
                .map(value -> words(value, value.counting().orElseThrow()));
    }

    private static double width(Counted.Limits limits) {
        return limits.high().orElse(Double.POSITIVE_INFINITY) / limits.low();
    }

    private static String words(DonningValue value, Counted.Limits limits) {
        return "Counting particles alone leaves open where a fit factor lies: most in donning "
                + value.donning()
                + ", with "
                + Phrases.confidence(ExerciseFit.CONFIDENCE)
                + " confidence "
                + between(limits)
                + " (its value is "
                + (value.bounded() ? "at least " : "")
                + Digits.three(value.value().orElseThrow())
                + "). That is part of the spread between donnings, not beside it.";
    }

    private static String between(Counted.Limits limits) {
        return limits.high().isPresent()
                ? "between "
                        + Digits.three(limits.low())
                        + " and "
                        + Digits.three(limits.high().getAsDouble())
                : "at least " + Digits.three(limits.low());
    }
}
