package rigside.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/** The options of {@code analyse} that go with a table of values. */
final class TableOptions {
    private static final String NEEDED =
            "beside a table %s is needed, as in: analyse --values FILE.csv --fewest 3 --most 10"
                    + " --meaningful 10%%";

    @Option(
            names = "--values",
            required = true,
            paramLabel = "FILE.csv",
            description = "a table with the columns round, condition, value")
    private Path file;

    @Option(
            names = "--reference",
            paramLabel = "NAME",
            description =
                    "the condition the others are compared with (that of the first line of the"
                            + " table)")
    private Optional<String> reference = Optional.empty();

    @Option(
            names = "--resolution",
            paramLabel = "STEP",
            description =
                    "the smallest step the values show, where it is not that of their last digits")
    private Optional<Double> resolution = Optional.empty();

    @ArgGroup(exclusive = false, multiplicity = "1")
    private PlanFixed fixed;

    /** The options, checked. */
    record Terms(
            Path file,
            Optional<String> reference,
            OptionalDouble resolution,
            Compared compared,
            Plan plan) {
        boolean isRatio() {
            return compared.scale() == Compared.Scale.RATIO;
        }
    }

    /**
     * The options as the analysis takes them.
     *
     * @throws ParameterException if one cannot be used
     */
    Terms terms(CommandLine command) {
        return new Terms(
                file,
                reference,
                resolution(command),
                fixed.compared(command, NEEDED),
                fixed.plan(command, NEEDED));
    }

    private OptionalDouble resolution(CommandLine command) {
        return resolution.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        OptionRules.positive(command, "--resolution", resolution.get()));
    }
}
