package rigside.analysis;

import java.util.List;
import java.util.OptionalDouble;
import rigside.decide.Summary;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Captured;
import rigside.session.Donning;
import rigside.session.State;

/** Summaries of one measure, one for each condition. */
record Summaries(State state, Measure measure, List<DonningValue> values) {

    List<ConditionSummary> all() {
        return state.protocol().conditions().stream().map(this::of).toList();
    }

    private ConditionSummary of(Condition condition) {
        List<DonningValue> counting =
                values.stream()
                        .filter(each -> each.counts() && each.condition().equals(condition.id()))
                        .toList();
        Scale scale = Scale.of(measure);
        List<Double> read = counting.stream().map(each -> each.value().orElseThrow()).toList();
        Summary summary = Summary.of(read.stream().mapToDouble(scale::inward).toArray());
        double sd = summary.sd();
        return new ConditionSummary(
                condition.id(),
                read,
                scale.isRatio(),
                known(scale.outward(summary.mean())),
                counting.stream().anyMatch(DonningValue::bounded),
                known(scale.outward(sd)),
                known(
                        scale.isRatio()
                                ? Math.sqrt(Math.expm1(sd * sd))
                                : summary.coefficientOfVariation()),
                count(counting, Level.REACHED),
                count(counting, Level.MISSED),
                failedChecks(condition),
                ended(condition, Donning.Outcome.ABANDONED),
                ended(condition, Donning.Outcome.STRUCK));
    }

    private static OptionalDouble known(double number) {
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    private static int count(List<DonningValue> values, Level level) {
        return (int) values.stream().filter(each -> each.level() == level).count();
    }

    private List<String> failedChecks(Condition condition) {
        return state.captured().failedChecks().stream()
                .filter(failed -> isOf(failed, condition))
                .map(failed -> "donning " + failed.place().donning() + ": " + failed.text())
                .toList();
    }

    private boolean isOf(Captured.FailedCheck failed, Condition condition) {
        return state.course()
                .donning(failed.place().donning())
                .filter(donning -> donning.condition().equals(condition.id()))
                .isPresent();
    }

    private List<String> ended(Condition condition, Donning.Outcome outcome) {
        return state.course().donnings().stream()
                .filter(
                        donning ->
                                donning.outcome() == outcome
                                        && donning.condition().equals(condition.id()))
                .map(donning -> "donning " + donning.number() + ": " + donning.reason())
                .toList();
    }
}
