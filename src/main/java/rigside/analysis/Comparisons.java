package rigside.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rigside.decide.Conclusion;
import rigside.decide.Course;
import rigside.decide.Finding;
import rigside.decide.Forecast;
import rigside.decide.Verdict;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.State;

/** The comparisons of one measure in a session. */
final class Comparisons {

    private final State state;
    private final Setting setting;
    private final Onward onward;

    /** The values as they stand, and what they were before some were struck out or amended. */
    private final Evidence evidence;

    private final List<Evidence> alternatives;
    private final List<DonningValue> values;
    private final List<Integer> rounds;

    Comparisons(State state, Measure measure) {
        this(state, measure, Onward.of(state, false));
    }

    Comparisons(State state, Measure measure, Onward onward) {
        this(
                state,
                Sharing.setting(state.protocol(), measure),
                onward,
                Evidence.of(state),
                Evidence.alternatives(state, measure.id()));
    }

    private Comparisons(
            State state,
            Setting setting,
            Onward onward,
            Evidence evidence,
            List<Evidence> alternatives) {
        this.state = state;
        this.setting = setting;
        this.onward = onward;
        this.evidence = evidence;
        this.alternatives = alternatives;
        this.values = Values.of(evidence, setting.measure());
        this.rounds = evidence.completeRounds();
    }

    /** One for each condition but the reference. */
    List<Comparison> all() {
        return all(true);
    }

    /** The same, silent about what going on may bring, which takes most of the time. */
    List<Comparison> withoutForecasts() {
        return all(false);
    }

    private List<Comparison> all(boolean forecasts) {
        return state.protocol().conditions().stream()
                .skip(1)
                .map(condition -> of(condition, forecasts))
                .toList();
    }

    Setting setting() {
        return setting;
    }

    /**
     * The comparison of a condition as it would be without these donnings, by the same rules. What
     * the looks on record concluded had them, and is not asked.
     */
    Comparison without(String condition, Set<Integer> donnings) {
        Comparisons left =
                new Comparisons(
                        state,
                        setting,
                        onward,
                        evidence.without(donnings),
                        alternatives.stream().map(each -> each.without(donnings)).toList());
        return left.view(state.protocol().condition(condition).orElseThrow());
    }

    /** The comparison of a condition as other evidence has it, by the same rules. */
    Comparison on(Evidence other, String condition) {
        return new Comparisons(state, setting, onward, other, List.of())
                .view(state.protocol().condition(condition).orElseThrow());
    }

    private Comparison of(Condition condition, boolean forecasts) {
        Gathered gathered = gathered(values, rounds, condition);
        Judged judged =
                judged(gathered, condition, new OnRecord(state, setting).settled(condition.id()));
        boolean unresolved = values.stream().anyMatch(each -> each.counts() && each.unresolved());
        long seed = state.opening().orElseThrow().event().seed();
        return judged.comparison(
                wording(condition),
                new Judged.Ids(condition.id(), state.protocol().reference().id()),
                forecasts ? judged.forecast(setting, seed, gathered.rounds()) : Forecast.SILENT,
                unresolved && !judged.boundedAgrees(),
                gathered.entries(),
                new ComparisonRemarks(state, setting, condition, gathered, judged).all());
    }

    private Comparison view(Condition condition) {
        Gathered gathered = gathered(values, rounds, condition);
        return judged(gathered, condition, Optional.empty())
                .comparison(
                        wording(condition),
                        new Judged.Ids(condition.id(), state.protocol().reference().id()),
                        Forecast.SILENT,
                        false,
                        gathered.entries(),
                        List.of());
    }

    private Wording wording(Condition condition) {
        return new Wording(setting, condition.title(), state.protocol().reference().title(), true);
    }

    private Judged judged(
            Gathered gathered, Condition condition, Optional<Comparison.Settled> recorded) {
        Course course = setting.course(gathered.stated());
        Course ofHalved = setting.course(gathered.halved());
        Conclusion halved = ofHalved.conclusion();
        boolean open = isUnresolvedOnBothSides(condition, settledBy(course, ofHalved, gathered));
        boolean boundedAgrees = halved.equals(course.conclusion()) && !open;
        List<Gathered> unchanged =
                alternatives.stream()
                        .map(
                                each ->
                                        gathered(
                                                Values.of(each, setting.measure()),
                                                each.completeRounds(),
                                                condition))
                        .toList();
        boolean unchangedAgrees =
                unchanged.stream().allMatch(each -> leadsTo(each, course.conclusion(), halved))
                        && (unchanged.isEmpty()
                                || recorded.map(Comparison.Settled::conclusion)
                                        .filter(each -> !each.equals(course.conclusion()))
                                        .isEmpty());
        Optional<Comparison.Settled> settled =
                recorded.or(() -> course.settling().map(finding -> settled(finding, gathered)));
        Verdict verdict = verdict(course, boundedAgrees && unchangedAgrees, settled);
        boolean bounded = !gathered.stated().equals(gathered.halved());
        return new Judged(
                gathered.stated(),
                course,
                verdict,
                settled,
                gathered.rounds() >= setting.lastRound() || course.latest().planUsedUp(),
                onward,
                boundedAgrees,
                !unchangedAgrees,
                new Otherwise(
                        bounded ? Optional.of(halved) : Optional.empty(),
                        open,
                        IntStream.range(0, unchanged.size())
                                .mapToObj(
                                        at ->
                                                new Otherwise.Way(
                                                        alternatives.get(at),
                                                        setting.course(unchanged.get(at).stated())
                                                                .conclusion()))
                                .toList(),
                        verdict.settled() ? restsOn(condition, course, halved) : RestsOn.NOTHING));
    }

    /**
     * Striking out a donning takes its whole round out until it is done again; striking out an
     * entry takes its value, and where values stand for themselves leaves the other of the round.
     */
    private RestsOn restsOn(Condition condition, Course course, Conclusion halved) {
        Predicate<Gathered> differs = each -> !leadsTo(each, course.conclusion(), halved);
        List<Integer> needed =
                rounds.stream().filter(out -> differs.test(without(out, condition))).toList();
        if (setting.isPaired()) {
            return RestsOn.rounds(needed, course.latest().n());
        }
        List<DonningValue> used =
                values.stream()
                        .filter(each -> each.counts() && rounds.contains(each.round()))
                        .filter(
                                each ->
                                        each.condition().equals(condition.id())
                                                || each.condition()
                                                        .equals(state.protocol().reference().id()))
                        .toList();
        List<Integer> donnings =
                Watched.donnings(
                        used.stream()
                                .filter(
                                        out ->
                                                needed.contains(out.round())
                                                        || differs.test(without(out, condition)))
                                .toList());
        return setting.isByTrial()
                ? RestsOn.donnings(donnings, used.size())
                : RestsOn.values(donnings, used.size());
    }

    private Gathered without(int round, Condition condition) {
        return gathered(values, rounds.stream().filter(each -> each != round).toList(), condition);
    }

    private Gathered without(DonningValue out, Condition condition) {
        return gathered(
                values.stream().filter(each -> !each.equals(out)).toList(), rounds, condition);
    }

    /** The rounds by which both ways had settled, since a verdict stays; all while one has not. */
    private List<Integer> settledBy(Course stated, Course halved, Gathered gathered) {
        if (stated.settling().isEmpty() || halved.settling().isEmpty()) {
            return rounds;
        }
        int n = Math.max(stated.settling().get().n(), halved.settling().get().n());
        return rounds.subList(0, Math.min(rounds.size(), gathered.roundsUntil(n)));
    }

    /**
     * Taken at half on both sides, "at least" against "at least" keeps its ratio: their agreement
     * says nothing.
     */
    private boolean isUnresolvedOnBothSides(Condition condition, List<Integer> of) {
        return isUnresolved(condition.id(), of)
                && isUnresolved(state.protocol().reference().id(), of);
    }

    private boolean isUnresolved(String condition, List<Integer> of) {
        return values.stream()
                .anyMatch(
                        value ->
                                value.counts()
                                        && value.unresolved()
                                        && of.contains(value.round())
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

    private Gathered gathered(List<DonningValue> of, List<Integer> complete, Condition condition) {
        return Gathered.of(
                setting, of, complete, state.protocol().reference().id(), condition.id());
    }

    /** How all this is reckoned. */
    List<String> method(List<Comparison> comparisons) {
        return new Method(setting, values, comparisons, alternatives).all();
    }

    /** What is worth a second look in the values. */
    List<Flag> flags(List<Comparison> comparisons) {
        Map<String, String> titles = new LinkedHashMap<>();
        state.protocol().conditions().forEach(each -> titles.put(each.id(), each.title()));
        return Flags.of(
                new Watched(setting, values, rounds, titles),
                new WhatIfs(
                        comparisons,
                        (condition, left) ->
                                without(condition, Set.copyOf(Watched.donnings(left)))));
    }
}
