package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Quantity;
import rigside.measure.Unit;

/** One element of the procedure. */
public sealed interface Step {
    /** What all kinds of step say. */
    Head head();

    <R> R match(Cases<R> cases);

    /** The line shown above the step. */
    default String title() {
        return head().title();
    }

    /** What the tester is told to do, possibly empty. */
    default String say() {
        return head().say();
    }

    /** Whether it is for a condition; an earlier answer may still lead past it. */
    default boolean appliesTo(String conditionId) {
        return head().applies().to(conditionId);
    }

    /** The ids of the answers it asks for that other steps may depend on. */
    default List<String> asks() {
        return List.of();
    }

    /** What it asks the tester to enter, in order; only forms and observations do. */
    default List<Field> fields() {
        return List.of();
    }

    /** Whether it begins without a key as soon as it comes up; only what is timed can. */
    default boolean startsByItself() {
        return false;
    }

    /**
     * What all kinds of step say.
     *
     * @param title the line shown above the step
     * @param say what the tester is told to do, possibly empty
     * @param applies when the step is done
     */
    record Head(String title, String say, Applies applies) {
        /** Of a step that is always done. */
        public static Head of(String title, String say) {
            return new Head(title, say, Applies.ALWAYS);
        }
    }

    /** What sets something timed going. */
    enum Starting {
        BY_KEY,
        BY_ITSELF
    }

    /** One case for each kind of step. */
    interface Cases<R> {
        R checklist(Checklist step);

        R form(Form step);

        R countdown(Countdown step);

        R exercises(Exercises step);

        R trials(Trials step);

        R observations(Observations step);

        R note(Note step);

        R gates(Gates step);
    }

    /**
     * Things to confirm one by one.
     *
     * @param items at least one
     */
    record Checklist(Head head, List<Item> items) implements Step {
        public Checklist {
            items = List.copyOf(items);
        }

        @Override
        public List<String> asks() {
            return items.stream().flatMap(item -> item.id().stream()).toList();
        }

        /** The position of the item with an id, from 0; -1 if there is none. */
        public int position(String id) {
            return items.stream().map(item -> item.id().orElse("")).toList().indexOf(id);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.checklist(this);
        }

        /**
         * One thing to confirm.
         *
         * @param id the short word other steps refer to its answer by, if it has one
         * @param text what has to be so
         * @param ifNot where a no leads
         */
        public record Item(Optional<String> id, String text, IfNot ifNot) {}
    }

    /**
     * Typed entries.
     *
     * @param fields at least one
     */
    record Form(Head head, List<Field> fields) implements Step {
        public Form {
            fields = List.copyOf(fields);
        }

        @Override
        public List<String> asks() {
            return fields.stream().map(Field::id).toList();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.form(this);
        }
    }

    /**
     * A wait of a fixed length: purge, rest, stabilisation.
     *
     * @param starting what sets it going
     * @param seconds its length
     */
    record Countdown(Head head, Starting starting, double seconds) implements Step {
        @Override
        public boolean startsByItself() {
            return starting == Starting.BY_ITSELF;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.countdown(this);
        }
    }

    /**
     * Timed activities during which particles (or pressure) are sampled.
     *
     * @param starting what sets each exercise going
     * @param fitFactor the fit-factor measure its concentrations feed, if any
     * @param pressureTrace the pressure measure its pressures feed, if any
     * @param unit the unit concentrations are typed in
     * @param pressureUnit the unit pressures are typed in
     * @param entering when the readings are typed
     * @param ambientMayMove by how much the ambient concentration may change from one sample to the
     *     next, as a share of their mean
     * @param exercises in order; at least one
     */
    record Exercises(
            Head head,
            Starting starting,
            Optional<String> fitFactor,
            Optional<String> pressureTrace,
            Unit unit,
            Unit pressureUnit,
            Entering entering,
            double ambientMayMove,
            List<Exercise> exercises)
            implements Step {
        public Exercises {
            exercises = List.copyOf(exercises);
        }

        @Override
        public boolean startsByItself() {
            return starting == Starting.BY_ITSELF;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exercises(this);
        }

        /** When the readings of the exercises are typed. */
        public enum Entering {
            AFTER_EACH,
            AT_END
        }
    }

    /**
     * Repeated timed inhalations.
     *
     * @param starting what sets each lead-in going
     * @param measure the timed-inhalation measure they feed
     * @param count how many valid trials a donning needs
     * @param target the pressure to hold
     * @param tolerance how far from the target still counts as held, as a share of it, if stated
     * @param heldShare the share of a pull's time for which a pressure trace has to be within the
     *     tolerance; less is offered for voiding
     * @param leadInSeconds the countdown before each trial
     * @param restSeconds the rest between two trials
     * @param shortest times below it are offered for voiding, in seconds
     * @param longest times above it are offered for voiding, in seconds
     */
    record Trials(
            Head head,
            Starting starting,
            String measure,
            int count,
            Quantity target,
            OptionalDouble tolerance,
            double heldShare,
            double leadInSeconds,
            double restSeconds,
            double shortest,
            double longest)
            implements Step {
        @Override
        public boolean startsByItself() {
            return starting == Starting.BY_ITSELF;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trials(this);
        }
    }

    /**
     * What was felt and seen, on short scales and in words.
     *
     * @param fields at least one
     */
    record Observations(Head head, List<Field> fields) implements Step {
        public Observations {
            fields = List.copyOf(fields);
        }

        @Override
        public List<String> asks() {
            return fields.stream().map(Field::id).toList();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.observations(this);
        }
    }

    /** Words to read before going on. */
    record Note(Head head) implements Step {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.note(this);
        }
    }

    /**
     * What the particle counter has to read before a test starts.
     *
     * @param unit the unit concentrations are typed in
     * @param gates in order; at least one
     */
    record Gates(Head head, Unit unit, List<Gate> gates) implements Step {
        public Gates {
            gates = List.copyOf(gates);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gates(this);
        }
    }
}
