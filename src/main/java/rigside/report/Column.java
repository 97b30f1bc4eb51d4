package rigside.report;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * One column of a table of a data package: what its description says of it and what stands in a
 * row, so that the two cannot disagree.
 *
 * @param <R> what a row is made of
 * @param name as in the table's first line, in small letters and underscores
 * @param type what its cells hold
 * @param description what it is, in a sentence
 * @param unit of its numbers, in words of the trade; empty for plain numbers and all else
 * @param required whether every row has it
 * @param unique whether no two rows have the same
 * @param words the only words its cells may be; empty where any may
 * @param cell what stands in a row, as written; empty where there is nothing
 */
record Column<R>(
        String name,
        Type type,
        String description,
        String unit,
        boolean required,
        boolean unique,
        List<String> words,
        Function<R, Optional<String>> cell) {

    Column {
        words = List.copyOf(words);
    }

    /** What the cells of a column hold, by the names that Table Schema has for it. */
    enum Type {
        STRING,
        INTEGER,
        NUMBER,
        BOOLEAN,
        DATETIME
    }

    /** Words; none where they are empty. */
    static <R> Column<R> text(String name, String description, Function<R, String> words) {
        return of(name, Type.STRING, description, row -> filled(words.apply(row)));
    }

    /** One of a few words; none where it is empty. */
    static <R> Column<R> word(
            String name, String description, List<String> words, Function<R, String> word) {
        return new Column<>(
                name,
                Type.STRING,
                description,
                "",
                false,
                false,
                words,
                row -> filled(word.apply(row)));
    }

    /** A constant of an enum in small letters with hyphens. */
    static <R, E extends Enum<E>> Column<R> word(
            String name, String description, Class<E> type, Function<R, E> constant) {
        return word(name, description, Spelt.all(type), row -> Spelt.word(constant.apply(row)));
    }

    /** A whole number. */
    static <R> Column<R> whole(String name, String description, Function<R, Integer> number) {
        return of(
                name,
                Type.INTEGER,
                description,
                row -> Optional.of(Integer.toString(number.apply(row))));
    }

    /** A whole number, or none. */
    static <R> Column<R> anyWhole(
            String name, String description, Function<R, OptionalInt> number) {
        return of(
                name,
                Type.INTEGER,
                description,
                row -> {
                    OptionalInt whole = number.apply(row);
                    return whole.isPresent()
                            ? Optional.of(Integer.toString(whole.getAsInt()))
                            : Optional.empty();
                });
    }

    /**
     * A number, or none where there is none or it is not finite.
     *
     * @param unit empty for a plain number
     */
    static <R> Column<R> number(
            String name, String unit, String description, Function<R, OptionalDouble> number) {
        return new Column<>(
                name,
                Type.NUMBER,
                description,
                unit,
                false,
                false,
                List.of(),
                row -> {
                    OptionalDouble value = number.apply(row);
                    return value.isPresent() && Double.isFinite(value.getAsDouble())
                            ? Optional.of(Shortest.of(value.getAsDouble()))
                            : Optional.empty();
                });
    }

    static <R> Column<R> yesOrNo(String name, String description, Function<R, Boolean> is) {
        return of(
                name,
                Type.BOOLEAN,
                description,
                row -> Optional.of(Boolean.toString(is.apply(row))));
    }

    /** A moment with its offset from UTC, or none. */
    static <R> Column<R> time(
            String name, String description, Function<R, Optional<ZonedDateTime>> moment) {
        return of(name, Type.DATETIME, description, row -> moment.apply(row).map(Moments::written));
    }

    private static <R> Column<R> of(
            String name, Type type, String description, Function<R, Optional<String>> cell) {
        return new Column<>(name, type, description, "", false, false, List.of(), cell);
    }

    private static Optional<String> filled(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** The same, in every row. */
    Column<R> always() {
        return new Column<>(name, type, description, unit, true, unique, words, cell);
    }

    /** The same, in every row and nowhere twice. */
    Column<R> once() {
        return new Column<>(name, type, description, unit, true, true, words, cell);
    }

    /** The same of rows made of something else. */
    <S> Column<S> of(Function<S, Optional<R>> row) {
        return new Column<>(
                name,
                type,
                description,
                unit,
                false,
                false,
                words,
                other -> row.apply(other).flatMap(cell));
    }
}
