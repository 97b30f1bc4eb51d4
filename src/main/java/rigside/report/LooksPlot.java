package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Comparison;
import rigside.analysis.Shown;
import rigside.session.State;

/**
 * How the interval of each comparison moved, look by look, against the band of what is too small to
 * matter.
 */
final class LooksPlot {
    private static final double GUTTER = 24;

    /** From the words above a panel to its top: room for what is said of single looks. */
    private static final double STRIP = 24;

    private final Plotting of;
    private final Sheet sheet;
    private final List<Comparison> comparisons;
    private final boolean paired;
    private final int most;

    private LooksPlot(Plotting of, State state, double width) {
        this.of = of;
        this.sheet = new Sheet(width);
        this.comparisons = seen(of);
        this.paired = Plots.isPaired(state);
        this.most = most(of);
    }

    /** As far as the plan goes; further where more values were taken than it has looks. */
    private static int most(Plotting of) {
        return Math.max(
                of.protocol().plan().most(),
                seen(of).stream()
                        .flatMap(each -> each.looks().stream())
                        .mapToInt(Comparison.Seen::n)
                        .max()
                        .orElse(1));
    }

    private static List<Comparison> seen(Plotting of) {
        return of.result().comparisons().stream().filter(each -> !each.looks().isEmpty()).toList();
    }

    /** None where nothing may be shown, nothing is compared, or before the first look. */
    static Optional<Figure> of(State state, Shown shown, String measure) {
        return Plots.of(state, shown, measure)
                .filter(of -> !seen(of).isEmpty())
                .map(
                        of ->
                                new Figure(
                                        Plots.name(of, "looks"),
                                        of.measure().title() + ": the interval look by look",
                                        words(of, Plots.isPaired(state)),
                                        new LooksPlot(of, state, Drawing.NARROW).drawing(),
                                        new LooksPlot(of, state, Drawing.WIDE).drawing()));
    }

    private Drawing drawing() {
        Grid grid = new Grid(sheet, comparisons.size(), GUTTER);
        double top =
                sheet.paragraph(0, 0, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, heading(of));
        double bottom = grid.place(top, (at, x, y, wide) -> panel(comparisons.get(at), x, y, wide));
        return sheet.drawing(legend(bottom + 6));
    }

    /** What the axis upward is. */
    private static String heading(Plotting of) {
        String unit = of.measure().unit().symbol();
        return of.measure().title()
                + (of.isRatio()
                        ? ", how many times the reference's, logarithmic scale"
                        : ", difference from the reference"
                                + (unit.isEmpty() ? "" : " (" + unit + ")"));
    }

    private double panel(Comparison comparison, double x, double top, double wide) {
        double words =
                sheet.paragraph(
                        x,
                        top,
                        wide,
                        3,
                        Mark.Weight.NORMAL,
                        Ink.INK,
                        of.title(comparison.condition())
                                + " against "
                                + of.title(comparison.reference()));
        double high = sheet.isWide() && comparisons.size() == 1 ? 240 : 180;
        double upper = words + STRIP;
        Axis y = LooksPanel.axis(comparison, upper + high, upper);
        String counted = paired ? "round" : "values";
        Panel panel =
                new Panel(
                        sheet,
                        x + Panel.margin(y, counted),
                        x + wide - LooksPanel.beside(comparison),
                        most,
                        y);
        return new LooksPanel(comparison, panel).draw(counted, of.protocol().plan().most());
    }

    private double legend(double top) {
        double at =
                sheet.key(
                        0,
                        top,
                        sheet.width(),
                        Mark.Shape.DISC,
                        Ink.INK,
                        "estimate, in its interval at that look; an arrow where the interval goes"
                                + " on");
        if (comparisons.stream().anyMatch(each -> LooksPanel.settling(each).isPresent())) {
            at =
                    sheet.key(
                            0,
                            at,
                            sheet.width(),
                            Mark.Shape.DIAMOND,
                            Ink.MARK,
                            "the look at which it settled");
        }
        return at;
    }

    private static String words(Plotting of, boolean paired) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                heading(of)
                        + ", upward; looks from left to right, up to the last one of the plan, at "
                        + of.protocol().plan().most()
                        + (paired ? " rounds" : " values per condition")
                        + ". Each look has its interval as an upright line and its estimate as a"
                        + " sign on it.");
        seen(of).forEach(each -> sentences.add(LooksWords.of(each, of, paired)));
        return String.join(" ", sentences);
    }
}
