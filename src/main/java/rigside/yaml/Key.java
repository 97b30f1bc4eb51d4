package rigside.yaml;

import java.util.List;

/**
 * A key that a group of keys may hold, as told to those who write files.
 *
 * @param name as written
 * @param shape how its value is written
 * @param need whether it has to be there
 * @param otherwise what holds when it is left out, or when it has to be there; empty where nothing
 *     is to be said
 * @param meaning one sentence
 * @param with keys that have to be there too when this one is
 */
public record Key(
        String name, Shape shape, Need need, String otherwise, String meaning, List<String> with) {
    /** Whether a key has to be there. */
    public enum Need {
        REQUIRED,
        OPTIONAL,
        /** Other parts of the file decide. */
        SOMETIMES
    }

    public Key {
        with = List.copyOf(with);
    }

    public static Key required(String name, Shape shape, String meaning) {
        return new Key(name, shape, Need.REQUIRED, "", meaning, List.of());
    }

    /**
     * A key that may be left out.
     *
     * @param otherwise what then holds; empty for nothing
     */
    public static Key optional(String name, Shape shape, String otherwise, String meaning) {
        return new Key(name, shape, Need.OPTIONAL, otherwise, meaning, List.of());
    }

    /**
     * A key that other parts of the file make necessary.
     *
     * @param when when it has to be there: {@code where a fit factor is measured}
     */
    public static Key sometimes(String name, Shape shape, String when, String meaning) {
        return new Key(name, shape, Need.SOMETIMES, when, meaning, List.of());
    }

    /** The same, to be given only where others are. */
    public Key with(String... others) {
        return new Key(name, shape, need, otherwise, meaning, List.of(others));
    }
}
