package rigside.command;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
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

    private enum Design {
        ROUNDS,
        INDEPENDENT
    }

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
        if (fewest < Plan.LEAST_ROUNDS || most < fewest || most > Plan.MOST_ROUNDS) {
            throw new ParameterException(
                    command,
                    "--fewest "
                            + fewest
                            + " and --most "
                            + most
                            + ": fewest must be 2 or more, most at least that and at most "
                            + Plan.MOST_ROUNDS);
        }
        Compared.Scale scale = oneOf(command, "--compare", compare, Compared.Scale.class);
        Meaningful band =
                Meaningful.parse(meaningful, scale)
                        .orElseThrow(() -> notMeaningful(command, meaningful, scale));
        Compared compared =
                new Compared(
                        scale,
                        band.low(),
                        band.high(),
                        Meaningful.words(meaningful),
                        oneOf(command, "--matters", matters, Compared.Matters.class),
                        true,
                        OptionalDouble.empty());
        return new Terms(file, compared, plan(command));
    }

    private Plan plan(CommandLine command) {
        return new Plan(
                fewest,
                most,
                confidence(command, confidence),
                exponent(command),
                oneOf(command, "--design", design, Design.class) == Design.ROUNDS
                        ? Plan.Design.ROUNDS
                        : Plan.Design.INDEPENDENT_DONNINGS,
                Plan.Order.AS_LISTED,
                Plan.Until.SHOWN,
                Plan.Until.SHOWN,
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private double exponent(CommandLine command) {
        // NaN fails.
        if (!(exponent >= Plan.LEAST_EXPONENT && exponent <= Plan.MOST_EXPONENT)) {
            throw new ParameterException(
                    command,
                    "--exponent is '"
                            + exponent
                            + "', must be from 0.5 to 5: 2 is good for most plans");
        }
        return exponent;
    }

    /** A confidence in words: {@code 0.95} or {@code 95%}. */
    static double confidence(CommandLine command, String confidence) {
        String text = confidence.strip().replace(',', '.');
        boolean percent = text.endsWith("%");
        double share = Double.NaN;
        try {
            String number = percent ? text.substring(0, text.length() - 1).strip() : text;
            share = Double.parseDouble(number) / (percent ? 100 : 1);
        } catch (NumberFormatException notANumber) {
            share = Double.NaN;
        }
        // NaN fails.
        if (!(share >= Plan.LEAST_CONFIDENCE && share <= Plan.MOST_CONFIDENCE)) {
            throw new ParameterException(
                    command,
                    "--confidence is '"
                            + confidence
                            + "', must be from 0.80 to 0.999, such as 0.95");
        }
        return share;
    }

    /** Says which words for what would matter fit. */
    static ParameterException notMeaningful(
            CommandLine command, String meaningful, Compared.Scale scale) {
        return new ParameterException(
                command,
                "--meaningful is '"
                        + meaningful
                        + "', must be "
                        + (scale == Compared.Scale.RATIO
                                ? "a percentage above 0, a factor above 1 or two factors around 1:"
                                        + " '10%', '2 times', '0.8 to 1.25'"
                                : "a number above 0 or two limits around 0: '25', '-10 to 25'"));
    }

    /** The constant that is spelt so in small letters. */
    static <E extends Enum<E>> E oneOf(
            CommandLine command, String option, String word, Class<E> kind) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        option
                                                + " is '"
                                                + word
                                                + "', must be one of "
                                                + String.join(
                                                        ", ",
                                                        Arrays.stream(kind.getEnumConstants())
                                                                .map(
                                                                        each ->
                                                                                each.name()
                                                                                        .toLowerCase(
                                                                                                Locale
                                                                                                        .ROOT))
                                                                .toList())));
    }
}
