package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.MeasureResult;
import rigside.analysis.Part;
import rigside.analysis.Shown;
import rigside.analysis.Standing;
import rigside.decide.Conclusion;
import rigside.decide.Forecast;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/**
 * What may be shown of an invented session, made up without playing it: any number of conditions
 * and rounds, and any numbers. Every seventh donning is struck out and done again, every ninth
 * value is only a lower bound.
 */
final class Invented {
    private static final int TRIALS = 3;
    private static final int TRIALS_STEP = 3;

    private final int rounds;
    private final DoubleUnaryOperator number;
    private State state;
    private final List<DonningValue> donnings = new ArrayList<>();
    private int count;

    /**
     * @param number a value from the donning's number
     */
    Invented(String protocol, int rounds, DoubleUnaryOperator number) {
        this.rounds = rounds;
        this.number = number;
        this.state =
                Evolve.step(
                        State.START,
                        new Event.SessionOpened(
                                "test", "t.yaml", protocol, 7, "typed", "", false, 1),
                        0);
        for (int round = 1; round <= rounds; round++) {
            for (Condition condition : state.protocol().conditions()) {
                donning(round, condition.id());
            }
        }
    }

    /** The demonstration's protocol with more conditions, each title of so many letters. */
    static String protocol(int conditions, int letters, String required) {
        String text = Read.text("/demo/prefilter-disc.yaml");
        int from = text.indexOf("  - id: with-disc");
        int to = text.indexOf("measures:");
        StringBuilder others = new StringBuilder();
        for (int at = 1; at < conditions; at++) {
            String title = "Half mask with disc " + at + " and its straps crossed behind the head ";
            others.append("  - id: with-")
                    .append(at)
                    .append("\n    title: \"")
                    .append(title.repeat(letters / title.length() + 1), 0, letters)
                    .append("\"\n    specimen: {piece: disc, worn-before: 0}\n")
                    .append("    particle-reading: seal-only\n");
        }
        return (text.substring(0, from) + others + "\n" + text.substring(to))
                .replace("most: 8", "most: 50")
                .replace("    kind: fit-factor", "    kind: fit-factor\n" + required);
    }

    private void donning(int round, String condition) {
        count++;
        double value = number.applyAsDouble(count);
        Standing standing = count % 7 == 0 ? Standing.STRUCK : Standing.COUNTS;
        boolean lost = count % 21 == 0;
        state = Evolve.step(state, new Event.DonningStarted(count, round, 1, condition), count);
        List<Integer> entries = new ArrayList<>();
        for (int trial = 0; trial < TRIALS; trial++) {
            int entry = state.captured().entries().size() + 1;
            Slot slot = new Slot.Trial(new Place(Stage.DONNING, count, TRIALS_STEP), trial);
            Value time = new Value.Measured(new Quantity(value * (1 + trial / 9.0), Unit.SECOND));
            state =
                    Evolve.step(
                            state, new Event.EntryCaptured(entry, slot, time, Source.TYPED), count);
            entries.add(entry);
        }
        state = Evolve.step(state, new Event.DonningCompleted(count), count);
        donnings.add(
                new DonningValue(
                        count,
                        round,
                        condition,
                        lost ? Standing.ABANDONED : standing,
                        lost ? OptionalDouble.empty() : OptionalDouble.of(value),
                        OptionalDouble.of(value),
                        0,
                        count % 9 == 0,
                        false,
                        Level.NONE,
                        parts(value),
                        entries,
                        List.of(),
                        Optional.empty()));
    }

    private List<Part> parts(double value) {
        return List.of("Normal breathing", "Turning the head slowly " + "and again".repeat(9))
                .stream()
                .map(
                        title ->
                                new Part(
                                        title,
                                        OptionalDouble.of(value),
                                        count % 9 == 0,
                                        true,
                                        Level.NONE,
                                        List.of(),
                                        ""))
                .toList();
    }

    State state() {
        return state;
    }

    Shown shown() {
        return shown(true, true);
    }

    Shown shown(boolean clock, boolean result) {
        return new Shown(
                clock,
                result,
                "",
                rounds,
                false,
                false,
                state.protocol().measures().stream().map(this::result).toList(),
                "");
    }

    private MeasureResult result(Measure measure) {
        List<String> ids = state.protocol().conditions().stream().map(Condition::id).toList();
        return new MeasureResult(
                measure,
                donnings,
                ids.stream().map(this::summary).toList(),
                ids.stream().skip(1).map(id -> comparison(measure, id)).toList(),
                "",
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private ConditionSummary summary(String id) {
        List<Double> values =
                donnings.stream()
                        .filter(each -> each.condition().equals(id) && each.counts())
                        .flatMap(each -> each.value().stream().boxed())
                        .toList();
        OptionalDouble mean = values.stream().mapToDouble(each -> each).average();
        return new ConditionSummary(
                id,
                values,
                true,
                mean,
                true,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                List.of(),
                List.of(),
                List.of());
    }

    /** Looks from the third round on; the first interval has no ends. */
    private Comparison comparison(Measure measure, String id) {
        List<Comparison.Seen> looks =
                IntStream.rangeClosed(3, Math.max(3, rounds))
                        .mapToObj(
                                n ->
                                        new Comparison.Seen(
                                                n,
                                                1.02,
                                                n == 3
                                                        ? new Limits(0, Double.POSITIVE_INFINITY)
                                                        : new Limits(1 - 2.0 / n, 1 + 3.0 / n),
                                                3,
                                                verdict(n),
                                                0.1,
                                                n - 1,
                                                0))
                        .toList();
        Conclusion settled = new Conclusion(Verdict.NO_MEANINGFUL_DIFFERENCE, 0);
        Measure.Compared compared = measure.compared().orElseThrow();
        return new Comparison(
                measure.id(),
                id,
                state.protocol().reference().id(),
                true,
                true,
                rounds,
                OptionalDouble.of(1.02),
                Optional.of(new Limits(0.9, 1.1)),
                OptionalDouble.of(3),
                new Limits(Math.exp(compared.bandLow()), Math.exp(compared.bandHigh())),
                compared.matters(),
                verdict(rounds),
                rounds >= 30 ? Optional.of(new Comparison.Settled(30, settled)) : Optional.empty(),
                verdict(rounds),
                false,
                false,
                Forecast.SILENT,
                false,
                false,
                true,
                List.of(),
                looks,
                new Comparison.Words(
                        "Compared with Half mask as it is: nothing.", "", "", "", List.of()));
    }

    private static Verdict verdict(int n) {
        return n < 30 ? Verdict.NOT_SETTLED : Verdict.NO_MEANINGFUL_DIFFERENCE;
    }
}
