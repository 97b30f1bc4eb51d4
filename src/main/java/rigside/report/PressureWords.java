package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigside.analysis.Digits;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * What is said of the pressure over time.
 *
 * @param followed the panels of one figure; at least one, each with a trace
 * @param unit the suction is shown in
 * @param left how many more have readings and are in no figure
 */
record PressureWords(
        Plotting of, PressureTraces traces, List<PressureFollowed> followed, Unit unit, int left) {

    /** A line of a key. */
    interface Sign {
        /** Draws it from a height on and gives its lower edge. */
        double draw(Sheet sheet, double top);
    }

    /** "rounds 1 to 4". */
    String rounds() {
        int first = followed.get(0).donning().round();
        int last = followed.get(followed.size() - 1).donning().round();
        return first == last ? "round " + first : "rounds " + first + " to " + last;
    }

    String heading() {
        return "Suction ("
                + unit.symbol()
                + ") over seconds from "
                + (isPulls() ? "the trigger's first press" : "the window's beginning")
                + ", "
                + rounds();
    }

    private boolean isPulls() {
        return followed.get(0).trials().isPresent();
    }

    /** What stands above a panel: why it does not count comes first, lest it be cut off. */
    static String label(PressureFollowed each) {
        String what = "round " + each.donning().round() + ", " + each.title();
        return each.counts() ? what : each.standing() + ": " + what;
    }

    List<Sign> key() {
        List<Sign> key = new ArrayList<>();
        if (isPulls()) {
            key.add(box("shaded: the target with its tolerance" + target()));
            key.add(
                    sign(
                            Mark.Shape.UP,
                            "the trigger's two presses; thick and between dashes: the part that"
                                    + " counts"
                                    + (isAllTraced()
                                            ? ""
                                            : ", the presses where no trace shows it")));
        } else {
            key.add(dashes("dashed: the value captured, the median of the peaks"));
        }
        if (followed.stream().anyMatch(each -> !each.counts())) {
            key.add(sign(Mark.Shape.CROSS, "struck out, or of a donning that does not count"));
        }
        if (left > 0) {
            key.add(
                    (sheet, top) ->
                            sheet.paragraph(
                                    0,
                                    top,
                                    sheet.width(),
                                    2,
                                    Mark.Weight.NORMAL,
                                    Ink.INK,
                                    leftOut()));
        }
        return key;
    }

    private static Sign sign(Mark.Shape shape, String text) {
        return (sheet, top) -> sheet.key(0, top, sheet.width(), shape, Ink.INK, text);
    }

    private static Sign box(String text) {
        return (sheet, top) -> {
            sheet.box(0, top + 2, 11, 10, Ink.WASH);
            sheet.line(0, top + 7, 11, top + 7, Ink.QUIET, 1);
            return beside(sheet, top, text);
        };
    }

    private static Sign dashes(String text) {
        return (sheet, top) -> {
            sheet.dashed(0, top + 7, 11, top + 7, Ink.MARK);
            return beside(sheet, top, text);
        };
    }

    private static double beside(Sheet sheet, double top, String text) {
        return sheet.paragraph(15, top, sheet.width() - 15, 3, Mark.Weight.NORMAL, Ink.INK, text);
    }

    private boolean isAllTraced() {
        return followed.stream().allMatch(each -> part(each).traced());
    }

    private PressureFollowed.Part part(PressureFollowed each) {
        return each.part(trace(each).window());
    }

    private PressureTrace trace(PressureFollowed each) {
        return traces.of(each.entry().number()).orElseThrow();
    }

    /** The numbers of the target, where every panel has the same. */
    private String target() {
        List<Step.Trials> steps =
                followed.stream().flatMap(each -> each.trials().stream()).distinct().toList();
        Step.Trials step = steps.get(0);
        double target = step.target().in(unit).value();
        double off = step.tolerance().orElse(0) * target;
        boolean same =
                steps.stream()
                        .allMatch(
                                each ->
                                        each.target().equals(step.target())
                                                && each.tolerance().equals(step.tolerance()));
        return same
                ? ", "
                        + Digits.three(target)
                        + " ("
                        + Digits.three(target - off)
                        + " to "
                        + Digits.three(target + off)
                        + ") "
                        + unit.symbol()
                : "";
    }

    private String leftOut() {
        return left + (left == 1 ? " more is" : " more are") + " not drawn: too many for a figure.";
    }

    /** All of it, for who cannot see it. */
    String all() {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                heading()
                        + ", as the instrument read it: a panel for each "
                        + (isPulls() ? "inhalation" : "exercise")
                        + ", all on the same axes, suction upward and breathing out below zero.");
        if (isPulls()) {
            sentences.add("Shaded is the target with its tolerance" + target() + ".");
        }
        for (String condition : of.conditions()) {
            String told =
                    followed.stream()
                            .filter(each -> each.donning().condition().equals(condition))
                            .map(this::told)
                            .collect(Collectors.joining("; "));
            if (!told.isEmpty()) {
                sentences.add(of.title(condition) + ": " + told + ".");
            }
        }
        if (left > 0) {
            sentences.add(leftOut());
        }
        return String.join(" ", sentences);
    }

    private String told(PressureFollowed each) {
        PressureTrace trace = trace(each);
        String range =
                label(each)
                        + ": from "
                        + shown(trace.lowest())
                        + " to "
                        + shown(trace.highest())
                        + " "
                        + unit.symbol();
        if (!isPulls()) {
            return range;
        }
        PressureFollowed.Part part = part(each);
        return range
                + ", "
                + (part.traced() ? "pull" : "between the presses")
                + " from "
                + Digits.three(part.start())
                + " to "
                + Digits.three(part.end())
                + " s";
    }

    private String shown(double pascals) {
        return Digits.three(new Quantity(pascals, Unit.PASCAL).in(unit).value());
    }
}
