package rigside.screen;

import java.util.List;
import rigside.analysis.Comparison;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.decide.Limits;
import rigside.decide.Verdict;

/** Words and flags as an analysis may give them, invented; put into what may be shown. */
final class Reasons {
    private Reasons() {}

    /** The view with words, method and two flags a measure, if results are out. */
    static View in(View view) {
        Shown shown = view.shown();
        Shown told =
                new Shown(
                        shown.trialClock(),
                        shown.result(),
                        shown.concealed(),
                        shown.completeRounds(),
                        shown.enough(),
                        shown.planUsedUp(),
                        shown.measures().stream().map(Reasons::told).toList(),
                        shown.next());
        return new View(
                view.state(),
                told,
                view.now(),
                view.page(),
                view.selected(),
                view.prompt(),
                view.typed(),
                view.message(),
                view.style());
    }

    private static MeasureResult told(MeasureResult all) {
        if (all.comparisons().isEmpty()) {
            return all;
        }
        List<Comparison> comparisons = all.comparisons().stream().map(Reasons::told).toList();
        return new MeasureResult(
                all.measure(),
                all.values(),
                all.conditions(),
                comparisons,
                all.promise(),
                all.remarks(),
                List.of(
                        new Flag(
                                Flag.Kind.FAR_VALUE,
                                "the value of round 2 lies far from the others; so far a value"
                                        + " would be found in 3 of 100 sound sets.",
                                List.of(4),
                                List.of(
                                        new Flag.WhatIf(
                                                "without round 2",
                                                comparisons.get(0),
                                                without(comparisons.get(0))))),
                        new Flag(
                                Flag.Kind.ROUND_TREND,
                                "the values rise by about 2 % a round.",
                                List.of(),
                                List.of())),
                List.of(
                        "The differences of the logarithms of one round are averaged.",
                        "The critical value is that of the t statistic at every look together, so"
                                + " that looking often costs nothing."));
    }

    private static Comparison told(Comparison all) {
        return changed(
                all,
                all.interval().orElse(null),
                all.verdict(),
                new Comparison.Words(
                        all.sentence(),
                        "mean log ratio -0.146 (s = 0.06, 2 degrees of freedom), repeated"
                                + " confidence interval with critical value 4.85.",
                        all.next(),
                        "A further round with a ratio above 1.4 would unsettle it.",
                        all.remarks()));
    }

    private static Comparison without(Comparison all) {
        return changed(
                all,
                new Limits(0.4, 1.3),
                Verdict.NOT_SETTLED,
                new Comparison.Words(
                        "Without round 2 it would be 0.72 times (95 % interval 0.4 to 1.3): not"
                                + " settled.",
                        "", "", "", List.of()));
    }

    private static Comparison changed(
            Comparison all, Limits interval, Verdict verdict, Comparison.Words words) {
        return new Comparison(
                all.measure(),
                all.condition(),
                all.reference(),
                all.ratio(),
                all.decides(),
                all.n(),
                all.estimate(),
                java.util.Optional.ofNullable(interval),
                all.critical(),
                all.band(),
                verdict,
                all.settledAt(),
                all.present(),
                all.contradicted(),
                all.planUsedUp(),
                all.forecast(),
                all.atResolution(),
                all.dependsOnStruck(),
                all.boundedAgrees(),
                all.entries(),
                all.looks(),
                words);
    }
}
