package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Digits and words five rows high, to be read from two metres. */
final class Big {
    private Big() {}

    /**
     * Columns a dot takes where there is room: a terminal's cell is about twice as high as wide.
     */
    private static final int WIDE = 2;

    /**
     * The text as large as fits into {@code columns}: wide, else narrow, else one plain strong
     * line.
     */
    static List<Line> of(String text, int columns, Glyphs signs) {
        for (int dot = WIDE; dot >= 1; dot--) {
            Optional<List<Line>> drawn = drawn(text, dot, signs);
            if (drawn.isPresent() && drawn.get().get(0).width() <= columns) {
                return drawn.get();
            }
        }
        return Wrap.lines(Tone.BIG, text, columns);
    }

    /** Big digits with their unit in small letters beside their foot. */
    static List<Line> of(String digits, String unit, int columns, Glyphs signs) {
        List<Line> lines = new ArrayList<>(of(digits, columns - Clean.width(unit) - 1, signs));
        int foot = lines.size() - 1;
        lines.set(foot, lines.get(foot).plus(Tone.STRONG, unit.isEmpty() ? "" : " " + unit));
        return List.copyOf(lines);
    }

    private static Optional<List<Line>> drawn(String text, int dot, Glyphs signs) {
        List<StringBuilder> rows = new ArrayList<>();
        for (int row = 0; row < Letters.ROWS; row++) {
            rows.add(new StringBuilder());
        }
        for (int at = 0; at < text.length(); at++) {
            Optional<List<String>> shape = Letters.shape(text.charAt(at));
            if (shape.isEmpty()) {
                return Optional.empty();
            }
            for (int row = 0; row < Letters.ROWS; row++) {
                rows.get(row)
                        .append(at == 0 ? "" : " ".repeat(dot))
                        .append(dots(shape.get().get(row), dot, signs));
            }
        }
        return Optional.of(rows.stream().map(row -> Line.of(Tone.BIG, row.toString())).toList());
    }

    private static String dots(String row, int dot, Glyphs signs) {
        return row.replace(".", " ".repeat(dot)).replace("x", signs.block().repeat(dot));
    }
}
