package rigside.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rigside.analysis.Comparison;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;

/** Behind one key: how each verdict comes about, what would change it, what the promise covers. */
record MethodPicture(Scene scene) {

    /** From this width on measures stand side by side. */
    private static final int SIDE_BY_SIDE = 110;

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
        Set<String> shared = shared(measures);
        return Scene.stack(
                title,
                scene.columns() >= SIDE_BY_SIDE && measures.size() > 1
                        ? scene.twoARow(measures, (column, each) -> measure(column, each, shared))
                        : below(measures, shared),
                VerdictList.concealed(scene),
                shared.isEmpty()
                        ? List.of()
                        : Line.stacked(
                                List.of(Line.of(Tone.STRONG, "How all of it is reckoned")),
                                items(scene, 2, List.copyOf(shared))));
    }

    /** What is said of every measure alike is said once. */
    private static Set<String> shared(List<MeasureResult> measures) {
        Set<String> shared = new LinkedHashSet<>(method(measures.get(0)));
        measures.forEach(measure -> shared.retainAll(method(measure)));
        return measures.size() > 1 ? shared : Set.of();
    }

    private static List<String> method(MeasureResult measure) {
        return Stream.concat(measure.method().stream(), Stream.of(measure.promise()))
                .filter(each -> !each.isBlank())
                .toList();
    }

    private List<Line> below(List<MeasureResult> measures, Set<String> shared) {
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : measures) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
            lines.addAll(measure(scene, measure, shared));
        }
        return lines;
    }

    private static List<Line> measure(Scene scene, MeasureResult measure, Set<String> shared) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.STRONG, measure.measure().title()));
        for (Comparison comparison : measure.comparisons()) {
            lines.addAll(
                    Wrap.hanging(
                            ComparisonPicture.sign(comparison.verdict(), scene.signs()),
                            Tone.STRONG,
                            comparison.sentence(),
                            scene.columns()));
            lines.addAll(
                    said(scene, "in technical words", List.of(comparison.words().technical())));
            lines.addAll(
                    said(scene, "what would change this", List.of(comparison.words().change())));
        }
        lines.addAll(
                said(
                        scene,
                        "how it is reckoned",
                        method(measure).stream().filter(each -> !shared.contains(each)).toList()));
        return List.copyOf(lines);
    }

    /** A quiet heading with its texts; nothing where there are none. */
    private static List<Line> said(Scene scene, String heading, List<String> texts) {
        List<Line> items = items(scene, 4, texts);
        return items.isEmpty()
                ? List.of()
                : Line.stacked(List.of(Line.of(Tone.QUIET, "  " + heading)), items);
    }

    private static List<Line> items(Scene scene, int indent, List<String> texts) {
        return texts.stream()
                .filter(text -> !text.isBlank())
                .flatMap(
                        text ->
                                Wrap.hanging(
                                        Line.of(" ".repeat(indent)),
                                        Tone.PLAIN,
                                        text,
                                        scene.columns())
                                        .stream())
                .toList();
    }
}
