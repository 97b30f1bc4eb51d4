package rigside.command;

import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import rigside.analysis.PlanTerms;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;

/**
 * The options of {@code plan} that say what is fixed and what is believed. Beside a protocol they
 * replace what it says.
 */
final class PlanOptions {
    static final String NEEDED =
            "without a protocol %s is needed, as in: plan --fewest 3 --most 10 --meaningful 10%%"
                    + " --spread 0.10";

    @Mixin private PlanFixed fixed;
    @Mixin private PlanBelieved believed;

    /**
     * Without a protocol.
     *
     * @throws ParameterException if an option is missing or cannot be used
     */
    PlanTerms terms(CommandLine command) {
        PlanTerms terms =
                PlanTerms.of(
                        fixed.compared(command, NEEDED),
                        fixed.plan(command, NEEDED),
                        believed.neededSpread(command),
                        believed.costs(command));
        return believed.weighingTrials(command, terms);
    }

    /**
     * Of a protocol's measure, with what the options say instead.
     *
     * @param unknown what is said where nobody says the spread
     * @throws ParameterException if an option cannot be used, or no spread is known
     */
    PlanTerms terms(CommandLine command, Protocol protocol, Measure measure, String unknown) {
        fixed.refuseBesideAProtocol(command);
        believed.refuseBesideAProtocol(command);
        Optional<PlanTerms> terms =
                PlanTerms.of(
                        protocol.withPlan(fixed.over(command, protocol.plan())),
                        measure.withCompared(fixed.over(command, measure.compared().orElseThrow())),
                        believed.spread(command));
        return believed.weighingTrials(
                command, terms.orElseThrow(() -> new ParameterException(command, unknown)));
    }

    /** Whether the spread is said by an option. */
    boolean saysSpread(CommandLine command) {
        return believed.spread(command).isPresent();
    }

    /**
     * @param words what is said where it is missing, with a place for the option
     */
    static <T> T needed(CommandLine command, String option, Optional<T> given, String words) {
        return given.orElseThrow(
                () -> new ParameterException(command, String.format(words, option)));
    }

    static void refuse(CommandLine command, String option, Optional<?> given) {
        if (given.isPresent()) {
            throw new ParameterException(
                    command, option + " is said by the protocol itself; leave it out");
        }
    }
}
