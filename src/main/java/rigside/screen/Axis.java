package rigside.screen;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Comparison;
import rigside.decide.Limits;
import rigside.protocol.Measure.Compared.Matters;

/**
 * The line that intervals are drawn on, one row of text each: no change as a bar in the middle, the
 * edges of the band of changes too small to matter as brackets (only the one that counts where one
 * direction matters), the interval heavy with its estimate. Several rows on one axis can be
 * compared by eye.
 *
 * @param ratio whether the numbers are ratios, placed by their logarithm, else differences
 * @param band the changes too small to matter
 * @param matters the direction that matters
 * @param reach how far the line goes to each side of no change, on the analysis scale
 * @param columns the width, 20 or more
 */
record Axis(boolean ratio, Limits band, Matters matters, double reach, int columns, Glyphs signs) {

    /** How many half bands the line reaches to each side at least, and at most. */
    private static final double NARROWEST = 1.6;

    private static final double WIDEST = 6;

    /** The axis for a comparison as it stands. */
    static Axis of(Comparison comparison, int columns, Glyphs signs) {
        boolean ratio = comparison.ratio();
        Limits band = comparison.band();
        double down = -scaled(ratio, band.low());
        double up = scaled(ratio, band.high());
        double half =
                switch (comparison.matters()) {
                    case EITHER -> Math.max(down, up);
                    case INCREASE -> up;
                    case DECREASE -> down;
                };
        double wanted =
                comparison
                        .interval()
                        .map(
                                limits ->
                                        Math.max(
                                                Math.abs(scaled(ratio, limits.low())),
                                                Math.abs(scaled(ratio, limits.high()))))
                        .orElse(
                                Math.abs(
                                        scaled(
                                                ratio,
                                                comparison.estimate().orElse(ratio ? 1 : 0))));
        double reach = half * Math.max(NARROWEST, Math.min(WIDEST, 1.1 * wanted / half));
        return new Axis(ratio, band, comparison.matters(), reach, columns, signs);
    }

    /** The same axis as far as the one that reaches farther. */
    Axis and(Axis other) {
        return new Axis(ratio, band, matters, Math.max(reach, other.reach), columns, signs);
    }

    /** The row of a comparison as it stands. */
    String row(Comparison comparison) {
        return row(comparison.estimate(), comparison.interval());
    }

    /** One row. */
    String row(OptionalDouble estimate, Optional<Limits> interval) {
        String[] cells = new String[columns];
        Arrays.fill(cells, signs.dot());
        interval.ifPresent(
                limits -> {
                    int from = place(limits.low());
                    int to = place(limits.high());
                    Arrays.fill(cells, from, to + 1, signs.heavy());
                    cells[from] = isBeyond(limits.low()) ? signs.before() : cells[from];
                    cells[to] = isBeyond(limits.high()) ? signs.beyond() : cells[to];
                });
        cells[place(none())] = "|";
        if (hasLow(matters)) {
            cells[place(band.low())] = "[";
        }
        if (hasHigh(matters)) {
            cells[place(band.high())] = "]";
        }
        if (estimate.isPresent()) {
            cells[place(estimate.getAsDouble())] = signs.mark();
        }
        return String.join("", cells);
    }

    /** The band's edges and no change in figures, each under its sign; the edges alone, else. */
    String numbers() {
        StringBuilder line = new StringBuilder(" ".repeat(columns));
        boolean room =
                put(line, place(none()), ratio ? "1.00" : "0")
                        && (!hasLow(matters)
                                || put(line, place(band.low()), Figures.three(band.low())))
                        && (!hasHigh(matters)
                                || put(line, place(band.high()), Figures.three(band.high())));
        if (!room) {
            line.replace(0, columns, " ".repeat(columns));
            put(line, place(none()), edges(band, matters));
        }
        return line.toString().stripTrailing();
    }

    /** The band's edges in figures with the signs that mark them; only the one that counts. */
    static String edges(Limits band, Matters matters) {
        String low = hasLow(matters) ? "[" + Figures.three(band.low()) : "";
        String high = hasHigh(matters) ? Figures.three(band.high()) + "]" : "";
        return (low + " " + high).strip();
    }

    private static boolean hasLow(Matters matters) {
        return matters != Matters.INCREASE;
    }

    private static boolean hasHigh(Matters matters) {
        return matters != Matters.DECREASE;
    }

    /** Whether there was room for it. */
    private static boolean put(StringBuilder line, int at, String text) {
        int from = Math.max(0, Math.min(line.length() - text.length(), at - text.length() / 2));
        int before = Math.max(0, from - 1);
        int after = Math.min(line.length(), from + text.length() + 1);
        boolean room = line.substring(before, after).isBlank();
        if (room) {
            line.replace(from, from + text.length(), text);
        }
        return room;
    }

    private double none() {
        return ratio ? 1 : 0;
    }

    private boolean isBeyond(double value) {
        return Math.abs(scaled(ratio, value)) > reach;
    }

    private int place(double value) {
        double share = (scaled(ratio, value) / reach + 1) / 2;
        return (int) Math.round(Math.max(0, Math.min(1, share)) * (columns - 1));
    }

    private static double scaled(boolean ratio, double value) {
        return ratio ? Math.log(value) : value;
    }
}
