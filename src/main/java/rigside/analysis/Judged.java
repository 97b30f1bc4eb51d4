package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.Conclusion;
import rigside.decide.Course;
import rigside.decide.Finding;
import rigside.decide.Forecast;
import rigside.decide.Interval;
import rigside.decide.Limits;
import rigside.decide.Verdict;

/**
 * What the looks at one comparison led to.
 *
 * @param rows the values as they stand and as stated
 * @param course all looks at them
 * @param verdict what holds
 * @param settledAt when it first settled
 * @param planUsedUp whether the plan has no further look
 * @param onward whether further rounds may follow
 * @param boundedAgrees whether bounded values at half their penetration lead to the same
 * @param dependsOnChanged whether what was struck out or amended after a look would lead to
 *     something else as it was then
 * @param otherwise what the values say when they are taken in another way
 */
record Judged(
        Rows rows,
        Course course,
        Verdict verdict,
        Optional<Comparison.Settled> settledAt,
        boolean planUsedUp,
        Onward onward,
        boolean boundedAgrees,
        boolean dependsOnChanged,
        Otherwise otherwise) {

    /**
     * The comparison in full.
     *
     * @param ids the ids of the condition and of the reference
     * @param unresolved whether the counter resolved none of some donning's exercises
     */
    Comparison comparison(
            Wording wording,
            Ids ids,
            Forecast forecast,
            boolean unresolved,
            List<Integer> entries,
            List<String> remarks) {
        Setting setting = wording.setting();
        Finding latest = course.latest();
        double estimate = setting.scale().outward(latest.estimate());
        Optional<Limits> interval = latest.interval().map(each -> read(each, setting.scale()));
        boolean lacking = Double.isNaN(estimate) && !rows.rounds().isEmpty();
        String found =
                lacking
                        ? wording.nothing()
                        : wording.found(
                                rows,
                                estimate,
                                interval,
                                differsNow() ? latest.verdict() : verdict);
        return new Comparison(
                setting.measure().id(),
                ids.condition(),
                ids.reference(),
                setting.scale().isRatio(),
                setting.compared().decides(),
                latest.n(),
                Double.isNaN(estimate) ? OptionalDouble.empty() : OptionalDouble.of(estimate),
                interval,
                latest.interval().isPresent()
                        ? OptionalDouble.of(latest.interval().get().critical())
                        : OptionalDouble.empty(),
                setting.band(),
                setting.compared().matters(),
                verdict,
                settledAt,
                latest.verdict(),
                isContradicted(setting),
                planUsedUp,
                forecast,
                latest.atResolution(),
                dependsOnChanged,
                boundedAgrees,
                entries,
                course.looks().stream().flatMap(look -> seen(look, setting).stream()).toList(),
                new Comparison.Words(
                        differsNow()
                                ? wording.staying(
                                                settledAt.orElseThrow(),
                                                settlingEstimate(setting),
                                                isContradicted(setting))
                                        + found
                                : found,
                        new Technical(setting, rows, course).sentence(),
                        new Advice(wording, rows, onward)
                                .next(
                                        verdict,
                                        planUsedUp,
                                        latest.atResolution(),
                                        unresolved,
                                        isContradicted(setting),
                                        forecast),
                        new Change(wording, this).sentence(),
                        remarks));
    }

    /** Whether the latest look by itself says something else than the verdict that stays. */
    boolean differsNow() {
        return verdict.settled()
                && !settledAt.orElseThrow().conclusion().equals(course.latest().conclusion());
    }

    /** Whether the latest interval holds nothing of what the verdict that stays claims. */
    boolean isContradicted(Setting setting) {
        if (!differsNow() || course.latest().interval().isEmpty()) {
            return false;
        }
        Interval latest = course.latest().interval().get();
        Conclusion claimed = settledAt.orElseThrow().conclusion();
        boolean below = latest.upper() < setting.compared().bandHigh();
        boolean above = latest.lower() > setting.compared().bandLow();
        return switch (claimed.direction()) {
            case 1 -> below;
            case -1 -> above;
            default -> course.latest().verdict() == Verdict.MEANINGFUL_DIFFERENCE;
        };
    }

    /** The change people read at the look that settled it; empty where a record says it did. */
    private OptionalDouble settlingEstimate(Setting setting) {
        Conclusion reached = settledAt.orElseThrow().conclusion();
        return course.settling().stream()
                .filter(look -> look.conclusion().equals(reached))
                .mapToDouble(look -> setting.scale().outward(look.estimate()))
                .findFirst();
    }

    private static Optional<Comparison.Seen> seen(Finding look, Setting setting) {
        return look.interval()
                .map(
                        interval ->
                                new Comparison.Seen(
                                        look.n(),
                                        setting.scale().outward(look.estimate()),
                                        read(interval, setting.scale()),
                                        interval.critical(),
                                        look.verdict(),
                                        interval.standardError(),
                                        interval.degreesOfFreedom(),
                                        interval.shift()));
    }

    /**
     * What going on may bring, or what a new plan would need where the repeats are over. Silent
     * where values that must agree lead to different conclusions, since a forecast from one of them
     * would promise too much.
     *
     * @param seed of the session
     * @param rounds complete so far
     */
    Forecast forecast(Setting setting, long seed, int rounds) {
        if (!boundedAgrees || dependsOnChanged) {
            return Forecast.SILENT;
        }
        Forecast forecast = Forecasting.of(setting, rows, seed, rounds);
        return isOpen() ? forecast : forecast.withNoneToCome();
    }

    /** Whether a further look may come. */
    boolean isOpen() {
        return !planUsedUp && onward == Onward.OPEN;
    }

    /** The ids of the two conditions compared. */
    record Ids(String condition, String reference) {}

    private static Limits read(Interval interval, Scale scale) {
        return new Limits(scale.outward(interval.lower()), scale.outward(interval.upper()));
    }
}
