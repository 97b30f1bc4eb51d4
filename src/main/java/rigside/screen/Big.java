package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/** Digits and words in large letters, to be read from two metres. */
final class Big {
    private Big() {}

    /**
     * What one dot of a letter takes, the smallest first: a terminal's cell is about twice as high
     * as wide, and in a window with more rows each row is lower.
     */
    private record Dot(int columns, int rows) {}

    private static final List<Dot> DOTS =
            List.of(
                    new Dot(1, 1),
                    new Dot(2, 1),
                    new Dot(2, 2),
                    new Dot(3, 2),
                    new Dot(4, 2),
                    new Dot(5, 3),
                    new Dot(6, 3),
                    new Dot(8, 4));

    /** The largest size; 1 is the smallest, 0 stands for plain letters. */
    private static final int LARGEST = DOTS.size();

    /** Rows that a picture needs beside its largest letters. */
    private static final int OTHERS = 3;

    /** The size that 80 columns have room for. */
    static final int USUAL = 2;

    /** Words gain nothing by being larger than this; digits do. */
    private static final int LARGEST_WORDS = 4;

    /** More lines than this are no longer read at a glance. */
    private static final int MOST_LINES = 3;

    /**
     * The text no larger than {@code size} and so large as fits into {@code columns}, broken
     * between words where it must be; one plain strong text where nothing fits.
     */
    static List<Line> of(String text, int size, int columns, Glyphs signs) {
        int fitting = fitting(text, size, columns);
        return fitting == 0
                ? Wrap.lines(Tone.BIG, text, columns)
                : drawn(broken(text, fitting, columns), fitting, signs);
    }

    /** The same with a unit in small letters beside its foot. */
    static List<Line> of(String digits, String unit, int size, int columns, Glyphs signs) {
        int room = columns - (unit.isEmpty() ? 0 : Clean.width(unit) + 1);
        List<Line> lines = new ArrayList<>(of(digits, size, room, signs));
        int foot = lines.size() - 1;
        lines.set(foot, lines.get(foot).plus(Tone.STRONG, unit.isEmpty() ? "" : " " + unit));
        return List.copyOf(lines);
    }

    /** The largest size that so many rows can have room for. */
    static int largest(int rows) {
        int size = LARGEST;
        while (size > 1 && Letters.ROWS * DOTS.get(size - 1).rows() + OTHERS > rows) {
            size--;
        }
        return size;
    }

    /** The largest size up to {@code size} at which the text fits; 0 where none does. */
    static int fitting(String text, int size, int columns) {
        boolean shaped = text.chars().allMatch(each -> Letters.shape((char) each).isPresent());
        boolean words = text.chars().anyMatch(Character::isLetter);
        int largest = words ? Math.min(LARGEST_WORDS, size) : size;
        int fitting = shaped && !text.isBlank() ? largest : 0;
        while (fitting > 0 && !isFitting(broken(text, fitting, columns), fitting, columns)) {
            fitting--;
        }
        return fitting;
    }

    private static boolean isFitting(List<String> lines, int size, int columns) {
        return lines.size() <= MOST_LINES
                && lines.stream().allMatch(line -> width(line, size) <= columns);
    }

    /** How many columns one line of text takes. */
    static int width(String text, int size) {
        int dots = 0;
        for (int at = 0; at < text.length(); at++) {
            dots +=
                    (at == 0 ? 0 : 1)
                            + Letters.shape(text.charAt(at)).orElseThrow().get(0).length();
        }
        return dots * DOTS.get(size - 1).columns();
    }

    private static List<String> broken(String text, int size, int columns) {
        List<String> lines = new ArrayList<>();
        for (String word : text.strip().split(" +", -1)) {
            int last = lines.size() - 1;
            String longer = last < 0 ? word : lines.get(last) + " " + word;
            if (last >= 0 && width(longer, size) <= columns) {
                lines.set(last, longer);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }

    private static List<Line> drawn(List<String> texts, int size, Glyphs signs) {
        List<Line> lines = new ArrayList<>();
        for (String text : texts) {
            if (!lines.isEmpty()) {
                lines.add(Line.BLANK);
            }
            for (int row = 0; row < Letters.ROWS; row++) {
                Line line = Line.of(Tone.BIG, row(text, row, DOTS.get(size - 1).columns(), signs));
                for (int copy = 0; copy < DOTS.get(size - 1).rows(); copy++) {
                    lines.add(line);
                }
            }
        }
        return List.copyOf(lines);
    }

    private static String row(String text, int row, int dot, Glyphs signs) {
        StringBuilder line = new StringBuilder();
        for (int at = 0; at < text.length(); at++) {
            String dots = Letters.shape(text.charAt(at)).orElseThrow().get(row);
            line.append(at == 0 ? "" : " ".repeat(dot))
                    .append(
                            dots.replace(".", " ".repeat(dot))
                                    .replace("x", signs.block().repeat(dot)));
        }
        return line.toString();
    }
}
