package rigside.analysis;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.protocol.Measure;

/**
 * What is too small to matter, as a command line words it.
 *
 * @param low lower end on the analysis scale, below 0
 * @param high upper end on the analysis scale, above 0
 */
public record Meaningful(double low, double high) {

    private static final String NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
    private static final String SIGNED = "(-?[0-9]+(?:[.,][0-9]+)?)";
    private static final Pattern PERCENT = Pattern.compile(NUMBER + "\\s*%");
    private static final Pattern TIMES = Pattern.compile(NUMBER + "\\s*(?:times|x)");
    private static final Pattern RANGE = Pattern.compile(SIGNED + "\\s*to\\s*" + SIGNED);
    private static final Pattern PLAIN = Pattern.compile(NUMBER);

    /**
     * For a ratio {@code 10%} (that is 1/1.10 to 1.10), {@code 2 times}, {@code 2x} or {@code 0.8
     * to 1.25}; for a difference a number, or two limits around 0.
     *
     * @return empty when the words do not fit the scale, or leave no band around no change
     */
    public static Optional<Meaningful> parse(String words, Measure.Compared.Scale scale) {
        String text = words.replaceAll("[\\u00A0\\u202F]", " ").strip();
        boolean ratio = Scale.of(scale).isRatio();
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            double low = number(range.group(1));
            double high = number(range.group(2));
            return ratio ? band(Math.log(low), Math.log(high)) : band(low, high);
        }
        Matcher percent = PERCENT.matcher(text);
        if (ratio && percent.matches()) {
            return around(Math.log1p(number(percent.group(1)) / 100));
        }
        Matcher times = TIMES.matcher(text);
        if (ratio && times.matches()) {
            return around(Math.log(number(times.group(1))));
        }
        return !ratio && PLAIN.matcher(text).matches() ? around(number(text)) : Optional.empty();
    }

    /** The same words the way sentences write them: {@code 10 %}, {@code 2 times}. */
    public static String words(String words) {
        return words.strip().replaceAll("\\s*%", " %").replaceAll("\\s*x$", " times");
    }

    private static Optional<Meaningful> around(double half) {
        return band(-half, half);
    }

    /** NaN, from the logarithm of a negative limit, fails. */
    private static Optional<Meaningful> band(double low, double high) {
        return low < 0 && high > 0 && Double.isFinite(low) && Double.isFinite(high)
                ? Optional.of(new Meaningful(low, high))
                : Optional.empty();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }
}
