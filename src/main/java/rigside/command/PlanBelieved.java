package rigside.command;

import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigside.analysis.PlanTerms;

/** The options of {@code plan} that say what is believed of the values, and what they cost. */
final class PlanBelieved {

    /** The most trials of one donning; a protocol has the same limit. */
    private static final int MOST_TRIALS = 50;

    /** Without a protocol two conditions are compared. */
    private static final int CONDITIONS = 2;

    private static final int SECONDS = 60;

    @Option(
            names = "--spread",
            paramLabel = "SD",
            description =
                    "standard deviation of what one round gives: of its log ratio (0.10 is about 10"
                            + " %%), of its difference in the unit of --meaningful; where values"
                            + " are independent, of one value's logarithm or of one value. The"
                            + " expected-spread of a protocol is that of one value, sqrt 2 smaller")
    private Optional<Double> spread = Optional.empty();

    @Option(
            names = "--trials",
            paramLabel = "N",
            description = "trials a donning's value is the mean of; a protocol says it itself")
    private Optional<Integer> trials = Optional.empty();

    @Option(
            names = "--trial-spread",
            paramLabel = "SD",
            description =
                    "standard deviation of one trial within its donning, on the same scale (its"
                            + " logarithm, for ratios): then the best number of trials is named too")
    private Optional<Double> trialSpread = Optional.empty();

    @Option(
            names = "--donning-takes",
            paramLabel = "MINUTES",
            description = "minutes of one donning without its trials; a protocol says it itself")
    private Optional<Double> donningMinutes = Optional.empty();

    @Option(
            names = "--trial-takes",
            paramLabel = "MINUTES",
            description = "minutes of one trial with its rest; a protocol says it itself")
    private Optional<Double> trialMinutes = Optional.empty();

    /** The spread of a round, which without a protocol has to be said. */
    double neededSpread(CommandLine command) {
        return OptionRules.positive(
                command,
                "--spread",
                PlanOptions.needed(command, "--spread", spread, PlanOptions.NEEDED));
    }

    /** The spread of a round; empty when it is not said. */
    OptionalDouble spread(CommandLine command) {
        return positive(command, "--spread", spread);
    }

    /** What a round costs; empty when neither a donning nor a trial is said to take time. */
    Optional<PlanTerms.Costs> costs(CommandLine command) {
        if (trials.isPresent() && trialMinutes.isEmpty()) {
            throw new ParameterException(
                    command, "--trials goes with --trial-takes, which says what a trial costs");
        }
        double donning = minutes(command, "--donning-takes", donningMinutes);
        double trial = minutes(command, "--trial-takes", trialMinutes);
        int count = trials(command);
        return donning + trial > 0
                ? Optional.of(
                        new PlanTerms.Costs(
                                CONDITIONS * SECONDS * donning,
                                CONDITIONS * SECONDS * trial,
                                count))
                : Optional.empty();
    }

    /** Refuses what a protocol says and no option replaces. */
    void refuseBesideAProtocol(CommandLine command) {
        PlanOptions.refuse(command, "--trials", trials);
        PlanOptions.refuse(command, "--donning-takes", donningMinutes);
        PlanOptions.refuse(command, "--trial-takes", trialMinutes);
    }

    /**
     * The terms with the spread of a trial, if it is said.
     *
     * @throws ParameterException if trials cannot be weighed against donnings, or would spread more
     *     than these
     */
    PlanTerms weighingTrials(CommandLine command, PlanTerms terms) {
        if (trialSpread.isEmpty()) {
            return terms;
        }
        double sd = OptionRules.positive(command, "--trial-spread", trialSpread.get());
        if (!terms.canWeighTrials()) {
            throw new ParameterException(
                    command,
                    "--trial-spread weighs more trials against more donnings by the time they"
                            + " take; that needs values that are means of trials, and what a trial"
                            + " takes ('trial-takes' in a protocol, --trial-takes without)");
        }
        return terms.weighingTrials(sd)
                .orElseThrow(
                        () ->
                                OptionRules.wrong(
                                        command,
                                        "--trial-spread",
                                        sd,
                                        "which is more than whole donnings spread; one of the two"
                                                + " spreads is wrong"));
    }

    private int trials(CommandLine command) {
        int count = trials.orElse(1);
        if (count < 1 || count > MOST_TRIALS) {
            throw OptionRules.wrong(command, "--trials", count, "must be 1 to " + MOST_TRIALS);
        }
        return count;
    }

    private static OptionalDouble positive(
            CommandLine command, String option, Optional<Double> number) {
        return number.isPresent()
                ? OptionalDouble.of(OptionRules.positive(command, option, number.get()))
                : OptionalDouble.empty();
    }

    private static double minutes(CommandLine command, String option, Optional<Double> number) {
        return positive(command, option, number).orElse(0);
    }
}
