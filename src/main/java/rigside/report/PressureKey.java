package rigside.report;

import java.util.List;
import java.util.Optional;

/** What stands below the traces of one figure: a line for each sign that is in it. */
record PressureKey(Sheet sheet, PressureWords words) {
    /** As wide as a sign of a key. */
    private static final double WIDE = 11;

    /** Where the words beside a sign begin. */
    private static final double BESIDE = 15;

    private static final double MIDDLE = 7;

    /** Draws a sign at a height. */
    private interface Sign {
        void at(double top);
    }

    /** Draws it from a height on and gives its lower edge. */
    double draw(double top) {
        double at = words.isPulls() ? pulls(top) : line(top, this::dashes, captured());
        if (words.hasSilence()) {
            at = line(at, this::silence, "a break in a line: the gauge was silent");
        }
        if (words.all().stream().anyMatch(each -> !each.counts())) {
            at = line(at, this::cross, "struck out, or of a donning that does not count");
        }
        Optional<String> beyond = words.beyond();
        if (beyond.isPresent()) {
            at = line(at, this::arrow, beyond.get());
        }
        return words.left() > 0 ? paragraph(0, at, words.leftOut()) : at;
    }

    private double pulls(double top) {
        double at =
                line(
                        top,
                        this::band,
                        (words.hasTolerance() ? "shaded: " : "line: ") + words.target());
        at = line(at, this::presses, "short strokes below: the trigger's two presses");
        return line(
                at,
                this::part,
                "thick and between dashes: the part that counts"
                        + (words.isAllTraced() ? "" : ", the presses where no trace shows it"));
    }

    private String captured() {
        return "dashed: the value captured" + words.captured();
    }

    private double line(double top, Sign sign, String text) {
        sign.at(top);
        return paragraph(BESIDE, top, text);
    }

    private double paragraph(double x, double top, String text) {
        return sheet.paragraph(x, top, sheet.width() - x, 3, Mark.Weight.NORMAL, Ink.INK, text);
    }

    private void band(double top) {
        if (words.hasTolerance()) {
            sheet.box(0, top + 2, WIDE, 10, Ink.WASH);
        }
        sheet.line(0, top + MIDDLE, WIDE, top + MIDDLE, Ink.QUIET, 1);
    }

    private void presses(double top) {
        double axis = top + 11;
        sheet.line(0, axis, WIDE, axis, Ink.QUIET, 1);
        for (double x : List.of(2.5, 8.5)) {
            sheet.line(x, axis - PressurePanel.PRESS, x, axis, Ink.INK, PressurePanel.THICK);
        }
    }

    private void part(double top) {
        sheet.line(1, top + 2, WIDE - 1, top + 2, Ink.MARK, PressurePanel.THICK);
        sheet.dashed(1, top + 2, 1, top + 12, Ink.MARK);
        sheet.dashed(WIDE - 1, top + 2, WIDE - 1, top + 12, Ink.MARK);
    }

    private void dashes(double top) {
        sheet.dashed(0, top + MIDDLE, WIDE, top + MIDDLE, Ink.MARK);
    }

    private void silence(double top) {
        sheet.line(0, top + MIDDLE, 3, top + MIDDLE, Ink.INK, 1.8);
        sheet.line(8, top + MIDDLE, WIDE, top + MIDDLE, Ink.INK, 1.8);
    }

    private void cross(double top) {
        sheet.sign(5, top + MIDDLE, 3.4, Mark.Shape.CROSS, Ink.INK);
    }

    private void arrow(double top) {
        Mark.Shape shape = words.isCut() ? Mark.Shape.UP : Mark.Shape.RIGHT;
        sheet.sign(5, top + MIDDLE, 3.4, shape, Ink.INK);
    }
}
