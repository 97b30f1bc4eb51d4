package rigside.analysis;

import java.util.Arrays;
import java.util.Optional;
import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.session.Look;
import rigside.session.State;

/** What the looks of a session's journal concluded, whatever this version would. */
record OnRecord(State state, Setting setting) {

    /** The first look that settled a condition's comparison: that verdict stays. */
    Optional<Comparison.Settled> settled(String condition) {
        return state.captured().looks().stream()
                .flatMap(
                        look ->
                                look.lines().stream()
                                        .filter(line -> isOf(line, condition))
                                        .flatMap(line -> settled(look, line).stream()))
                .findFirst();
    }

    private boolean isOf(Look.Line line, String condition) {
        return line.settled()
                && line.measure().equals(setting.measure().id())
                && line.condition().equals(condition);
    }

    private Optional<Comparison.Settled> settled(Look look, Look.Line line) {
        double change = setting.scale().inward(line.estimate().orElse(Double.NaN));
        return Arrays.stream(Verdict.values())
                .filter(each -> each.word().equals(line.verdict()))
                .findFirst()
                .map(
                        verdict ->
                                new Comparison.Settled(
                                        look.round(), Conclusion.of(verdict, change)));
    }
}
