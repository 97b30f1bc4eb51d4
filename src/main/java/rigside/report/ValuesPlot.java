package rigside.report;

import java.util.List;
import java.util.Optional;
import rigside.analysis.Digits;
import rigside.analysis.Shown;
import rigside.session.State;

/**
 * Every value of a measure by condition and round: a panel for each condition against the
 * reference, so that what belongs together stands side by side however many conditions there are.
 */
final class ValuesPlot {
    private static final double GUTTER = 24;

    private final Plotting of;
    private final boolean paired;
    private final Sheet sheet;
    private final Axis numbers;

    private ValuesPlot(Plotting of, boolean paired, double width) {
        this.of = of;
        this.paired = paired;
        this.sheet = new Sheet(width);
        double[] all = of.numbers();
        this.numbers = Axis.holding(all, of.isLog(all), 0, 1);
    }

    /** None where no value may be shown, or there is none. */
    static Optional<Figure> of(State state, Shown shown, String measure) {
        return Plots.of(state, shown, measure)
                .filter(ValuesPlot::hasValues)
                .map(
                        of -> {
                            boolean paired = Plots.isPaired(state);
                            return new Figure(
                                    Plots.name(of, "values"),
                                    of.measure().title() + " of every donning, round by round",
                                    new ValuesWords(of, paired).all(),
                                    new ValuesPlot(of, paired, Drawing.NARROW).drawing(),
                                    new ValuesPlot(of, paired, Drawing.WIDE).drawing());
                        });
    }

    private static boolean hasValues(Plotting of) {
        return of.result().values().stream()
                .anyMatch(each -> ValuesPanel.isDrawn(each) && each.value().isPresent());
    }

    private Drawing drawing() {
        double top =
                sheet.paragraph(
                        0,
                        0,
                        sheet.width(),
                        2,
                        Mark.Weight.BOLD,
                        Ink.INK,
                        of.heading(numbers.log()));
        List<List<String>> pairs = of.pairs();
        double bottom =
                new Grid(sheet, pairs.size(), GUTTER)
                        .place(top, (at, x, y, wide) -> panel(pairs.get(at), x, y, wide));
        return sheet.drawing(legend(bottom + 6));
    }

    private double panel(List<String> pair, double x, double top, double wide) {
        double keys = top;
        for (String condition : pair) {
            String mean = of.mean(condition);
            keys =
                    sheet.key(
                            x,
                            keys,
                            wide,
                            of.shape(condition),
                            Ink.INK,
                            of.title(condition) + (mean.isEmpty() ? "" : ": " + mean));
        }
        double high = sheet.isWide() && of.pairs().size() == 1 ? 240 : 170;
        Axis y =
                new Axis(numbers.log(), numbers.low(), numbers.high(), keys + 14 + high, keys + 14);
        return new ValuesPanel(of, pair, paired, framed(x, wide, y)).draw();
    }

    private Panel framed(double x, double wide, Axis y) {
        double left = x + Panel.margin(y, "round", ValuesPanel.LACKING);
        double right = x + wide - ValuesPanel.MEANS;
        if (of.required().isPresent()) {
            String level = Digits.three(of.required().getAsDouble());
            right -= Math.max(Panel.width("required"), Panel.width(level)) + 4;
        }
        return new Panel(sheet, left, right, Math.max(1, of.rounds()), y);
    }

    private double legend(double top) {
        double at = top;
        if (of.result().values().stream()
                .anyMatch(each -> each.bounded() && ValuesPanel.isDrawn(each))) {
            at =
                    sheet.key(
                            0,
                            at,
                            sheet.width(),
                            Mark.Shape.UP,
                            Ink.INK,
                            "at least: the counter could not read so few particles");
        }
        if (of.result().values().stream()
                .anyMatch(each -> !each.counts() && ValuesPanel.isDrawn(each))) {
            at =
                    sheet.crossedKey(
                            0,
                            at,
                            sheet.width(),
                            "struck out, broken off or without a value: not counted");
        }
        return at;
    }
}
