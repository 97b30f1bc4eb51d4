package rigside.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Comparison;
import rigside.decide.Limits;

/**
 * An interval against the band of changes too small to matter, as two lines of text: the band's
 * edges as brackets, no change as a bar, the interval heavy with its estimate, and the numbers of
 * the band below.
 *
 * @param columns the width, 20 or more
 */
record IntervalLine(Comparison comparison, int columns, Glyphs signs) {

    /** How many half bands the line reaches to each side at least, and at most. */
    private static final double NARROWEST = 1.6;

    private static final double WIDEST = 6;

    List<Line> lines() {
        return List.of(Line.of(Tone.STRONG, axis()), Line.of(Tone.QUIET, numbers()));
    }

    /** The line without its numbers. */
    String axis() {
        String[] cells = new String[columns];
        java.util.Arrays.fill(cells, signs.dot());
        Optional<Limits> interval = comparison.interval();
        interval.ifPresent(
                limits -> {
                    int from = place(limits.low());
                    int to = place(limits.high());
                    java.util.Arrays.fill(cells, from, to + 1, signs.heavy());
                    cells[from] = isBeyond(limits.low()) ? signs.before() : cells[from];
                    cells[to] = isBeyond(limits.high()) ? signs.beyond() : cells[to];
                });
        cells[place(none())] = "|";
        cells[place(comparison.band().low())] = "[";
        cells[place(comparison.band().high())] = "]";
        OptionalDouble estimate = comparison.estimate();
        if (estimate.isPresent()) {
            cells[place(estimate.getAsDouble())] = signs.mark();
        }
        return String.join("", cells);
    }

    /** The band's edges and no change in figures, each under its sign where there is room. */
    private String numbers() {
        StringBuilder line = new StringBuilder(" ".repeat(columns));
        String no = comparison.ratio() ? "1.00" : "0";
        put(line, place(none()), no);
        put(line, place(comparison.band().low()), Figures.three(comparison.band().low()));
        put(line, place(comparison.band().high()), Figures.three(comparison.band().high()));
        return line.toString().stripTrailing();
    }

    private void put(StringBuilder line, int at, String text) {
        int from = Math.max(0, Math.min(columns - text.length(), at - text.length() / 2));
        int before = Math.max(0, from - 1);
        int after = Math.min(columns, from + text.length() + 1);
        if (line.substring(before, after).isBlank()) {
            line.replace(from, from + text.length(), text);
        }
    }

    private double none() {
        return comparison.ratio() ? 1 : 0;
    }

    /** How far the line reaches from no change, on the analysis scale. */
    private double reach() {
        double half = Math.max(-scaled(comparison.band().low()), scaled(comparison.band().high()));
        double wanted =
                comparison
                        .interval()
                        .map(
                                limits ->
                                        Math.max(
                                                Math.abs(scaled(limits.low())),
                                                Math.abs(scaled(limits.high()))))
                        .orElse(Math.abs(scaled(comparison.estimate().orElse(none()))));
        return half * Math.max(NARROWEST, Math.min(WIDEST, 1.1 * wanted / half));
    }

    private boolean isBeyond(double value) {
        return Math.abs(scaled(value)) > reach();
    }

    private int place(double value) {
        double share = (scaled(value) / reach() + 1) / 2;
        return (int) Math.round(Math.max(0, Math.min(1, share)) * (columns - 1));
    }

    private double scaled(double value) {
        return comparison.ratio() ? Math.log(value) : value;
    }
}
