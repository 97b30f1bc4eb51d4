package rigside.journal;

import java.util.Optional;

/** The words for numbers JSON has no form for. */
final class NonFinite {
    private static final String NOT_A_NUMBER = "not a number";
    private static final String INFINITY = "infinity";
    private static final String MINUS_INFINITY = "minus infinity";

    private NonFinite() {}

    /** The word for a number that is not finite. */
    static String word(double value) {
        if (Double.isNaN(value)) {
            return NOT_A_NUMBER;
        }
        return value > 0 ? INFINITY : MINUS_INFINITY;
    }

    static Optional<Double> read(String word) {
        return switch (word) {
            case NOT_A_NUMBER -> Optional.of(Double.NaN);
            case INFINITY -> Optional.of(Double.POSITIVE_INFINITY);
            case MINUS_INFINITY -> Optional.of(Double.NEGATIVE_INFINITY);
            default -> Optional.empty();
        };
    }
}
