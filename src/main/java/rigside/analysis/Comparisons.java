package rigside.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rigside.decide.Conclusion;
import rigside.decide.Course;
import rigside.decide.Finding;
import rigside.decide.Forecast;
import rigside.decide.Verdict;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Look;
import rigside.session.State;

/** The comparisons of one measure in a session. */
final class Comparisons {

    private final State state;
    private final Setting setting;
    private final List<Evidence> alternatives;

    Comparisons(State state, Measure measure) {
        this.state = state;
        this.setting = Sharing.setting(state.protocol(), measure);
        this.alternatives = Evidence.alternatives(state, measure.id());
    }

    /** One for each condition but the reference. */
    List<Comparison> all() {
        return state.protocol().conditions().stream()
                .skip(1)
                .map(condition -> of(condition))
                .toList();
    }

    Setting setting() {
        return setting;
    }

    private Comparison of(Condition condition) {
        Condition reference = state.protocol().reference();
        Gathered gathered = gathered(Evidence.of(state), condition);
        Judged judged = judged(gathered, condition);
        List<String> remarks =
                new ComparisonRemarks(state, setting, condition, gathered, judged).all();
        Wording wording = new Wording(setting, condition.title(), reference.title());
        List<DonningValue> values = Values.of(Evidence.of(state), setting.measure());
        boolean unresolved = values.stream().anyMatch(each -> each.counts() && each.unresolved());
        return judged.comparison(
                wording,
                new Judged.Ids(condition.id(), reference.id()),
                forecast(gathered, judged),
                unresolved && !judged.boundedAgrees(),
                gathered.entries(),
                remarks);
    }

    private Judged judged(Gathered gathered, Condition condition) {
        Course course = setting.course(gathered.stated());
        Conclusion halved = setting.course(gathered.halved()).conclusion();
        boolean open = isUnresolvedOnBothSides(condition);
        boolean boundedAgrees = halved.equals(course.conclusion()) && !open;
        Optional<Comparison.Settled> recorded = recorded(condition);
        List<Gathered> unstruck =
                alternatives.stream().map(each -> gathered(each, condition)).toList();
        boolean struckAgrees =
                unstruck.stream().allMatch(each -> leadsTo(each, course.conclusion(), halved))
                        && (unstruck.isEmpty()
                                || recorded.map(Comparison.Settled::conclusion)
                                        .filter(each -> !each.equals(course.conclusion()))
                                        .isEmpty());
        Optional<Comparison.Settled> settled =
                recorded.or(() -> course.settling().map(finding -> settled(finding, gathered)));
        Verdict verdict = verdict(course, boundedAgrees && struckAgrees, settled);
        boolean bounded = !gathered.stated().equals(gathered.halved());
        return new Judged(
                gathered.stated(),
                course,
                verdict,
                settled,
                gathered.rounds() >= setting.lastRound() || course.latest().planUsedUp(),
                state.course().ended().isPresent(),
                boundedAgrees,
                !struckAgrees,
                new Otherwise(
                        bounded ? Optional.of(halved) : Optional.empty(),
                        open,
                        unstruck.stream()
                                .map(each -> setting.course(each.stated()).conclusion())
                                .toList(),
                        verdict.settled() ? decisive(condition, course, halved) : List.of()));
    }

    /** Striking out a donning takes its whole round out until it is done again. */
    private List<Integer> decisive(Condition condition, Course course, Conclusion halved) {
        Evidence evidence = Evidence.of(state);
        List<DonningValue> values = Values.of(evidence, setting.measure());
        List<Integer> rounds = evidence.completeRounds();
        return rounds.stream()
                .filter(
                        out -> {
                            List<Integer> kept =
                                    rounds.stream().filter(each -> !each.equals(out)).toList();
                            Gathered without = gathered(values, kept, condition);
                            return !leadsTo(without, course.conclusion(), halved);
                        })
                .toList();
    }

    /**
     * Taken at half on both sides, "at least" against "at least" keeps its ratio: their agreement
     * says nothing.
     */
    private boolean isUnresolvedOnBothSides(Condition condition) {
        return isUnresolved(condition.id()) && isUnresolved(state.protocol().reference().id());
    }

    private boolean isUnresolved(String condition) {
        return Values.of(Evidence.of(state), setting.measure()).stream()
                .anyMatch(
                        value ->
                                value.counts()
                                        && value.unresolved()
                                        && value.condition().equals(condition));
    }

    private static Verdict verdict(
            Course course, boolean agreed, Optional<Comparison.Settled> settled) {
        if (course.latest().interval().isEmpty()) {
            return Verdict.TOO_FEW_ROUNDS;
        }
        return agreed
                ? settled.map(each -> each.conclusion().verdict()).orElse(course.latest().verdict())
                : Verdict.NOT_SETTLED;
    }

    private boolean leadsTo(Gathered gathered, Conclusion stated, Conclusion halved) {
        return setting.course(gathered.stated()).conclusion().equals(stated)
                && setting.course(gathered.halved()).conclusion().equals(halved);
    }

    private static Comparison.Settled settled(Finding finding, Gathered gathered) {
        return new Comparison.Settled(gathered.roundsUntil(finding.n()), finding.conclusion());
    }

    /** The first look on record that settled it: whatever version reads it, that verdict stays. */
    private Optional<Comparison.Settled> recorded(Condition condition) {
        List<Comparison.Settled> settled = new ArrayList<>();
        for (Look look : state.captured().looks()) {
            for (Look.Line line : look.lines()) {
                if (line.settled()
                        && line.measure().equals(setting.measure().id())
                        && line.condition().equals(condition.id())) {
                    verdict(line.verdict())
                            .map(verdict -> Conclusion.of(verdict, change(line)))
                            .map(conclusion -> new Comparison.Settled(look.round(), conclusion))
                            .ifPresent(settled::add);
                }
            }
        }
        return settled.stream().findFirst();
    }

    private double change(Look.Line line) {
        return setting.scale().inward(line.estimate().orElse(Double.NaN));
    }

    private static Optional<Verdict> verdict(String word) {
        return Arrays.stream(Verdict.values()).filter(each -> each.word().equals(word)).findFirst();
    }

    private Gathered gathered(Evidence evidence, Condition condition) {
        return gathered(
                Values.of(evidence, setting.measure()), evidence.completeRounds(), condition);
    }

    private Gathered gathered(
            List<DonningValue> values, List<Integer> rounds, Condition condition) {
        return Gathered.of(
                setting, values, rounds, state.protocol().reference().id(), condition.id());
    }

    private Forecast forecast(Gathered gathered, Judged judged) {
        long seed = state.opening().orElseThrow().event().seed();
        return judged.forecast(setting, seed, gathered.rounds());
    }
}
