package rigside.report;

import java.util.List;

/**
 * A plot of numbers over rounds, on a sheet.
 *
 * @param sheet it is drawn on
 * @param left edge of the room for marks
 * @param right edge of it
 * @param rounds how many, at least 1
 * @param y the numbers, {@code from} at the bottom
 */
record Panel(Sheet sheet, double left, double right, int rounds, Axis y) {
    /** Between labels and the axis. */
    static final double GAP = 6;

    private static final double TICK = 4;

    /** Of labels above one another. */
    static final double ROOM_EACH = 26;

    /** What stands below the rounds' axis. */
    static final double BELOW = 21;

    /** The room that labels left of the axis need. */
    static double margin(Axis y, String... others) {
        double widest = 0;
        for (Ticks.Tick tick : y.down(ROOM_EACH)) {
            widest = Math.max(widest, width(tick.label()));
        }
        for (String other : others) {
            widest = Math.max(widest, width(other));
        }
        return widest + GAP + 2;
    }

    static double width(String text) {
        return Letters.width(text, Sheet.SMALL, Mark.Weight.NORMAL);
    }

    double top() {
        return y.to();
    }

    double bottom() {
        return y.from();
    }

    /** The room of one round. */
    double slot() {
        return (right - left) / rounds;
    }

    /** The middle of a round. */
    double x(double round) {
        return left + slot() * (round - 0.5);
    }

    /** How large a sign may be so that rounds stay apart. */
    double sign() {
        return Math.max(1.5, Math.min(3.8, slot() * 0.24));
    }

    /** Lines behind the numbers and labels left of them. */
    void rules() {
        rules(bottom());
    }

    /**
     * The same with no label below a height, where something else stands.
     *
     * @param lowest how far down the lowest label may stand
     */
    void rules(double lowest) {
        for (Ticks.Tick tick : y.down(ROOM_EACH)) {
            double at = y.at(tick.value());
            sheet.line(left, at, right, at, Ink.RULE, 0.7);
            if (at <= lowest) {
                label(at, tick.label());
            }
        }
    }

    /** Words left of the axis, as high as a number of it. */
    void label(double at, String text) {
        sheet.words(left - GAP, at + Sheet.SMALL * 0.36, Mark.Anchor.END, Ink.QUIET, text);
    }

    /**
     * The axis of the rounds.
     *
     * @param at how far down
     * @param what is counted: "round"
     */
    void axis(double at, String what) {
        sheet.line(left, at, right, at, Ink.QUIET, 1);
        double widest = width(String.valueOf(rounds)) + 8;
        List<Ticks.Tick> ticks = Ticks.whole(1, rounds, x(rounds) - x(1), widest);
        double below = at + TICK + Sheet.SMALL + 1;
        for (Ticks.Tick tick : ticks) {
            double x = x(tick.value());
            sheet.line(x, at, x, at + TICK, Ink.QUIET, 1);
            sheet.words(x, below, Mark.Anchor.MIDDLE, Ink.QUIET, tick.label());
        }
        sheet.words(left - GAP, below, Mark.Anchor.END, Ink.QUIET, what);
    }

    /**
     * A level to reach, with its words right of the plot.
     *
     * @param beyond how far right of it they begin
     */
    void level(double beyond, double level, String number) {
        double at = y.at(level);
        double x = right + beyond;
        sheet.dashed(left, at, right, at, Ink.MARK);
        sheet.words(x, at - 1.5, Mark.Anchor.START, Ink.MARK, "required");
        sheet.words(x, at + Sheet.SMALL - 0.5, Mark.Anchor.START, Ink.MARK, number);
    }
}
