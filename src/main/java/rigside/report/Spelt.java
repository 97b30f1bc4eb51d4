package rigside.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The words that tables have for our own constants: small letters with hyphens. */
final class Spelt {
    private Spelt() {}

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <E extends Enum<E>> List<String> all(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Spelt::word).toList();
    }

    /** A record's name as files have it: {@code entry-captured}. */
    static String word(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
