package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rigside.analysis.Digits;
import rigside.decide.Limits;

/** A control chart: the means of sessions in the order they came, between their limits. */
public final class ControlPlot {
    private static final double CAP = 4;

    private final Content of;
    private final Sheet sheet;

    private ControlPlot(Content of, double width) {
        this.of = of;
        this.sheet = new Sheet(width);
    }

    /**
     * What is drawn; all numbers as people read them.
     *
     * @param measure its title
     * @param condition its title
     * @param unit the symbol of the unit; empty for a plain number
     * @param ratio whether by the logarithm
     * @param values the earliest first; at least one
     * @param mean over sessions
     * @param limits the control limits
     * @param next where the next one is expected, if that is known
     */
    public record Content(
            String measure,
            String condition,
            String unit,
            boolean ratio,
            List<Value> values,
            double mean,
            Limits limits,
            Optional<Limits> next) {
        public Content {
            values = List.copyOf(values);
        }
    }

    /**
     * One session.
     *
     * @param name of the session
     * @param mean of its values
     * @param bounded whether it is at least that
     * @param beyond whether it lies beyond the control limits
     */
    public record Value(String name, double mean, boolean bounded, boolean beyond) {}

    /** The chart as a figure. */
    public static Figure of(Content content) {
        return new Figure(
                "control-chart",
                content.measure() + ", " + content.condition() + ", over sessions",
                words(content),
                new ControlPlot(content, Drawing.NARROW).drawing(),
                new ControlPlot(content, Drawing.WIDE).drawing());
    }

    private Drawing drawing() {
        double top =
                sheet.paragraph(0, 0, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, heading(of)) + 8;
        Axis y = Axis.holding(numbers(), of.ratio(), top + (sheet.isWide() ? 260 : 190), top);
        int slots = of.values().size() + of.next().map(next -> 1).orElse(0);
        Panel panel = new Panel(sheet, Panel.margin(y, "session"), sheet.width() - 2, slots, y);
        double upper = y.at(of.limits().high());
        sheet.box(
                panel.left(),
                upper,
                panel.right() - panel.left(),
                Math.max(0.5, y.at(of.limits().low()) - upper),
                Ink.WASH);
        panel.rules();
        sheet.line(panel.left(), y.at(of.mean()), panel.right(), y.at(of.mean()), Ink.INK, 1);
        for (int at = 0; at < of.values().size(); at++) {
            draw(of.values().get(at), panel.x(at + 1.0), panel);
        }
        of.next().ifPresent(next -> draw(next, panel));
        panel.axis(panel.bottom(), "session");
        return sheet.drawing(legend(panel.bottom() + Panel.BELOW + 8));
    }

    private double[] numbers() {
        return DoubleStream.concat(
                        DoubleStream.concat(
                                DoubleStream.of(of.limits().low(), of.limits().high()),
                                of.next().stream()
                                        .flatMapToDouble(
                                                next -> DoubleStream.of(next.low(), next.high()))),
                        of.values().stream().mapToDouble(Value::mean))
                .toArray();
    }

    private void draw(Value value, double x, Panel panel) {
        Mark.Shape shape =
                value.beyond()
                        ? Mark.Shape.DIAMOND
                        : value.bounded() ? Mark.Shape.UP : Mark.Shape.DISC;
        sheet.sign(
                x,
                panel.y().at(value.mean()),
                panel.sign() * (value.beyond() ? 1.25 : 1),
                shape,
                value.beyond() ? Ink.MARK : Ink.INK);
    }

    private void draw(Limits next, Panel panel) {
        double x = panel.x(panel.rounds());
        double low = panel.y().at(next.low());
        double high = panel.y().at(next.high());
        double cap = Math.min(CAP, panel.slot() / 2);
        sheet.line(x, low, x, high, Ink.QUIET, 1.4);
        sheet.line(x - cap, low, x + cap, low, Ink.QUIET, 1.4);
        sheet.line(x - cap, high, x + cap, high, Ink.QUIET, 1.4);
    }

    private double legend(double top) {
        double at = key(top, Mark.Shape.DISC, Ink.INK, "mean of a session");
        if (of.values().stream().anyMatch(each -> each.bounded() && !each.beyond())) {
            at = key(at, Mark.Shape.UP, Ink.INK, "the same, known only as \"at least\"");
        }
        if (of.values().stream().anyMatch(Value::beyond)) {
            at = key(at, Mark.Shape.DIAMOND, Ink.MARK, "the same, beyond the control limits");
        }
        return sheet.paragraph(
                0,
                at,
                sheet.width(),
                3,
                Mark.Weight.NORMAL,
                Ink.INK,
                "Line: mean over sessions. Shaded: between the control limits."
                        + (of.next().isPresent()
                                ? " Upright line: where the next session's mean is expected."
                                : ""));
    }

    private double key(double top, Mark.Shape shape, Ink ink, String text) {
        return sheet.key(0, top, sheet.width(), shape, ink, text);
    }

    private static String heading(Content of) {
        return of.measure()
                + (of.unit().isEmpty() ? "" : " (" + of.unit() + ")")
                + ", "
                + of.condition()
                + (of.ratio() ? ", logarithmic scale" : "");
    }

    private static String words(Content of) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                heading(of)
                        + ", upward; sessions from left to right in the order they came, "
                        + of.values().size()
                        + " of them. Mean over sessions "
                        + Digits.three(of.mean())
                        + ", control limits "
                        + Digits.three(of.limits().low())
                        + " to "
                        + Digits.three(of.limits().high())
                        + ".");
        of.next()
                .ifPresent(
                        next ->
                                sentences.add(
                                        "The next session's mean is expected within "
                                                + Digits.three(next.low())
                                                + " to "
                                                + Digits.three(next.high())
                                                + "."));
        for (Value each : of.values()) {
            sentences.add(
                    each.name()
                            + ": "
                            + (each.bounded() ? "at least " : "")
                            + Digits.three(each.mean())
                            + (each.beyond() ? ", beyond the limits" : "")
                            + ".");
        }
        return String.join(" ", sentences);
    }
}
