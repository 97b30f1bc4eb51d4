package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import rigside.analysis.Digits;
import rigside.measure.FreeBreathing;
import rigside.protocol.Measure;
import rigside.protocol.Step;

/**
 * What is said of the pressure over time.
 *
 * @param all the panels of one figure; at least one, each with a trace
 * @param scale their axes
 * @param left how many more have readings and are in no figure
 */
record PressureWords(
        Plotting of,
        PressureTraces traces,
        List<PressureFollowed> all,
        PressureScale scale,
        int left) {

    /** "rounds 1 to 4". */
    String rounds() {
        int first = all.get(0).donning().round();
        int last = all.get(all.size() - 1).donning().round();
        return first == last ? "round " + first : "rounds " + first + " to " + last;
    }

    String heading() {
        return "Suction ("
                + scale.unit().symbol()
                + ") over seconds from "
                + (isPulls() ? "the trigger's first press" : "the window's beginning")
                + ", "
                + rounds();
    }

    boolean isPulls() {
        return all.get(0).trials().isPresent();
    }

    /** What stands above a panel: why it does not count comes first, lest it be cut off. */
    static String label(PressureFollowed each) {
        String what = "round " + each.donning().round() + ", " + each.title();
        return each.counts() ? what : each.standing() + ": " + what;
    }

    boolean isAllTraced() {
        return all.stream().allMatch(each -> part(each).traced());
    }

    private PressureFollowed.Part part(PressureFollowed each) {
        return each.part(each.trace(traces).window());
    }

    boolean hasSilence() {
        return all.stream().anyMatch(each -> each.trace(traces).runs().size() > 1);
    }

    boolean hasTolerance() {
        return steps().stream().anyMatch(step -> step.tolerance().orElse(0) > 0);
    }

    private List<Step.Trials> steps() {
        return all.stream().flatMap(each -> each.trials().stream()).distinct().toList();
    }

    /** "the target with its tolerance, 100 (80.0 to 120) Pa"; numbers if all have the same. */
    String target() {
        List<PressureScale.Band> bands = steps().stream().map(scale::band).distinct().toList();
        String what = hasTolerance() ? "the target with its tolerance" : "the target";
        if (bands.size() > 1) {
            return what;
        }
        PressureScale.Band band = bands.get(0);
        String tolerance =
                hasTolerance()
                        ? " (" + Digits.three(band.low()) + " to " + Digits.three(band.high()) + ")"
                        : "";
        return what + ", " + Digits.three(band.target()) + tolerance + unit();
    }

    /** What the value of an exercise is, where they are all the same. */
    String captured() {
        boolean isMedian = all.stream().allMatch(each -> each.entry().breaths().isPresent());
        boolean isOfBreaths =
                of.measure().kind() instanceof Measure.PressureTrace kind
                        && kind.zero() == FreeBreathing.Zero.BREATHS;
        return (isMedian ? ", the median of the peaks" : "")
                + (isMedian && isOfBreaths ? ", from the mean over whole breaths" : "");
    }

    /** What arrows at an edge mean; empty without any. */
    Optional<String> beyond() {
        List<PressureTrace> drawn = all.stream().map(each -> each.trace(traces)).toList();
        List<String> said = new ArrayList<>();
        if (isCut()) {
            double least = drawn.stream().mapToDouble(PressureTrace::lowest).min().orElse(0);
            double most = drawn.stream().mapToDouble(PressureTrace::highest).max().orElse(0);
            said.add("readings are from " + shown(least) + " to " + shown(most) + unit());
        }
        if (drawn.stream().anyMatch(scale::outlasts)) {
            double end = drawn.stream().mapToDouble(each -> each.window().end()).max().orElse(0);
            said.add("the longest ends after " + seconds(end) + " s");
        }
        return said.isEmpty()
                ? Optional.empty()
                : Optional.of("arrow: it goes on beyond the axis; " + String.join(", ", said));
    }

    /** Whether some pressure is beyond its axis. */
    boolean isCut() {
        return all.stream().anyMatch(each -> scale.cuts(each.trace(traces)));
    }

    String leftOut() {
        return left + (left == 1 ? " more is" : " more are") + " not drawn: too many for a figure.";
    }

    /** All of it, for who cannot see it. */
    String sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                heading()
                        + ", as the instrument read it: a panel for each "
                        + (isPulls() ? "inhalation" : "exercise")
                        + ", all on the same axes, suction upward and breathing out below zero.");
        if (isPulls()) {
            sentences.add((hasTolerance() ? "Shaded is " : "A line is ") + target() + ".");
        } else {
            sentences.add("A dashed line is the value captured" + captured() + ".");
        }
        for (String condition : of.conditions()) {
            String told =
                    all.stream()
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
        PressureTrace trace = each.trace(traces);
        return label(each)
                + ": from "
                + shown(trace.lowest())
                + " to "
                + shown(trace.highest())
                + unit()
                + (isPulls() ? between(part(each)) : value(each))
                + silences(trace.runs().size() - 1);
    }

    private static String between(PressureFollowed.Part part) {
        return ", "
                + (part.traced() ? "pull" : "between the presses")
                + " from "
                + seconds(part.start())
                + " to "
                + seconds(part.end())
                + " s";
    }

    private String value(PressureFollowed each) {
        return each.value(of).map(value -> ", captured " + Digits.three(value) + unit()).orElse("");
    }

    private static String silences(int count) {
        return switch (count) {
            case 0 -> "";
            case 1 -> ", the gauge silent once";
            default -> ", the gauge silent " + count + " times";
        };
    }

    /** To a hundredth: a press and a pull's beginning are that close. */
    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.2f", Math.rint(seconds * 100) / 100 + 0.0);
    }

    private String shown(double pascals) {
        return Digits.three(scale.shown(pascals));
    }

    private String unit() {
        return " " + scale.unit().symbol();
    }
}
