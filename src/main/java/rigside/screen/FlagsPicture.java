package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Comparison;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;

/**
 * What is worth a second look, each with its reason and, where leaving it out answers anything, the
 * verdict with and without it side by side. Nothing is struck out here.
 */
record FlagsPicture(Scene scene) {

    private static final int GAP = 4;

    static List<Line> of(Scene scene) {
        return new FlagsPicture(scene).lines();
    }

    /** Whether there is anything to say. */
    static boolean isWorth(Shown shown) {
        return shown.result()
                && shown.measures().stream().anyMatch(each -> !each.flags().isEmpty());
    }

    private List<Line> lines() {
        Shown shown = scene.view().shown();
        List<Line> lines =
                new ArrayList<>(
                        Wrap.hanging(
                                Line.of(Tone.STRONG, "Worth a second look  "),
                                Tone.PLAIN,
                                "nothing here is left out, and nothing you see here strikes it"
                                        + " out",
                                scene.columns()));
        if (!isWorth(shown)) {
            String words =
                    shown.concealed().isEmpty()
                            ? "Nothing is."
                            : Texts.sentence(shown.concealed()) + ".";
            return Scene.stack(lines, scene.wrapped(words));
        }
        for (MeasureResult measure : shown.measures()) {
            measure.flags().forEach(flag -> lines.addAll(flag(measure, flag)));
        }
        return Scene.stack(lines, VerdictList.concealed(scene));
    }

    private List<Line> flag(MeasureResult measure, Flag flag) {
        List<Line> lines = new ArrayList<>(List.of(Line.BLANK));
        lines.addAll(
                Wrap.hanging(
                        Line.of(Tone.WARN, scene.signs().flag() + " "),
                        Tone.STRONG,
                        measure.measure().title() + ", " + kind(flag.kind()) + donnings(flag),
                        scene.columns()));
        lines.addAll(
                Wrap.hanging(
                        Line.of("  "), Tone.PLAIN, Texts.sentence(flag.reason()), scene.columns()));
        flag.whatIf().forEach(whatIf -> lines.addAll(whatIf(whatIf)));
        if (!flag.whatIf().isEmpty()) {
            lines.addAll(
                    Wrap.hanging(
                            Line.of(Tone.WARN, "! "),
                            Tone.PLAIN,
                            "The right side is no verdict: one that is reached by choosing values"
                                    + " is none.",
                            scene.columns()));
        }
        return lines;
    }

    private List<Line> whatIf(Flag.WhatIf whatIf) {
        int half = (scene.columns() - GAP - 2) / 2;
        Axis axis =
                Axis.of(whatIf.with(), half, scene.signs())
                        .and(Axis.of(whatIf.then(), half, scene.signs()));
        Comparison with = whatIf.with();
        Comparison then = whatIf.then();
        List<Line> beside =
                Line.beside(
                        side(
                                axis,
                                "as it stands",
                                with,
                                verdict(
                                        ComparisonPicture.sign(with.verdict(), axis.signs()),
                                        with,
                                        half)),
                        half + GAP,
                        side(
                                axis,
                                "what if " + whatIf.without(),
                                then,
                                verdict(Line.of(Tone.QUIET, "  it would say: "), then, half)),
                        scene.signs().cut());
        return beside.stream().map(line -> line.indented(2)).toList();
    }

    private static List<Line> side(
            Axis axis, String heading, Comparison comparison, List<Line> verdict) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, heading).cut(axis.columns(), axis.signs().cut()));
        lines.add(Line.of(Tone.STRONG, axis.row(comparison)));
        lines.add(Line.of(Tone.QUIET, axis.numbers()));
        lines.addAll(verdict);
        lines.addAll(Wrap.lines(Tone.QUIET, comparison.sentence(), axis.columns()));
        return List.copyOf(lines);
    }

    /** Never cut, since it is what one looks for. */
    static List<Line> verdict(Line head, Comparison of, int columns) {
        Tone tone = of.isSettled() ? Tone.STRONG : Tone.PLAIN;
        String words = of.words(of.verdict());
        boolean below = head.width() > 2 && head.width() + words.length() > columns;
        return below
                ? Line.stacked(List.of(head), Wrap.hanging(Line.of("  "), tone, words, columns))
                : Wrap.hanging(head, tone, words, columns);
    }

    private static String donnings(Flag flag) {
        if (flag.donnings().isEmpty()) {
            return "";
        }
        List<String> numbers = flag.donnings().stream().map(String::valueOf).toList();
        return (numbers.size() == 1 ? ": donning " : ": donnings ") + String.join(", ", numbers);
    }

    private static String kind(Flag.Kind kind) {
        return switch (kind) {
            case FAR_VALUE -> "a value far from the others";
            case FAR_TRIAL -> "a trial far from the others of its donning";
            case ROUND_TREND -> "a drift from round to round";
            case TRIAL_TREND -> "a drift from trial to trial";
            case SPREAD -> "one condition spreads more";
            case AIR_MOVED -> "the air of the room moved";
            case ORDER -> "first or second in the round makes a difference";
        };
    }
}
