package rigside.yaml;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What was read at one place of a file. It is absent when nothing was given, or when what was given
 * is wrong; the problem is noted by then, so code that reads goes on without a word and a file's
 * problems are all found.
 *
 * @param <T> what it is
 */
public final class Value<T> {
    private final Spot spot;
    private final Optional<T> content;

    private Value(Spot spot, Optional<T> content) {
        this.spot = spot;
        this.content = content;
    }

    static <T> Value<T> of(Spot spot, T content) {
        return new Value<>(spot, Optional.of(content));
    }

    static <T> Value<T> absent(Spot spot) {
        return new Value<>(spot, Optional.empty());
    }

    public boolean isPresent() {
        return content.isPresent();
    }

    /**
     * The content.
     *
     * @throws java.util.NoSuchElementException if absent
     */
    public T get() {
        return content.orElseThrow();
    }

    public T orElse(T other) {
        return content.orElse(other);
    }

    public Optional<T> toOptional() {
        return content;
    }

    /** What stands here as messages call it: {@code 'title'}. */
    public String label() {
        return spot.label();
    }

    public <R> Value<R> map(Function<? super T, ? extends R> change) {
        return new Value<>(spot, content.map(change));
    }

    /** Goes on reading from the content; absent stays absent. */
    public <R> Value<R> then(Function<? super T, Value<R>> reader) {
        return content.isPresent() ? reader.apply(content.get()) : absent(spot);
    }

    /** The content if it is as it must be; otherwise a problem is noted and it is absent. */
    public Value<T> must(Predicate<? super T> hold, Function<? super T, String> what, String help) {
        return content.isEmpty() || hold.test(content.get())
                ? this
                : wrong(what.apply(content.get()), help);
    }

    /**
     * Notes a problem at this place.
     *
     * @param what what is wrong, one plain sentence, the offending value quoted
     * @param help what to write instead; may be empty
     * @return an absent value
     */
    public <R> Value<R> wrong(String what, String help) {
        spot.note(what, help);
        return absent(spot);
    }
}
