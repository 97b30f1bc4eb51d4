package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rigside.analysis.Digits;
import rigside.analysis.Shown;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.State;

/**
 * How the pressure of timed inhalations was held, as their traces show it: mean suction and its
 * spread from where each pull began to where it ended, against the target and its tolerance. What a
 * journal holds of a trace is such figures, not its readings.
 */
final class PullsPlot {
    private static final double GUTTER = 24;

    /** Room right of the plot for what the band is. */
    private static final List<String> BAND = List.of("target,", "tolerance");

    private final Plotting of;
    private final List<Inhaled> traced;
    private final Unit unit;
    private final Sheet sheet;
    private final Axis suction;

    private PullsPlot(Plotting of, List<Inhaled> traced, double width) {
        this.of = of;
        this.traced = traced;
        this.unit = traced.get(0).step().target().unit();
        this.sheet = new Sheet(width);
        this.suction =
                Axis.holding(
                        traced.stream()
                                .flatMapToDouble(
                                        each ->
                                                DoubleStream.of(
                                                        low(each.step()),
                                                        high(each.step()),
                                                        mean(each) - spread(each),
                                                        mean(each) + spread(each)))
                                .toArray(),
                        false,
                        0,
                        1);
    }

    /** None where no time may be shown, or no instrument followed the pressure. */
    static Optional<Figure> of(State state, Shown shown, String measure) {
        return Plots.of(state, shown, measure)
                .filter(of -> of.measure().kind() instanceof Measure.TimedInhalation)
                .flatMap(
                        of ->
                                of(
                                        of,
                                        Inhaled.all(state, shown, of).stream()
                                                .filter(Inhaled::counts)
                                                .filter(each -> each.entry().pull().isPresent())
                                                .toList()));
    }

    private static Optional<Figure> of(Plotting of, List<Inhaled> traced) {
        return traced.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Figure(
                                Plots.name(of, "pulls"),
                                of.measure().title() + ": how the pressure was held",
                                new PullsPlot(of, traced, Drawing.NARROW).words(),
                                new PullsPlot(of, traced, Drawing.NARROW).drawing(),
                                new PullsPlot(of, traced, Drawing.WIDE).drawing()));
    }

    private static TracedInhalation pull(Inhaled of) {
        return of.entry().pull().orElseThrow().inhalation();
    }

    private double mean(Inhaled of) {
        return shown(pull(of).meanPa());
    }

    private double spread(Inhaled of) {
        return shown(pull(of).spreadPa());
    }

    private double shown(double pascals) {
        return new Quantity(pascals, Unit.PASCAL).in(unit).value();
    }

    private double target(Step.Trials step) {
        return step.target().in(unit).value();
    }

    private double low(Step.Trials step) {
        return target(step) * (1 - step.tolerance().orElse(0));
    }

    private double high(Step.Trials step) {
        return target(step) * (1 + step.tolerance().orElse(0));
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
                        "Suction (" + unit.symbol() + ") of every trial that counts");
        List<String> conditions =
                of.conditions().stream()
                        .filter(each -> traced.stream().anyMatch(pull -> pull.isOf(each)))
                        .toList();
        double bottom =
                new Grid(sheet, conditions.size(), GUTTER)
                        .place(top, (at, x, y, wide) -> panel(conditions.get(at), x, y, wide));
        return sheet.drawing(
                sheet.key(
                        0,
                        bottom + 6,
                        sheet.width(),
                        Mark.Shape.DISC,
                        Ink.INK,
                        "mean suction of a pull from its beginning to its end; the stroke is one"
                                + " standard deviation to either side"));
    }

    private double panel(String condition, double left, double top, double wide) {
        double words =
                sheet.paragraph(
                        left, top, wide, 2, Mark.Weight.NORMAL, Ink.INK, of.title(condition));
        double upper = words + 8;
        Axis y = new Axis(false, suction.low(), suction.high(), upper + 150, upper);
        double beside = BAND.stream().mapToDouble(Panel::width).max().orElse(0) + Panel.GAP;
        Panel panel =
                new Panel(
                        sheet,
                        left + Panel.margin(y, "round"),
                        left + wide - beside,
                        Math.max(1, of.rounds()),
                        y);
        band(panel);
        panel.rules();
        panel.axis(y.from(), "round");
        traced.stream().filter(each -> each.isOf(condition)).forEach(each -> draw(each, panel));
        return y.from() + Panel.BELOW;
    }

    private void band(Panel panel) {
        Step.Trials step = traced.get(0).step();
        double upper = panel.y().at(high(step));
        double lower = panel.y().at(low(step));
        double target = panel.y().at(target(step));
        sheet.box(panel.left(), upper, panel.right() - panel.left(), lower - upper, Ink.WASH);
        sheet.line(panel.left(), target, panel.right(), target, Ink.INK, 1);
        double x = panel.right() + Panel.GAP;
        sheet.words(x, target - 2, Mark.Anchor.START, Ink.QUIET, BAND.get(0));
        sheet.words(x, target + Sheet.SMALL, Mark.Anchor.START, Ink.QUIET, BAND.get(1));
    }

    private void draw(Inhaled inhaled, Panel panel) {
        double x = inhaled.x(panel);
        Axis y = panel.y();
        double low = y.at(mean(inhaled) - spread(inhaled));
        double high = y.at(mean(inhaled) + spread(inhaled));
        sheet.line(x, low, x, high, Ink.INK, 1);
        sheet.sign(x, y.at(mean(inhaled)), inhaled.size(panel), Mark.Shape.DISC, Ink.INK);
    }

    private String words() {
        Step.Trials step = traced.get(0).step();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Suction upward in "
                        + unit.symbol()
                        + "; rounds from left to right, in each the trials in their order: the"
                        + " mean of each pull as a sign, one standard deviation to either side as"
                        + " a stroke. The shaded band is the target, "
                        + Digits.three(target(step))
                        + ", with its tolerance, "
                        + Digits.three(low(step))
                        + " to "
                        + Digits.three(high(step))
                        + ". The journal holds these figures of each trace, not its readings.");
        for (String condition : of.conditions()) {
            List<Inhaled> own = traced.stream().filter(each -> each.isOf(condition)).toList();
            if (!own.isEmpty()) {
                sentences.add(of.title(condition) + ": " + told(own) + ".");
            }
        }
        return String.join(" ", sentences);
    }

    private String told(List<Inhaled> own) {
        double[] means = own.stream().mapToDouble(this::mean).sorted().toArray();
        double share =
                own.stream().mapToDouble(each -> pull(each).withinShare()).average().orElseThrow();
        return own.size()
                + (own.size() == 1 ? " pull" : " pulls")
                + ", means from "
                + Digits.three(means[0])
                + " to "
                + Digits.three(means[means.length - 1])
                + " "
                + unit.symbol()
                + ", inside the tolerance for "
                + Math.round(100 * share)
                + " % of the time";
    }
}
