package rigside.measure;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** A number made from other numbers: the whole set there is, since a protocol has no formulas. */
public enum Calculation {
    MEAN,
    MEDIAN,
    GEOMETRIC_MEAN,
    SMALLEST,
    LARGEST,
    /** The largest less the smallest. */
    RANGE,
    SUM,
    /** The first less the second. */
    DIFFERENCE,
    /** The first over the second. */
    RATIO,
    PRODUCT;

    /** As people write it: {@code geometric mean}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether it takes exactly two numbers, the order of which matters. */
    public boolean takesTwo() {
        return this == DIFFERENCE || this == RATIO;
    }

    /** Whether all numbers, and the result, are of one dimension. */
    public boolean keepsDimension() {
        return this != RATIO && this != PRODUCT;
    }

    /** Whether it says anything only of numbers that are 0 where nothing is there. */
    public boolean needsTrueZero() {
        return this == GEOMETRIC_MEAN || this == SUM || !keepsDimension();
    }

    /** Whether the result is how far numbers are apart, and not a number like them. */
    public boolean isDistance() {
        return this == RANGE || this == DIFFERENCE;
    }

    /** What the result is made of, given what the numbers are made of. */
    public Powers powers(List<Powers> numbers) {
        return switch (this) {
            case RATIO -> numbers.get(0).over(numbers.get(1));
            case PRODUCT -> numbers.stream().reduce(Dimension.NUMBER.powers(), Powers::times);
            default -> numbers.get(0);
        };
    }

    /**
     * The result, in SI.
     *
     * @param numbers in SI, in the order named; at least one, exactly two where it takes two
     * @return empty for a geometric mean of a number not above 0, for a ratio to 0, and where the
     *     result is no finite number
     * @throws IllegalArgumentException if there are too few numbers, or not two where it takes two
     */
    public OptionalDouble of(List<Double> numbers) {
        if (numbers.isEmpty() || (takesTwo() && numbers.size() != 2)) {
            throw new IllegalArgumentException(
                    numbers.size() + " numbers, must be " + (takesTwo() ? "2" : "1 or more"));
        }
        double result = result(numbers);
        return Double.isFinite(result) ? OptionalDouble.of(result) : OptionalDouble.empty();
    }

    private double result(List<Double> numbers) {
        return switch (this) {
            case MEAN -> all(numbers).average().orElse(Double.NaN);
            case MEDIAN -> PressureTrace.median(numbers).orElse(Double.NaN);
            case GEOMETRIC_MEAN -> geometricMean(numbers);
            case SMALLEST -> all(numbers).min().orElse(Double.NaN);
            case LARGEST -> all(numbers).max().orElse(Double.NaN);
            case RANGE ->
                    all(numbers).max().orElse(Double.NaN) - all(numbers).min().orElse(Double.NaN);
            case SUM -> all(numbers).sum();
            case DIFFERENCE -> numbers.get(0) - numbers.get(1);
            case RATIO -> numbers.get(0) / numbers.get(1);
            case PRODUCT -> all(numbers).reduce(1, (product, each) -> product * each);
        };
    }

    private static double geometricMean(List<Double> numbers) {
        boolean positive = numbers.stream().allMatch(each -> each > 0);
        return positive
                ? Math.exp(all(numbers).map(Math::log).average().orElse(Double.NaN))
                : Double.NaN;
    }

    private static DoubleStream all(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue);
    }
}
