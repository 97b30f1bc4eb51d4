package rigside.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import rigside.analysis.Meaningful;
import rigside.measure.Numbers;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/**
 * What the options of {@code plan} and {@code analyse} may say. Each rule gives the value, or
 * throws a {@link ParameterException} that tells what would be right.
 */
final class OptionRules {

    private OptionRules() {}

    /** Looks from the fewest to the most rounds; the same limits as in a protocol. */
    static void rounds(CommandLine command, int fewest, int most) {
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
    }

    /** A confidence: {@code 0.95} or {@code 95%}. */
    static double confidence(CommandLine command, String text) {
        double share = share(text);
        // NaN fails.
        if (!(share >= Plan.LEAST_CONFIDENCE && share <= Plan.MOST_CONFIDENCE)) {
            throw wrong(command, "--confidence", text, "must be from 0.80 to 0.999, such as 0.95");
        }
        return share;
    }

    /** A wished chance: {@code 0.8} or {@code 80%}. */
    static double chance(CommandLine command, String option, String text) {
        double share = share(text);
        // NaN fails.
        if (!(share > 0 && share < 1)) {
            throw wrong(command, option, text, "must be above 0 and below 1, such as 0.8");
        }
        return share;
    }

    /** The power of the error-spending function. */
    static double exponent(CommandLine command, double exponent) {
        // NaN fails.
        if (!(exponent >= Plan.LEAST_EXPONENT && exponent <= Plan.MOST_EXPONENT)) {
            throw wrong(
                    command,
                    "--exponent",
                    exponent,
                    "must be from 0.5 to 5: 2 is good for most plans");
        }
        return exponent;
    }

    /** A size above 0. */
    static double positive(CommandLine command, String option, double number) {
        // NaN fails.
        if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
            throw wrong(command, option, number, "must be above 0");
        }
        return number;
    }

    /** What would matter, on this scale. */
    static Meaningful meaningful(CommandLine command, String text, Compared.Scale scale) {
        return Meaningful.parse(text, scale)
                .orElseThrow(
                        () ->
                                wrong(
                                        command,
                                        "--meaningful",
                                        text,
                                        scale == Compared.Scale.RATIO
                                                ? "must be a percentage above 0, a factor above 1"
                                                        + " or two factors around 1: '10%', '2"
                                                        + " times', '0.8 to 1.25'"
                                                : "must be a number above 0 or two limits around 0:"
                                                        + " '25', '-10 to 25'"));
    }

    /** Values set against each other within their round, or each by itself. */
    static Plan.Design design(CommandLine command, String word) {
        return oneOf(command, "--design", word, Design.class) == Design.ROUNDS
                ? Plan.Design.ROUNDS
                : Plan.Design.INDEPENDENT_DONNINGS;
    }

    /** The constant that is spelt so in small letters. */
    static <E extends Enum<E>> E oneOf(
            CommandLine command, String option, String word, Class<E> kind) {
        Optional<E> meant =
                Arrays.stream(kind.getEnumConstants())
                        .filter(each -> spelt(each).equals(word))
                        .findFirst();
        return meant.orElseThrow(
                () ->
                        wrong(
                                command,
                                option,
                                word,
                                "must be one of "
                                        + Arrays.stream(kind.getEnumConstants())
                                                .map(OptionRules::spelt)
                                                .collect(Collectors.joining(", "))));
    }

    /** An option that cannot be used as it is. */
    static ParameterException wrong(
            CommandLine command, String option, Object value, String mustBe) {
        return new ParameterException(command, option + " is '" + value + "', " + mustBe);
    }

    private enum Design {
        ROUNDS,
        INDEPENDENT
    }

    private static String spelt(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** NaN for what is neither a number nor a percentage. */
    private static double share(String text) {
        String plain = text.strip();
        boolean percent = plain.endsWith("%");
        String number = percent ? plain.substring(0, plain.length() - 1) : plain;
        double share = NumberWords.decimal(number).orElse(Double.NaN);
        return percent ? Numbers.ofPercent(share) : share;
    }
}
