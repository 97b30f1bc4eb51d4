package rigside.report;

import java.util.ArrayList;
import java.util.List;

/** Marks being put on a sheet, from the top down. */
final class Sheet {
    /** Size of letters beside numbers, and of those to be read as lines. */
    static final double SMALL = 11;

    static final double TEXT = 12;

    private final double width;
    private final List<Mark> marks = new ArrayList<>();

    Sheet(double width) {
        this.width = width;
    }

    double width() {
        return width;
    }

    boolean isWide() {
        return width > Drawing.NARROW;
    }

    Drawing drawing(double height) {
        return new Drawing(width, height, marks);
    }

    void put(Mark mark) {
        marks.add(mark);
    }

    void line(double x1, double y1, double x2, double y2, Ink ink, double thick) {
        put(new Mark.Line(x1, y1, x2, y2, ink, thick, Mark.Stroke.WHOLE));
    }

    void dashed(double x1, double y1, double x2, double y2, Ink ink) {
        put(new Mark.Line(x1, y1, x2, y2, ink, 1.2, Mark.Stroke.DASHED));
    }

    void box(double x, double y, double wide, double high, Ink ink) {
        put(new Mark.Box(x, y, wide, high, ink));
    }

    void sign(double x, double y, double size, Mark.Shape shape, Ink ink) {
        put(new Mark.Sign(x, y, size, shape, ink));
    }

    /** A sign with a cross over it: what was struck out or broken off. */
    void crossed(double x, double y, double size, Mark.Shape shape) {
        sign(x, y, size, shape, Ink.QUIET);
        sign(x, y, size + 1.6, Mark.Shape.CROSS, Ink.INK);
    }

    void words(double x, double y, Mark.Anchor anchor, Ink ink, String text) {
        put(new Mark.Words(x, y, SMALL, anchor, Mark.Weight.NORMAL, ink, text));
    }

    /**
     * Words in lines, cut off after so many.
     *
     * @param top the upper edge of the first line
     * @return the lower edge of the last one
     */
    double paragraph(
            double x, double top, double wide, int most, Mark.Weight weight, Ink ink, String text) {
        double at = top;
        for (String line : Letters.lines(text, TEXT, weight, wide, most)) {
            put(
                    new Mark.Words(
                            x,
                            at + TEXT * Letters.ASCENT + 1,
                            TEXT,
                            Mark.Anchor.START,
                            weight,
                            ink,
                            line));
            at += TEXT * Letters.LEADING;
        }
        return at + 1;
    }

    /**
     * A line of a key: the sign, and what it stands for.
     *
     * @return the lower edge of the last line
     */
    double key(double x, double top, double wide, Mark.Shape shape, Ink ink, String text) {
        sign(x + 5, top + TEXT * 0.5 + 1, 3.4, shape, ink);
        return paragraph(x + 15, top, wide - 15, 3, Mark.Weight.NORMAL, Ink.INK, text);
    }

    /** The same for a sign with a cross over it. */
    double crossedKey(double x, double top, double wide, String text) {
        crossed(x + 5, top + TEXT * 0.5 + 1, 3.2, Mark.Shape.DISC);
        return paragraph(x + 15, top, wide - 15, 2, Mark.Weight.NORMAL, Ink.INK, text);
    }
}
