package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigside.analysis.DonningValue;
import rigside.analysis.Shown;
import rigside.protocol.Measure;
import rigside.session.State;

/** Inhalation times trial by trial within donnings: a panel for each condition. */
final class TrialsPlot {
    private static final double GUTTER = 24;

    private final Plotting of;
    private final List<Inhaled> trials;
    private final Sheet sheet;
    private final Axis y;

    private TrialsPlot(Plotting of, List<Inhaled> trials, double width) {
        this.of = of;
        this.trials = trials;
        this.sheet = new Sheet(width);
        double[] all = trials.stream().mapToDouble(Inhaled::value).toArray();
        this.y = Axis.holding(all, of.isLog(all), 0, 1);
    }

    /** None for anything but timed inhalations, and where no time may be shown. */
    static Optional<Figure> of(State state, Shown shown, String measure) {
        return Plots.of(state, shown, measure)
                .filter(of -> of.measure().kind() instanceof Measure.TimedInhalation)
                .flatMap(of -> of(of, Inhaled.all(state, shown, of)));
    }

    private static Optional<Figure> of(Plotting of, List<Inhaled> trials) {
        return trials.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Figure(
                                Plots.name(of, "trials"),
                                of.measure().title() + " of every trial",
                                words(of, trials),
                                new TrialsPlot(of, trials, Drawing.NARROW).drawing(),
                                new TrialsPlot(of, trials, Drawing.WIDE).drawing()));
    }

    private Drawing drawing() {
        double top =
                sheet.paragraph(
                        0, 0, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, of.heading(y.log()));
        List<String> conditions = of.conditions();
        double bottom =
                new Grid(sheet, conditions.size(), GUTTER)
                        .place(
                                top,
                                (at, x, down, wide) -> panel(conditions.get(at), x, down, wide));
        String disc = "one inhalation; a level stroke is its donning's geometric mean";
        bottom = sheet.key(0, bottom + 6, sheet.width(), Mark.Shape.DISC, Ink.INK, disc);
        if (trials.stream().anyMatch(each -> !each.counts())) {
            String crossed = "struck out, or of a donning that does not count";
            bottom = sheet.crossedKey(0, bottom, sheet.width(), crossed);
        }
        return sheet.drawing(bottom);
    }

    private double panel(String condition, double x, double top, double wide) {
        double words =
                sheet.paragraph(x, top, wide, 2, Mark.Weight.NORMAL, Ink.INK, of.title(condition));
        double upper = words + 8;
        double high = sheet.isWide() && of.conditions().size() == 1 ? 220 : 150;
        Axis axis = new Axis(y.log(), y.low(), y.high(), upper + high, upper);
        Panel panel =
                new Panel(
                        sheet,
                        x + Panel.margin(axis, "round"),
                        x + wide - Panel.GAP,
                        Math.max(1, of.rounds()),
                        axis);
        panel.rules();
        panel.axis(axis.from(), "round");
        for (DonningValue donning : of.finished(condition)) {
            draw(donning, panel);
        }
        return axis.from() + Panel.BELOW;
    }

    private void draw(DonningValue donning, Panel panel) {
        List<Inhaled> own = trials.stream().filter(each -> each.donning().equals(donning)).toList();
        List<Mark.Point> joined = new ArrayList<>();
        for (Inhaled trial : own) {
            if (trial.counts()) {
                joined.add(new Mark.Point(trial.x(panel), panel.y().at(trial.value())));
            }
        }
        if (joined.size() > 1) {
            sheet.put(new Mark.Curve(joined, Ink.QUIET, 0.7));
        }
        if (donning.counts() && donning.value().isPresent()) {
            double mean = panel.y().at(donning.value().getAsDouble());
            double half = panel.slot() * Inhaled.TAKEN / 2;
            double middle = panel.x(donning.round());
            sheet.line(middle - half, mean, middle + half, mean, Ink.MARK, 1.4);
        }
        for (Inhaled trial : own) {
            double size = trial.size(panel);
            double across = trial.x(panel);
            double down = panel.y().at(trial.value());
            if (trial.counts()) {
                sheet.sign(across, down, size, Mark.Shape.DISC, Ink.INK);
            } else {
                sheet.crossed(across, down, size * 0.9, Mark.Shape.DISC);
            }
        }
    }

    private static String words(Plotting of, List<Inhaled> trials) {
        double[] all = trials.stream().mapToDouble(Inhaled::value).toArray();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                of.heading(of.isLog(all))
                        + ", upward; rounds 1 to "
                        + of.rounds()
                        + " from left to right, in each the trials in their order, with the"
                        + " donning's geometric mean as a level stroke.");
        for (String condition : of.conditions()) {
            sentences.add(of.title(condition) + ": " + told(of, condition, trials) + ".");
        }
        return String.join(" ", sentences);
    }

    private static String told(Plotting of, String condition, List<Inhaled> trials) {
        List<Inhaled> own = trials.stream().filter(each -> each.isOf(condition)).toList();
        String rounds =
                of.finished(condition).stream()
                        .map(donning -> told(of, donning, own))
                        .filter(each -> !each.isEmpty())
                        .collect(Collectors.joining("; "));
        return rounds.isEmpty() ? "no trial" : rounds;
    }

    private static String told(Plotting of, DonningValue donning, List<Inhaled> trials) {
        List<Inhaled> own = trials.stream().filter(each -> each.donning().equals(donning)).toList();
        return own.isEmpty()
                ? ""
                : "round "
                        + donning.round()
                        + " "
                        + own.stream()
                                .map(
                                        each ->
                                                of.number(each.value(), false)
                                                        + (each.counts() ? "" : " (not counted)"))
                                .collect(Collectors.joining(", "));
    }
}
