package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Unit;

/**
 * One thing the tester is asked to enter, as a fact of the session or in a form or observation.
 *
 * @param id the short word it is stored under
 * @param ask the question as shown
 * @param answer what kind of answer is taken
 * @param optional whether it may be left empty
 * @param about whom or what it is about as the file says it; see {@link Protocol#subject} for files
 *     that do not
 */
public record Field(
        String id, String ask, Answer answer, boolean optional, Optional<Subject> about) {

    /** A field that does not say what it is about. */
    public Field(String id, String ask, Answer answer, boolean optional) {
        this(id, ask, answer, optional, Optional.empty());
    }

    /** The unit of an answer that is a number, a plain one on a scale; empty for words. */
    public Optional<Unit> unit() {
        if (answer instanceof Numeric number) {
            return Optional.of(number.unit());
        }
        return answer instanceof Scale ? Optional.of(Unit.ONE) : Optional.empty();
    }

    /** What a field takes. */
    public sealed interface Answer {
        <R> R match(Cases<R> cases);

        /** One case for each kind of answer. */
        interface Cases<R> {
            R numeric(Numeric answer);

            R choice(Choice answer);

            R scale(Scale answer);

            R words(Words answer);
        }
    }

    /**
     * A number.
     *
     * @param unit the unit it is typed in
     * @param from the smallest plausible value in {@code unit}, if stated
     * @param to the largest plausible value in {@code unit}, if stated
     */
    public record Numeric(Unit unit, OptionalDouble from, OptionalDouble to) implements Answer {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.numeric(this);
        }
    }

    /**
     * One of a few words.
     *
     * @param options two or more
     */
    public record Choice(List<String> options) implements Answer {
        public Choice {
            options = List.copyOf(options);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.choice(this);
        }
    }

    /**
     * A whole number on a short scale whose ends have words.
     *
     * @param from the lowest number
     * @param to the highest number
     * @param low what the lowest means
     * @param high what the highest means
     */
    public record Scale(int from, int to, String low, String high) implements Answer {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.scale(this);
        }
    }

    /**
     * Free words.
     *
     * @param longest the most characters taken
     */
    public record Words(int longest) implements Answer {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.words(this);
        }
    }
}
