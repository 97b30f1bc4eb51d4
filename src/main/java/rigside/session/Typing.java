package rigside.session;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.measure.Dimension;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.protocol.Step;

/** What typed text means for the gap that waits. */
final class Typing {
    private Typing() {}

    /** The longest number typed, in characters; longer ones are slips. */
    private static final int LONGEST_NUMBER = 40;

    private static final String NO_NUMBER =
            "nothing is typed; type a number like 12.4, or leave it out";

    private static final Pattern NUMBER =
            Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?)\\s*(.*)");

    /** What typed text means. */
    sealed interface Meaning {
        /** It can be captured. */
        record Taken(Value value) implements Meaning {}

        /** It is outside what is plausible and is asked about once more. */
        record Doubted(Value value, String why) implements Meaning {}

        /** It means nothing here. */
        record Refused(String why) implements Meaning {}

        /** Nothing was typed where nothing need be. */
        record Empty() implements Meaning {}
    }

    /** What {@code text} means for {@code slot}. */
    static Meaning meaning(State state, Slot slot, String text) {
        String stripped = text.strip();
        if (stripped.chars().anyMatch(Character::isISOControl)) {
            return new Meaning.Refused("control characters cannot be entered; type it again");
        }
        return slot.match(new OfSlot(state, stripped));
    }

    /** What {@code text} means for {@code slot} in the place of what was captured for it. */
    static Meaning amended(State state, Slot slot, String text) {
        return slot instanceof Slot.Trial trial
                ? time(state, trial, text.strip())
                : meaning(state, slot, text);
    }

    /** A time by hand, in place of one that was taken; implausible ones are doubted. */
    private static Meaning time(State state, Slot.Trial slot, String text) {
        Step.Trials step = (Step.Trials) Procedure.step(state, slot.place());
        return timed(text)
                .match(
                        value -> {
                            Value time = Respond.time(value.si());
                            return Judging.implausible(step, value.si())
                                    .<Meaning>map(
                                            why -> new Meaning.Doubted(time, value + " is " + why))
                                    .orElseGet(() -> new Meaning.Taken(time));
                        });
    }

    /** A typed time of an inhalation, or why it is none. */
    private static Typed timed(String text) {
        Typed typed = quantity(text, Unit.SECOND);
        boolean none =
                typed.quantity()
                        .filter(value -> !(Respond.wholeMilliseconds(value.si()) > 0))
                        .isPresent();
        return none
                ? new Typed(
                        Optional.empty(),
                        "'" + text + "' is no time of an inhalation; type its seconds")
                : typed;
    }

    private static final double MOST_DRIFT = 5;

    private record OfSlot(State state, String text) implements Slot.Cases<Meaning> {
        @Override
        public Meaning field(Slot.Field slot) {
            Field field = Procedure.field(state, slot);
            if (text.isEmpty()) {
                return field.optional()
                        ? new Meaning.Empty()
                        : new Meaning.Refused(
                                field.answer() instanceof Field.Numeric
                                        ? NO_NUMBER
                                        : "nothing is typed yet; type an answer, then press Enter");
            }
            return field.answer().match(new OfAnswer(text));
        }

        @Override
        public Meaning ambient(Slot.Ambient slot) {
            return quantity(text, exercises(slot).unit()).match(value -> ambient(slot, value));
        }

        /** Rooms drift, but not fivefold within a donning (common practice, no source). */
        private Meaning ambient(Slot.Ambient slot, Quantity value) {
            if (!(value.si() > 0)) {
                return new Meaning.Refused(
                        "an ambient concentration of '"
                                + text
                                + "' gives no fit factor; type a number above 0,"
                                + " or leave it out with a reason");
            }
            Value measured = new Value.Measured(value);
            return lastAmbient(slot.place())
                    .filter(
                            last ->
                                    value.si() > last.si() * MOST_DRIFT
                                            || value.si() * MOST_DRIFT < last.si())
                    .<Meaning>map(
                            last ->
                                    new Meaning.Doubted(
                                            measured,
                                            value + " is far from the last ambient " + last))
                    .orElseGet(() -> new Meaning.Taken(measured));
        }

        @Override
        public Meaning mask(Slot.Mask slot) {
            return quantity(text, exercises(slot).unit()).match(value -> mask(slot, value));
        }

        private Meaning mask(Slot.Mask slot, Quantity value) {
            Value measured = new Value.Measured(value);
            if (value.si() < 0) {
                return new Meaning.Refused(
                        "'" + text + "' is below 0; a concentration is 0 or more");
            }
            if (value.si() == 0 && detectionLimit(slot) == 0) {
                return new Meaning.Refused(
                        "a mask concentration of 0 gives no fit factor, since the protocol states"
                                + " no detection limit; type the smallest value the counter shows, or"
                                + " leave it out with a reason");
            }
            Optional<Quantity> ambient = lastAmbient(slot.place());
            if (ambient.isPresent() && value.si() > ambient.get().si() / 2) {
                return new Meaning.Doubted(
                        measured,
                        value + " in the mask is more than half the ambient " + ambient.get());
            }
            return new Meaning.Taken(measured);
        }

        @Override
        public Meaning pressure(Slot.Pressure slot) {
            return quantity(text, exercises(slot).pressureUnit())
                    .match(value -> new Meaning.Taken(new Value.Measured(value)));
        }

        @Override
        public Meaning trial(Slot.Trial slot) {
            if (!state.isFromPaper()) {
                return new Meaning.Refused("a trial is timed with the trigger key, not typed");
            }
            return timed(text).match(value -> new Meaning.Taken(new Value.Measured(value)));
        }

        @Override
        public Meaning gate(Slot.Gate slot) {
            Step.Gates step = (Step.Gates) Procedure.step(state, slot.place());
            return quantity(text, step.unit())
                    .match(
                            value ->
                                    value.si() < 0
                                            ? new Meaning.Refused(
                                                    "'"
                                                            + text
                                                            + "' is below 0; a concentration is 0"
                                                            + " or more")
                                            : new Meaning.Taken(new Value.Measured(value)));
        }

        private Step.Exercises exercises(Slot slot) {
            return (Step.Exercises) Procedure.step(state, slot.place());
        }

        private double detectionLimit(Slot slot) {
            return exercises(slot)
                    .fitFactor()
                    .flatMap(state.protocol()::measure)
                    .map(Measure::kind)
                    .filter(Measure.FitFactor.class::isInstance)
                    .map(kind -> ((Measure.FitFactor) kind).detectionLimit())
                    .orElse(0.0);
        }

        private Optional<Quantity> lastAmbient(Place place) {
            return state.captured().entries().stream()
                    .filter(
                            entry ->
                                    entry.stands()
                                            && entry.slot() instanceof Slot.Ambient
                                            && entry.slot().place().equals(place)
                                            && entry.value() instanceof Value.Measured)
                    .reduce((earlier, later) -> later)
                    .map(entry -> ((Value.Measured) entry.value()).quantity());
        }
    }

    private record OfAnswer(String text) implements Field.Answer.Cases<Meaning> {
        @Override
        public Meaning numeric(Field.Numeric answer) {
            return quantity(text, answer.unit()).match(value -> plausible(answer, value));
        }

        private static Meaning plausible(Field.Numeric answer, Quantity value) {
            Value measured = new Value.Measured(value);
            boolean low = answer.from().isPresent() && value.value() < answer.from().getAsDouble();
            boolean high = answer.to().isPresent() && value.value() > answer.to().getAsDouble();
            if (low || high) {
                double limit = (low ? answer.from() : answer.to()).getAsDouble();
                return new Meaning.Doubted(
                        measured,
                        value
                                + (low
                                        ? " is below the smallest plausible "
                                        : " is above the largest plausible ")
                                + new Quantity(limit, answer.unit()));
            }
            return new Meaning.Taken(measured);
        }

        @Override
        public Meaning choice(Field.Choice answer) {
            String wanted = text.toLowerCase(Locale.ROOT);
            List<String> options = answer.options();
            for (String option : options) {
                if (option.toLowerCase(Locale.ROOT).equals(wanted)) {
                    return said(option);
                }
            }
            for (int at = 0; at < options.size(); at++) {
                if (wanted.equals(String.valueOf(at + 1))) {
                    return said(options.get(at));
                }
            }
            List<String> begun =
                    options.stream()
                            .filter(option -> option.toLowerCase(Locale.ROOT).startsWith(wanted))
                            .toList();
            return begun.size() == 1
                    ? said(begun.get(0))
                    : new Meaning.Refused(
                            "'"
                                    + text
                                    + "' is not one of the choices; type one of: "
                                    + String.join(", ", options));
        }

        @Override
        public Meaning scale(Field.Scale answer) {
            String range = answer.from() + " to " + answer.to();
            if (!text.matches("-?\\d{1,4}")) {
                return new Meaning.Refused("'" + text + "' is not a whole number; type " + range);
            }
            int value = Integer.parseInt(text);
            return value < answer.from() || value > answer.to()
                    ? new Meaning.Refused("'" + text + "' is not on the scale; type " + range)
                    : new Meaning.Taken(new Value.Measured(new Quantity(value, Unit.ONE)));
        }

        @Override
        public Meaning words(Field.Words answer) {
            return text.codePointCount(0, text.length()) > answer.longest()
                    ? new Meaning.Refused(
                            "that is longer than " + answer.longest() + " characters; shorten it")
                    : said(text);
        }

        private static Meaning said(String words) {
            return new Meaning.Taken(new Value.Said(words));
        }
    }

    /** A typed number, or why it is none. */
    private record Typed(Optional<Quantity> quantity, String refusal) {
        Meaning match(java.util.function.Function<Quantity, Meaning> then) {
            return quantity.map(then).orElseGet(() -> new Meaning.Refused(refusal));
        }
    }

    /**
     * A number with a decimal comma or point, in {@code unit} unless another unit of its dimension
     * follows.
     */
    private static Typed quantity(String text, Unit unit) {
        if (text.isEmpty()) {
            return new Typed(Optional.empty(), NO_NUMBER);
        }
        Matcher matcher = NUMBER.matcher(text);
        if (text.length() > LONGEST_NUMBER || !matcher.matches()) {
            return new Typed(
                    Optional.empty(),
                    "'" + shortened(text) + "' is not a number; type it like 12.4 or 12,4");
        }
        String symbol = matcher.group(2).strip();
        if (symbol.startsWith(",") || symbol.startsWith(".")) {
            return new Typed(
                    Optional.empty(),
                    "'" + text + "' has two decimal marks; type it like 1234.5, without thousands");
        }
        Optional<Unit> typed = symbol.isEmpty() ? Optional.of(unit) : Unit.of(symbol);
        if (typed.isEmpty() || typed.get().dimension() != unit.dimension()) {
            String units =
                    unit.dimension() == Dimension.NUMBER
                            ? "leave the unit out"
                            : "leave the unit out or use one of: "
                                    + String.join(", ", Unit.symbols(unit.dimension()));
            return new Typed(
                    Optional.empty(),
                    "'" + symbol + "' is not a unit of " + unit.dimension().words() + "; " + units);
        }
        double value = Double.parseDouble(matcher.group(1).replace(',', '.'));
        if (!isMeant(value) || !isMeant(typed.get().toSi(value))) {
            return new Typed(
                    Optional.empty(),
                    "'"
                            + text
                            + "' is too large or too small to be meant; see where its point"
                            + " stands");
        }
        return new Typed(Optional.of(new Quantity(value, typed.get()).in(unit)), "");
    }

    /** No quantity at a bench, in any unit or in SI, is further from 1 than this. */
    private static boolean isMeant(double value) {
        double size = Math.abs(value);
        return size == 0 || (size >= 1e-18 && size <= 1e18);
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_NUMBER ? text : text.substring(0, LONGEST_NUMBER) + "...";
    }

    /** Seconds as shown in messages. */
    static String seconds(double seconds) {
        return Numbers.plain(Math.rint(seconds * 10) / 10) + " s";
    }
}
