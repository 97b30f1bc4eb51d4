package rigside.runner;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rigside.measure.Numbers;
import rigside.measure.Unit;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.rig.Asked;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What a rehearsed tester types.
 *
 * @param eyes what is read off instruments, SI
 */
record Written(State state, Function<Asked, OptionalDouble> eyes) {

    /** The text for a gap; empty where there is nothing to read. */
    Optional<String> of(Slot slot) {
        return slot instanceof Slot.Field field ? Optional.of(field(field)) : reading(slot);
    }

    private Optional<String> reading(Slot slot) {
        OptionalDouble si = seen(RigQuestions.reading(state, slot));
        if (si.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = RigAnswers.unit(Procedure.step(state, slot.place()), slot);
        return Optional.of(Numbers.plain(unit.fromSi(si.getAsDouble())));
    }

    private OptionalDouble seen(Optional<Asked> asked) {
        return asked.map(eyes).orElse(OptionalDouble.empty());
    }

    private String field(Slot.Field slot) {
        Field.Answer answer = Procedure.field(state, slot).answer();
        OptionalDouble si = seen(RigQuestions.typed(state, slot));
        Optional<Measure> measure = new MeasureOf(state.protocol()).typed(slot.id());
        if (si.isEmpty() || measure.isEmpty()) {
            return plausible(slot, answer);
        }
        return answer instanceof Field.Scale scale
                ? onScale(scale, si.getAsDouble())
                : read(measure.get(), si.getAsDouble(), ((Field.Numeric) answer).unit());
    }

    private String plausible(Slot.Field slot, Field.Answer answer) {
        Varied varied = new Varied(state);
        if (varied.is(slot) && answer instanceof Field.Numeric numeric) {
            return Numbers.plain(varied.number(slot, numeric));
        }
        return varied.is(slot) && answer instanceof Field.Scale scale
                ? String.valueOf(varied.number(slot, scale))
                : answer.match(new Plausible());
    }

    /** The nearest number of a scale. */
    private static String onScale(Field.Scale scale, double value) {
        return String.valueOf(Math.max(scale.from(), Math.min(scale.to(), (int) Math.rint(value))));
    }

    /** As finely as the measure is read, in the unit it is typed in. */
    private static String read(Measure measure, double si, Unit unit) {
        double value = measure.unit().fromSi(si);
        if (!(measure.resolution() > 0) || measure.unit().dimension() != unit.dimension()) {
            return Numbers.plain(unit.fromSi(si));
        }
        BigDecimal step = BigDecimal.valueOf(measure.resolution());
        BigDecimal steps =
                BigDecimal.valueOf(value / measure.resolution())
                        .setScale(0, RoundingMode.HALF_EVEN);
        double rounded = steps.multiply(step).doubleValue();
        return Numbers.plain(unit.fromSi(measure.unit().toSi(rounded)));
    }

    /** An answer in the middle of what a field takes. */
    private record Plausible() implements Field.Answer.Cases<String> {
        @Override
        public String numeric(Field.Numeric answer) {
            double from = answer.from().orElse(Math.min(1, answer.to().orElse(1)));
            double to = answer.to().orElse(from);
            return Numbers.plain((from + to) / 2);
        }

        @Override
        public String choice(Field.Choice answer) {
            return answer.options().get(0);
        }

        @Override
        public String scale(Field.Scale answer) {
            return String.valueOf((answer.from() + answer.to()) / 2);
        }

        @Override
        public String words(Field.Words answer) {
            String words = "rehearsed";
            return words.substring(0, Math.min(words.length(), answer.longest()));
        }
    }
}
