package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/** All comparisons: what was found first, as roomy as there is room for. */
final class VerdictList {
    private VerdictList() {}

    /**
     * All comparisons, or that they are concealed. Where even the tightest form is too long, a row
     * for each comes first.
     *
     * @param rows how many rows there are before one has to scroll
     */
    static List<Line> of(Scene scene, int rows) {
        if (!scene.view().shown().result()) {
            return concealed(scene);
        }
        for (ComparisonPicture.Room room : ComparisonPicture.Room.values()) {
            List<Line> lines = Line.stacked(SpreadLines.of(scene), all(scene, room));
            if (lines.size() <= rows) {
                return lines;
            }
        }
        return Scene.stack(
                SpreadLines.of(scene), rows(scene), all(scene, ComparisonPicture.Room.CLOSE));
    }

    /** The comparisons of one measure. */
    static List<Line> of(Scene scene, MeasureResult measure, ComparisonPicture.Room room) {
        return joined(room, pictures(scene, measure));
    }

    private static List<Line> all(Scene scene, ComparisonPicture.Room room) {
        return joined(
                room,
                scene.view().shown().measures().stream()
                        .flatMap(measure -> pictures(scene, measure).stream())
                        .toList());
    }

    private static List<Line> joined(
            ComparisonPicture.Room room, List<ComparisonPicture> pictures) {
        List<Line> lines = new ArrayList<>();
        for (ComparisonPicture picture : pictures) {
            if (!lines.isEmpty() && room != ComparisonPicture.Room.TIGHT) {
                lines.add(Line.BLANK);
            }
            lines.addAll(picture.lines(room));
        }
        return List.copyOf(lines);
    }

    /** The pictures of one measure's comparisons. */
    static List<ComparisonPicture> pictures(Scene scene, MeasureResult measure) {
        return measure.comparisons().stream()
                .map(comparison -> new ComparisonPicture(scene, measure, comparison))
                .toList();
    }

    /** What is concealed; nothing where nothing is. */
    static List<Line> concealed(Scene scene) {
        String concealed = scene.view().shown().concealed();
        return concealed.isEmpty()
                ? List.of()
                : Wrap.lines(Tone.WARN, Texts.sentence(concealed) + ".", scene.columns());
    }

    /**
     * One row for each comparison, its interval against the band and the verdict in a word; then
     * what is concealed.
     */
    static List<Line> brief(Scene scene) {
        return Line.stacked(
                Line.stacked(SpreadLines.of(scene), rows(scene)),
                Line.stacked(ofTrials(scene), concealed(scene)));
    }

    private static List<Line> rows(Scene scene) {
        List<ComparisonPicture> pictures =
                scene.view().shown().measures().stream()
                        .flatMap(measure -> pictures(scene, measure).stream())
                        .toList();
        int named = pictures.stream().mapToInt(each -> each.name().width()).max().orElse(0);
        int worded = pictures.stream().mapToInt(each -> each.word().width()).max().orElse(0);
        return pictures.stream().map(each -> each.brief(named, worded)).toList();
    }

    /** Where each trial stands for itself, in sight of every verdict that rests on them. */
    private static List<Line> ofTrials(Scene scene) {
        boolean byTrial =
                scene.state().protocol().plan().design() == Plan.Design.INDEPENDENT_TRIALS
                        && scene.view().shown().measures().stream()
                                .filter(each -> !each.comparisons().isEmpty())
                                .anyMatch(
                                        each ->
                                                each.measure().kind()
                                                        instanceof Measure.TimedInhalation);
        return byTrial
                ? Wrap.hanging(
                        Line.of(Tone.WARN, "! "),
                        Tone.PLAIN,
                        "Trials are no independent replicates: this speaks for these donnings"
                                + " only.",
                        scene.columns())
                : List.of();
    }

    /**
     * What else came of the donnings stands beside every verdict: a condition that fails often says
     * so. And that something is worth a second look.
     */
    static List<Line> beside(Scene scene) {
        Shown shown = scene.view().shown();
        List<Line> lines = new ArrayList<>(ofTrials(scene));
        lines.addAll(Outcomes.counted(scene));
        int flags = shown.measures().stream().mapToInt(each -> each.flags().size()).sum();
        if (flags > 0) {
            lines.add(
                    Line.of(
                            Tone.QUIET,
                            (flags == 1 ? "1 thing is" : flags + " things are")
                                    + " worth a second look: [f]"));
        }
        return List.copyOf(lines);
    }
}
