package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One trace on a sheet.
 *
 * @param sheet it is drawn on
 * @param x the seconds, from left to right
 * @param y the suction in the unit shown, {@code from} at the bottom
 * @param perPascal from Pa to that unit
 */
record PressurePanel(Sheet sheet, Axis x, Axis y, double perPascal) {
    static final String TARGET = "target";

    private static final double SIGN = 3;

    /** From one label to the next above it, at least. */
    private static final double CLEAR = Sheet.SMALL * 1.3;

    /** The target with its tolerance, behind everything. */
    record Band(double low, double target, double high) {}

    void ground(Optional<Band> band) {
        band.ifPresent(
                each ->
                        sheet.box(
                                x.from(),
                                y.at(each.high()),
                                x.to() - x.from(),
                                y.at(each.low()) - y.at(each.high()),
                                Ink.WASH));
        for (Ticks.Tick tick : y.down(Panel.ROOM_EACH)) {
            double at = y.at(tick.value());
            sheet.line(x.from(), at, x.to(), at, Ink.RULE, 0.7);
        }
        band.ifPresent(each -> level(each.target(), Ink.QUIET, 1));
        level(0, Ink.INK, 1);
        double below = y.from() + 4 + Sheet.SMALL + 1;
        sheet.line(x.from(), y.from(), x.to(), y.from(), Ink.QUIET, 1);
        for (Ticks.Tick tick : x.across(Sheet.SMALL)) {
            double at = x.at(tick.value());
            sheet.line(at, y.from(), at, y.from() + 4, Ink.QUIET, 1);
            sheet.words(at, below, Mark.Anchor.MIDDLE, Ink.QUIET, tick.label());
        }
    }

    private void level(double value, Ink ink, double thick) {
        sheet.line(x.from(), y.at(value), x.to(), y.at(value), ink, thick);
    }

    /** Numbers left of the panel, and the target's word among them. */
    void numbers(Optional<Band> band) {
        for (Ticks.Tick tick : y.down(Panel.ROOM_EACH)) {
            double at = y.at(tick.value());
            if (band.filter(each -> Math.abs(y.at(each.target()) - at) < CLEAR).isEmpty()) {
                beside(at, tick.label());
            }
        }
        band.ifPresent(each -> beside(y.at(each.target()), TARGET));
    }

    private void beside(double at, String text) {
        sheet.words(
                x.from() - Panel.GAP, at + Sheet.SMALL * 0.36, Mark.Anchor.END, Ink.QUIET, text);
    }

    /**
     * A trace: thin around the part that counts.
     *
     * @param thick how thick that part is
     */
    void curve(PressureTrace trace, PressureFollowed.Part part, boolean counts, double thick) {
        for (List<PressureTrace.Point> run : trace.runs()) {
            List<Mark.Point> piece = new ArrayList<>();
            boolean within = false;
            for (PressureTrace.Point point : run) {
                boolean now = counts && part.holds(point.seconds());
                if (now != within) {
                    put(piece, within, thick);
                    piece = new ArrayList<>(last(piece));
                    within = now;
                }
                piece.add(place(point));
            }
            put(piece, within, thick);
        }
    }

    private static List<Mark.Point> last(List<Mark.Point> piece) {
        return piece.isEmpty() ? piece : List.of(piece.get(piece.size() - 1));
    }

    private Mark.Point place(PressureTrace.Point point) {
        return new Mark.Point(x.at(point.seconds()), y.at(point.pascals() * perPascal));
    }

    private void put(List<Mark.Point> piece, boolean within, double thick) {
        if (piece.size() > 1) {
            sheet.put(new Mark.Curve(piece, within ? Ink.INK : Ink.QUIET, within ? thick : 0.8));
        } else if (piece.size() == 1) {
            Mark.Point only = piece.get(0);
            sheet.sign(only.x(), only.y(), 1, Mark.Shape.DISC, Ink.INK);
        }
    }

    /** Where the part that counts begins and ends: upright dashes, joined at the top. */
    void part(PressureFollowed.Part part) {
        double top = y.to();
        double start = x.at(part.start());
        double end = x.at(part.end());
        sheet.dashed(start, top, start, y.from(), Ink.MARK);
        sheet.dashed(end, top, end, y.from(), Ink.MARK);
        sheet.line(start, top, end, top, Ink.MARK, 2.4);
    }

    /** When the trigger was pressed. */
    void presses(double first, double second) {
        sheet.sign(x.at(first), y.from() - SIGN, SIGN, Mark.Shape.UP, Ink.INK);
        sheet.sign(x.at(second), y.from() - SIGN, SIGN, Mark.Shape.UP, Ink.INK);
    }

    /** A cross over the whole of what does not count. */
    void struck() {
        sheet.sign(x.to() - 8, y.to() + 8, 5, Mark.Shape.CROSS, Ink.INK);
    }

    /** The value captured, as a level. */
    void captured(double value) {
        sheet.dashed(x.from(), y.at(value), x.to(), y.at(value), Ink.MARK);
    }
}
