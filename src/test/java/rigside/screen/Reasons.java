package rigside.screen;

import java.util.List;
import java.util.Optional;
import rigside.analysis.Comparison;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.protocol.Measure;

/**
 * Flags put into what may be shown, in the sentences of the analysis but about invented figures: no
 * short story has them.
 */
final class Reasons {
    private Reasons() {}

    /** The view with two flags a measure, if results are out. */
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
        Comparison first = all.comparisons().get(0);
        return new MeasureResult(
                all.measure(),
                all.values(),
                all.conditions(),
                all.comparisons(),
                all.promise(),
                all.remarks(),
                List.of(
                        new Flag(
                                Flag.Kind.FAR_VALUE,
                                "Round 2 stands apart: "
                                        + change(all, "0.310")
                                        + " there, in the other rounds 0.920 to 1.10 times, which"
                                        + " chance alone does about 4 times in 1000. Look at the"
                                        + " notes of donnings 3 and 4; the round counts all the"
                                        + " same.",
                                List.of(3, 4),
                                List.of(
                                        new Flag.WhatIf(
                                                "without round 2", first, without(all, first)))),
                        new Flag(
                                Flag.Kind.ROUND_TREND,
                                "The effect of the mask with the disc drifts over the rounds: it"
                                        + " goes from 0.98 to 1.12 times along a straight line, which"
                                        + " chance alone does about 8 times in 1000. One figure for all"
                                        + " rounds then says too little: ask what changed on the way,"
                                        + " such as wear, tiredness or the room.",
                                List.of(),
                                List.of())),
                all.method(),
                all.repeatability());
    }

    private static String change(MeasureResult all, String figure) {
        return (all.measure().kind() instanceof Measure.TimedInhalation
                ? "inhaling takes " + figure + " times as long"
                : "the fit factor is " + figure + " times as high");
    }

    private static Comparison without(MeasureResult measure, Comparison all) {
        return new Comparison(
                all.measure(),
                all.condition(),
                all.reference(),
                all.ratio(),
                all.decides(),
                all.n(),
                all.estimate(),
                Optional.of(new Limits(0.4, 1.3)),
                all.critical(),
                all.band(),
                all.matters(),
                Verdict.NOT_SETTLED,
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
                new Comparison.Words(
                        "Mask with the disc, compared with Mask as it is: "
                                + change(measure, "0.721")
                                + " (95 % interval 0.400 to 1.30): not settled.",
                        "",
                        "Only a view: a verdict reached by choosing values is none.",
                        "",
                        List.of()));
    }
}
