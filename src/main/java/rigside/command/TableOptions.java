package rigside.command;

import java.nio.file.Path;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigside.analysis.Meaningful;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/** The options of {@code analyse} that go with a table of values. */
final class TableOptions {

    @Option(
            names = "--values",
            required = true,
            paramLabel = "FILE.csv",
            description = "a table with the columns round, condition, value")
    private Path file;

    @Option(
            names = "--fewest",
            required = true,
            paramLabel = "N",
            description = "rounds (values per condition) before the first look, 2 or more")
    private int fewest;

    @Option(
            names = "--most",
            required = true,
            paramLabel = "N",
            description = "rounds (values per condition) after which the plan is used up")
    private int most;

    @Option(
            names = "--meaningful",
            required = true,
            paramLabel = "SIZE",
            description =
                    "what would matter: '10%%', '2 times' or '0.8 to 1.25' of a ratio, '25' or"
                            + " '-10 to 25' of a difference")
    private String meaningful;

    @Option(
            names = "--confidence",
            defaultValue = "0.95",
            paramLabel = "SHARE",
            description = "over all looks, 0.95 or 95%% (default ${DEFAULT-VALUE})")
    private String confidence;

    @Option(
            names = "--compare",
            defaultValue = "ratio",
            paramLabel = "ratio|difference",
            description = "how two values are compared (default ${DEFAULT-VALUE})")
    private String compare;

    @Option(
            names = "--design",
            defaultValue = "rounds",
            paramLabel = "rounds|independent",
            description =
                    "whether values are compared within their round (default) or each by itself")
    private String design;

    @Option(
            names = "--matters",
            defaultValue = "either",
            paramLabel = "either|increase|decrease",
            description = "the direction in which a change matters (default ${DEFAULT-VALUE})")
    private String matters;

    @Option(
            names = "--exponent",
            defaultValue = "2",
            paramLabel = "POWER",
            description =
                    "how the error is spent: small powers early, large ones late (default"
                            + " ${DEFAULT-VALUE})")
    private double exponent;

    /** The options, checked. */
    record Terms(Path file, Compared compared, Plan plan) {
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
        OptionRules.rounds(command, fewest, most);
        Compared.Scale scale =
                OptionRules.oneOf(command, "--compare", compare, Compared.Scale.class);
        Meaningful band = OptionRules.meaningful(command, meaningful, scale);
        Compared compared =
                new Compared(
                        scale,
                        band.low(),
                        band.high(),
                        Meaningful.words(meaningful),
                        OptionRules.oneOf(command, "--matters", matters, Compared.Matters.class),
                        true,
                        OptionalDouble.empty());
        Plan plan =
                Plan.bare(
                        fewest,
                        most,
                        OptionRules.confidence(command, confidence),
                        OptionRules.exponent(command, exponent),
                        OptionRules.design(command, design));
        return new Terms(file, compared, plan);
    }
}
