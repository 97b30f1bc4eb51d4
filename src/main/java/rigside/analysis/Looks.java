package rigside.analysis;

import java.util.List;
import java.util.OptionalDouble;
import rigside.decide.Limits;
import rigside.decide.Rules;
import rigside.decide.Verdict;
import rigside.protocol.Protocol;
import rigside.session.Look;
import rigside.session.State;

/** Looks as the session records them. */
public final class Looks {

    private Looks() {}

    /**
     * Reckons beforehand what every look at a protocol's values will need, its critical values: for
     * a thread of its own, so that no picture waits for the first look.
     */
    public static void prepare(Protocol protocol) {
        protocol.measures().stream()
                .filter(measure -> measure.compared().isPresent())
                .map(measure -> Sharing.setting(protocol, measure).rules(0))
                .forEach(Rules::criticalValues);
    }

    /** The look a session is due for, from its analysis. */
    public static Look of(Analysis analysis, State state) {
        return of(analysis.completeRounds(), analysis.comparisons(), state);
    }

    /** The look a session is due for. */
    public static Look due(State state) {
        List<Comparison> comparisons =
                state.protocol().measures().stream()
                        .filter(measure -> measure.compared().isPresent())
                        .flatMap(
                                measure ->
                                        new Comparisons(state, measure).withoutForecasts().stream())
                        .toList();
        return of(Evidence.of(state).completeRounds().size(), comparisons, state);
    }

    private static Look of(int rounds, List<Comparison> comparisons, State state) {
        List<Comparison> deciding = comparisons.stream().filter(Comparison::decides).toList();
        return new Look(
                rounds,
                !deciding.isEmpty() && deciding.stream().allMatch(Comparison::isSettled),
                isPlanUsedUp(rounds, deciding, state),
                comparisons.stream().map(Looks::line).toList());
    }

    /** Whether no deciding comparison has a look left; without any, whether all rounds are done. */
    private static boolean isPlanUsedUp(int rounds, List<Comparison> deciding, State state) {
        return deciding.isEmpty()
                ? rounds >= state.protocol().plan().most()
                : deciding.stream().allMatch(Comparison::planUsedUp);
    }

    /** Whether a recorded line claims a meaningful difference. */
    public static boolean isMeaningful(Look.Line line) {
        return line.verdict().equals(Verdict.MEANINGFUL_DIFFERENCE.word());
    }

    private static Look.Line line(Comparison comparison) {
        return new Look.Line(
                comparison.measure(),
                comparison.condition(),
                comparison.n(),
                comparison.entries(),
                comparison.estimate(),
                comparison
                        .interval()
                        .map(Limits::low)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                comparison
                        .interval()
                        .map(Limits::high)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                comparison.critical(),
                comparison.verdict().word(),
                comparison.isSettled());
    }
}
