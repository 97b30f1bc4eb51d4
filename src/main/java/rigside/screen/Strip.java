package rigside.screen;

import java.util.List;

/**
 * Where values lie between two ends, as one line of text: a mark for one value, its number where
 * several fall on one place, and a bar at the mean.
 *
 * @param low the value at the left end
 * @param high the value at the right end; not below {@code low}
 * @param logarithmic whether places go by the logarithm
 * @param columns the width, 3 or more
 */
record Strip(double low, double high, boolean logarithmic, int columns) {

    /** A strip that all these values fit on; their ends are its ends. */
    static Strip over(List<Double> values, boolean logarithmic, int columns) {
        double low = values.stream().mapToDouble(each -> each).min().orElse(0);
        double high = values.stream().mapToDouble(each -> each).max().orElse(1);
        return new Strip(low, high, logarithmic && low > 0, columns);
    }

    String of(List<Double> values, double mean, Glyphs signs) {
        int[] counts = new int[columns];
        values.forEach(value -> counts[place(value)]++);
        int middle = Double.isNaN(mean) ? -1 : place(mean);
        StringBuilder strip = new StringBuilder();
        for (int at = 0; at < columns; at++) {
            strip.append(sign(counts[at], at == middle, signs));
        }
        return strip.toString();
    }

    private static String sign(int count, boolean mean, Glyphs signs) {
        if (count == 0) {
            return mean ? "|" : signs.dot();
        }
        return count == 1 ? signs.mark() : count < 10 ? String.valueOf(count) : "+";
    }

    /** The column of a value, kept within the strip. */
    private int place(double value) {
        double from = scaled(low);
        double to = scaled(high);
        double share = to > from ? (scaled(value) - from) / (to - from) : 0.5;
        return (int) Math.round(Math.max(0, Math.min(1, share)) * (columns - 1));
    }

    private double scaled(double value) {
        return logarithmic ? Math.log(value) : value;
    }
}
