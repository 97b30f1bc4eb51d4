package rigside.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One trace on a sheet.
 *
 * @param sheet it is drawn on
 * @param scale what its axes show
 * @param x the seconds, from left to right
 * @param y the suction in the unit shown, {@code from} at the bottom
 */
record PressurePanel(Sheet sheet, PressureScale scale, Axis x, Axis y) {
    static final String TARGET = "target";

    /** Half the width of a sign for what is beyond an axis. */
    private static final double SIGN = 4;

    /** How high a press stands, and how thick. */
    static final double PRESS = 8;

    static final double THICK = 2.4;

    /** From one label to the next above it, at least. */
    private static final double CLEAR = Sheet.SMALL * 1.3;

    void ground(Optional<PressureScale.Band> band) {
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
    void numbers(Optional<PressureScale.Band> band) {
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
        for (PressureCurve.Piece piece : PressureCurve.pieces(trace, part, x.high())) {
            put(piece.points(), counts && piece.counts(), thick);
        }
        beyond(trace);
    }

    private void put(List<PressureTrace.Point> piece, boolean counts, double thick) {
        List<Mark.Point> points = piece.stream().map(this::place).toList();
        if (points.size() > 1) {
            sheet.put(new Mark.Curve(points, counts ? Ink.INK : Ink.QUIET, counts ? thick : 0.8));
        } else {
            sheet.sign(points.get(0).x(), points.get(0).y(), 1, Mark.Shape.DISC, Ink.INK);
        }
    }

    private Mark.Point place(PressureTrace.Point point) {
        return new Mark.Point(x.at(point.seconds()), y.at(scale.shown(point.pascals())));
    }

    /** Arrows at the edges beyond which it goes, where it is furthest. */
    private void beyond(PressureTrace trace) {
        List<PressureTrace.Point> seen =
                trace.all().stream().filter(each -> x.holds(each.seconds())).toList();
        Comparator<PressureTrace.Point> suction =
                Comparator.comparingDouble(PressureTrace.Point::pascals);
        seen.stream()
                .max(suction)
                .filter(each -> scale.shown(each.pascals()) > y.high())
                .ifPresent(each -> arrow(x.at(each.seconds()), y.to() + SIGN, Mark.Shape.UP));
        seen.stream()
                .min(suction)
                .filter(each -> scale.shown(each.pascals()) < y.low())
                .ifPresent(each -> arrow(x.at(each.seconds()), y.from() - SIGN, Mark.Shape.DOWN));
        if (seen.size() < trace.all().size()) {
            arrow(x.to() - SIGN, y.at(0), Mark.Shape.RIGHT);
        }
    }

    private void arrow(double across, double down, Mark.Shape shape) {
        sheet.sign(across, down, SIGN, shape, Ink.INK);
    }

    /** Where the part that counts begins and ends: upright dashes, joined at the top. */
    void part(PressureFollowed.Part part) {
        double top = y.to();
        dashes(part.start());
        dashes(part.end());
        sheet.line(x.at(part.start()), top, x.at(part.end()), top, Ink.MARK, THICK);
    }

    private void dashes(double seconds) {
        if (x.holds(seconds)) {
            sheet.dashed(x.at(seconds), y.to(), x.at(seconds), y.from(), Ink.MARK);
        }
    }

    /** When the trigger was pressed: short strokes on the axis of time. */
    void press(double seconds) {
        if (x.holds(seconds)) {
            double at = x.at(seconds);
            sheet.line(at, y.from() - PRESS, at, y.from(), Ink.INK, THICK);
        }
    }

    /** A cross over the whole of what does not count. */
    void struck() {
        sheet.sign(x.to() - 8, y.to() + 8, 5, Mark.Shape.CROSS, Ink.INK);
    }

    /** The value captured, as a level; none where it is beyond the axis. */
    void captured(double value) {
        if (y.holds(value)) {
            sheet.dashed(x.from(), y.at(value), x.to(), y.at(value), Ink.MARK);
        }
    }
}
