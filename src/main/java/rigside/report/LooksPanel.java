package rigside.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rigside.analysis.Comparison;
import rigside.decide.Limits;
import rigside.protocol.Measure.Compared.Matters;

/**
 * One panel of {@link LooksPlot}.
 *
 * @param comparison whose looks are drawn
 * @param panel where; its rounds are the values that looks count
 */
record LooksPanel(Comparison comparison, Panel panel) {
    private static final double CAP = 3;

    private static final String PLAN_ENDS = "plan ends";

    /** Room right of the plot for what the band is. */
    static double beside(Comparison comparison) {
        return band(comparison.matters()).stream().mapToDouble(Panel::width).max().orElse(0)
                + Panel.GAP;
    }

    private static List<String> band(Matters matters) {
        return switch (matters) {
            case EITHER -> List.of("too small", "to matter");
            case INCREASE -> List.of("no increase", "that matters");
            case DECREASE -> List.of("no decrease", "that matters");
        };
    }

    /**
     * Holds the band, no change and every estimate; of intervals as much as keeps the band from
     * shrinking to a line.
     */
    static Axis axis(Comparison comparison, double from, double to) {
        boolean log = comparison.ratio();
        double[] firm =
                DoubleStream.concat(
                                DoubleStream.of(
                                        comparison.band().low(),
                                        comparison.band().high(),
                                        none(comparison)),
                                comparison.looks().stream().mapToDouble(Comparison.Seen::estimate))
                        .filter(each -> Double.isFinite(each) && (!log || each > 0))
                        .toArray();
        Axis tight = Axis.holding(firm, log, from, to);
        double half =
                log ? Math.sqrt(tight.high() / tight.low()) : (tight.high() - tight.low()) / 2;
        double most = log ? tight.high() * half : tight.high() + half;
        double least = log ? tight.low() / half : tight.low() - half;
        double[] all =
                DoubleStream.concat(
                                DoubleStream.of(firm),
                                comparison.looks().stream()
                                        .flatMapToDouble(
                                                look ->
                                                        DoubleStream.of(
                                                                look.interval().low(),
                                                                look.interval().high()))
                                        .filter(each -> !Double.isNaN(each))
                                        .map(each -> Math.max(least, Math.min(most, each))))
                        .toArray();
        return Axis.holding(all, log, from, to);
    }

    /** The number that stands for no change. */
    private static double none(Comparison comparison) {
        return comparison.ratio() ? 1 : 0;
    }

    /** The look at which it first settled as it is said to have, if that stands. */
    static Optional<Comparison.Seen> settling(Comparison comparison) {
        return comparison
                .settledAt()
                .filter(settled -> comparison.isSettled())
                .flatMap(
                        settled ->
                                comparison.looks().stream()
                                        .filter(
                                                look ->
                                                        look.verdict()
                                                                == settled.conclusion().verdict())
                                        .findFirst());
    }

    /**
     * Draws it, and gives its lower edge.
     *
     * @param counted what looks count: "round"
     * @param most how many of them the plan has
     */
    double draw(String counted, int most) {
        shade();
        panel.rules();
        Sheet sheet = panel.sheet();
        double none = panel.y().at(none(comparison));
        sheet.line(panel.left(), none, panel.right(), none, Ink.INK, 1);
        double end = panel.x(most);
        sheet.line(end, panel.top(), end, panel.bottom(), Ink.QUIET, 0.7);
        panel.axis(panel.bottom(), counted);
        double below = panel.bottom() + Panel.BELOW + Sheet.SMALL;
        sheet.words(
                Math.min(panel.right(), end + Panel.width(PLAN_ENDS) / 2),
                below,
                Mark.Anchor.END,
                Ink.QUIET,
                PLAN_ENDS);
        Optional<Comparison.Seen> settling = settling(comparison);
        for (Comparison.Seen look : comparison.looks()) {
            boolean settled = settling.isPresent() && settling.get().equals(look);
            draw(look, settled);
        }
        return below + 4;
    }

    private void shade() {
        Limits band = comparison.band();
        Matters matters = comparison.matters();
        double upper = matters == Matters.DECREASE ? panel.top() : panel.y().at(band.high());
        double lower = matters == Matters.INCREASE ? panel.bottom() : panel.y().at(band.low());
        Sheet sheet = panel.sheet();
        sheet.box(panel.left(), upper, panel.right() - panel.left(), lower - upper, Ink.WASH);
        double middle = (upper + lower) / 2;
        List<String> words = band(matters);
        double x = panel.right() + Panel.GAP;
        sheet.words(x, middle - 2, Mark.Anchor.START, Ink.QUIET, words.get(0));
        sheet.words(x, middle + Sheet.SMALL, Mark.Anchor.START, Ink.QUIET, words.get(1));
    }

    private void draw(Comparison.Seen look, boolean settled) {
        Sheet sheet = panel.sheet();
        double x = panel.x(look.n());
        Ink ink = settled ? Ink.MARK : Ink.INK;
        double low = end(x, look.interval().low(), true, ink);
        double high = end(x, look.interval().high(), false, ink);
        sheet.line(x, low, x, high, ink, settled ? 2 : 1.4);
        double size = panel.sign();
        double estimate = panel.y().at(look.estimate());
        if (!settled) {
            sheet.sign(x, estimate, size, Mark.Shape.DISC, ink);
            return;
        }
        sheet.sign(x, estimate, size * 1.25, Mark.Shape.DIAMOND, ink);
        sheet.line(x, panel.top() - 7, x, high, ink, 0.7);
        settledWord(x);
    }

    private void settledWord(double x) {
        String word = "settled";
        double half = Panel.width(word) / 2;
        double held = Math.max(panel.left() + half, Math.min(panel.right() - half, x));
        panel.sheet().words(held, panel.top() - 9, Mark.Anchor.MIDDLE, Ink.MARK, word);
    }

    /**
     * One end of an interval, and where it is drawn: with an arrow where it lies beyond the axis.
     */
    private double end(double x, double value, boolean lower, Ink ink) {
        Axis axis = panel.y();
        double size = Math.min(CAP, panel.sign());
        boolean beyond = !axis.holds(value);
        if (beyond) {
            double at = lower ? panel.bottom() - size : panel.top() + size;
            panel.sheet().sign(x, at, size, lower ? Mark.Shape.DOWN : Mark.Shape.UP, ink);
            return at;
        }
        double at = axis.at(value);
        panel.sheet().line(x - size, at, x + size, at, ink, 1.4);
        return at;
    }
}
