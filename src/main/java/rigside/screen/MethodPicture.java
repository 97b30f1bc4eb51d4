package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Comparison;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;

/** Behind one key: how each verdict comes about, what would change it, what the promise covers. */
record MethodPicture(Scene scene) {

    /** From this width on measures stand side by side. */
    private static final int SIDE_BY_SIDE = 110;

    private static final int GAP = 4;

    static List<Line> of(Scene scene) {
        return new MethodPicture(scene).lines();
    }

    /** Whether there is anything to say. */
    static boolean isWorth(Shown shown) {
        return shown.result()
                && shown.measures().stream().anyMatch(each -> !each.comparisons().isEmpty());
    }

    private List<Line> lines() {
        Shown shown = scene.view().shown();
        List<Line> title =
                Wrap.hanging(
                        Line.of(Tone.STRONG, "Why  "),
                        Tone.QUIET,
                        "how each verdict comes about",
                        scene.columns());
        if (!isWorth(shown)) {
            String words =
                    shown.concealed().isEmpty()
                            ? "Nothing is compared."
                            : Texts.sentence(shown.concealed()) + ".";
            return Scene.stack(title, scene.wrapped(words));
        }
        List<MeasureResult> measures =
                shown.measures().stream().filter(each -> !each.comparisons().isEmpty()).toList();
        return Scene.stack(
                title,
                scene.columns() >= SIDE_BY_SIDE && measures.size() > 1
                        ? sideBySide(measures)
                        : below(measures));
    }

    private List<Line> below(List<MeasureResult> measures) {
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : measures) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
            lines.addAll(measure(scene, measure));
        }
        return lines;
    }

    private List<Line> sideBySide(List<MeasureResult> measures) {
        int half = (scene.columns() - GAP) / 2;
        Scene column = scene.columns(half);
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < measures.size(); at += 2) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
            lines.addAll(
                    Line.beside(
                            measure(column, measures.get(at)),
                            half + GAP,
                            at + 1 < measures.size()
                                    ? measure(column, measures.get(at + 1))
                                    : List.of(),
                            scene.signs().cut()));
        }
        return lines;
    }

    private static List<Line> measure(Scene scene, MeasureResult measure) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.STRONG, measure.measure().title()));
        for (Comparison comparison : measure.comparisons()) {
            lines.addAll(
                    Wrap.hanging(
                            ComparisonPicture.sign(comparison.verdict(), scene.signs()),
                            Tone.STRONG,
                            comparison.sentence(),
                            scene.columns()));
            lines.addAll(said(scene, "in technical words", comparison.words().technical()));
            lines.addAll(said(scene, "what would change this", comparison.words().change()));
        }
        lines.addAll(said(scene, "how it is reckoned", String.join(" ", measure.method())));
        lines.addAll(said(scene, "what the confidence covers", measure.promise()));
        return List.copyOf(lines);
    }

    /** A quiet heading with its text; nothing where there is none. */
    private static List<Line> said(Scene scene, String heading, String text) {
        if (text.isBlank()) {
            return List.of();
        }
        return Line.stacked(
                List.of(Line.of(Tone.QUIET, "  " + heading)),
                Wrap.lines(text, scene.columns() - 4).stream()
                        .map(line -> line.indented(4))
                        .toList());
    }
}
