package rigside.decide;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the rounds to come may bring.
 *
 * @param settlesWithinPlan chance that some look up to the last settles the question; empty when
 *     nothing can be said yet, and when none is to come any more
 * @param nextLook chance that the next look settles it; empty likewise
 * @param median further rounds (values per condition when independent) until it settles: half of
 *     the time no more are needed; empty when beyond the plan or when nothing can be said
 * @param low the tenth percentile of the same; empty likewise
 * @param high the ninetieth percentile of the same; empty likewise
 * @param meaningful chance of settling on a meaningful difference; 0 when nothing can be said
 * @param noMeaningful chance of settling on no meaningful difference; 0 when nothing can be said
 * @param needed when settling within the plan is less likely than not: about how many rounds in all
 *     a plan would need to settle in 8 of 10 cases, were change and spread just as seen; empty
 *     otherwise, and when more than {@link Forecasts#FARTHEST} would be needed
 */
public record Forecast(
        OptionalDouble settlesWithinPlan,
        OptionalDouble nextLook,
        OptionalInt median,
        OptionalInt low,
        OptionalInt high,
        double meaningful,
        double noMeaningful,
        OptionalInt needed) {

    /** Nothing can be said yet. */
    public static final Forecast SILENT =
            new Forecast(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    0,
                    0,
                    OptionalInt.empty());

    /** The same where no round is to come any more: only what a new plan would need is left. */
    public Forecast withNoneToCome() {
        return new Forecast(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                0,
                0,
                needed);
    }
}
