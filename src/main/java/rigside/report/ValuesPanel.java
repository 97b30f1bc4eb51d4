package rigside.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigside.analysis.Digits;
import rigside.analysis.DonningValue;
import rigside.analysis.Standing;

/**
 * One panel of {@link ValuesPlot}: values over rounds, two conditions beside each other in each
 * round.
 *
 * @param of the measure
 * @param pair ids of one or two conditions, the reference first
 * @param paired whether what was worn in one round belongs together
 * @param panel where it is drawn
 */
record ValuesPanel(Plotting of, List<String> pair, boolean paired, Panel panel) {
    /** Room right of the plot for the means. */
    static final double MEANS = 30;

    /** Beside donnings that have no value. */
    static final String LACKING = "no value";

    private static final double STRIP = 18;

    /** Draws it, and gives its lower edge. */
    double draw() {
        Sheet sheet = panel.sheet();
        boolean lacking =
                pair.stream()
                        .flatMap(condition -> of.finished(condition).stream())
                        .anyMatch(each -> each.value().isEmpty());
        panel.rules(panel.bottom() - (lacking ? Sheet.SMALL - STRIP / 2 + 1 : 0));
        of.required().ifPresent(level -> panel.level(MEANS + 4, level, Digits.three(level)));
        double axis = panel.bottom() + (lacking ? STRIP : 0);
        if (lacking) {
            panel.label(panel.bottom() + STRIP / 2, LACKING);
        }
        panel.axis(axis, "round");
        if (paired && pair.size() == 2) {
            joins();
        }
        if (pair.stream().anyMatch(each -> !of.mean(each).isEmpty())) {
            sheet.words(panel.right() + MEANS, panel.top() - 2, Mark.Anchor.END, Ink.QUIET, "mean");
        }
        for (String condition : pair) {
            signs(condition);
            mean(condition, sheet);
        }
        return axis + Panel.BELOW;
    }

    private void joins() {
        for (int round = 1; round <= panel.rounds(); round++) {
            Optional<DonningValue> one = counted(pair.get(0), round);
            Optional<DonningValue> other = counted(pair.get(1), round);
            if (one.isPresent() && other.isPresent()) {
                panel.sheet()
                        .line(
                                x(pair.get(0), round),
                                y(one.get()),
                                x(pair.get(1), round),
                                y(other.get()),
                                Ink.QUIET,
                                1);
            }
        }
    }

    private Optional<DonningValue> counted(String condition, int round) {
        return of.finished(condition).stream()
                .filter(each -> each.round() == round && each.counts())
                .filter(each -> each.value().isPresent())
                .findFirst();
    }

    private void signs(String condition) {
        Map<Integer, Integer> before = new HashMap<>();
        for (DonningValue value : of.finished(condition)) {
            double size = panel.sign();
            if (value.counts() && value.value().isPresent()) {
                double x = x(condition, value.round());
                double y = y(value);
                if (value.bounded()) {
                    panel.sheet().line(x, y, x, y - size * 2.6, Ink.INK, 1.2);
                    panel.sheet().sign(x, y - size * 2.6, size * 0.9, Mark.Shape.UP, Ink.INK);
                }
                panel.sheet().sign(x, y, size, of.shape(condition), Ink.INK);
            } else {
                int nth = before.merge(value.round(), 1, Integer::sum);
                double out = Math.min(nth * size * 1.6, panel.slot() * 0.48 - apart());
                double x = x(condition, value.round()) + side(condition) * Math.max(0, out);
                double y = value.value().isPresent() ? y(value) : panel.bottom() + STRIP / 2;
                panel.sheet().crossed(x, y, size * 0.9, of.shape(condition));
            }
        }
    }

    private void mean(String condition, Sheet sheet) {
        of.summary(condition)
                .filter(each -> each.mean().isPresent())
                .ifPresent(
                        each -> {
                            double y = panel.y().at(each.mean().getAsDouble());
                            double x =
                                    panel.right()
                                            + MEANS / 2
                                            + side(condition) * (pair.size() - 1) * 3.5;
                            sheet.line(x - 5, y, x + 5, y, Ink.INK, 1.6);
                            sheet.sign(x, y, 2.8, of.shape(condition), Ink.INK);
                        });
    }

    private double y(DonningValue value) {
        return panel.y().at(value.value().orElseThrow());
    }

    /** The reference stands left of a round's middle, the other right of it. */
    private double x(String condition, int round) {
        return panel.x(round) + side(condition) * apart();
    }

    private double apart() {
        return pair.size() == 2 ? Math.min(7, panel.slot() * 0.22) : 0;
    }

    private int side(String condition) {
        return condition.equals(pair.get(0)) && pair.size() == 2 ? -1 : 1;
    }

    static boolean isDrawn(DonningValue value) {
        return value.standing() != Standing.OPEN;
    }
}
