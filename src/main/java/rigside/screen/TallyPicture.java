package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;

/**
 * The running tally: what was found and what to do next, before anything has to be scrolled; below
 * it how that came about.
 */
record TallyPicture(Scene scene) {

    /** From this width on what was found stands beside how it came about. */
    private static final int SPLIT = 100;

    /** From this width on measures stand side by side. */
    private static final int SIDE_BY_SIDE = 140;

    private static final int GAP = 4;

    static List<Line> of(Scene scene) {
        return new TallyPicture(scene).lines();
    }

    private List<Line> lines() {
        if (!shown().result()) {
            List<Line> outcomes = Outcomes.of(scene);
            return Scene.stack(
                    head(),
                    outcomes.isEmpty() ? Outcomes.counted(scene) : outcomes,
                    Remarks.ofVerdicts(scene),
                    Remarks.ofValues(scene));
        }
        if (scene.columns() < SPLIT) {
            return stacked();
        }
        List<MeasureResult> compared =
                shown().results().stream().filter(each -> !each.comparisons().isEmpty()).toList();
        List<MeasureResult> recorded =
                shown().results().stream().filter(each -> each.comparisons().isEmpty()).toList();
        List<Line> found =
                scene.columns() >= SIDE_BY_SIDE && compared.size() > 1
                        ? scene.twoARow(compared, TallyPicture::whole)
                        : split(compared);
        return Scene.stack(
                head(),
                SpreadLines.of(scene),
                found,
                VerdictList.beside(scene),
                Remarks.ofVerdicts(scene),
                FlagLines.of(scene),
                recorded.stream().flatMap(each -> SummaryTable.of(scene, each).stream()).toList(),
                Outcomes.of(scene),
                Remarks.ofValues(scene));
    }

    /** The state of the plan in a line, and what is concealed. */
    private List<Line> head() {
        List<Line> lines =
                new ArrayList<>(
                        Wrap.hanging(
                                Line.of(Tone.STRONG, "Tally  "),
                                Tone.PLAIN,
                                shown().next(),
                                scene.columns()));
        if (!shown().concealed().isEmpty()) {
            lines.addAll(
                    Wrap.hanging(
                            Line.of(Tone.WARN, "Concealed  "),
                            Tone.STRONG,
                            shown().concealed(),
                            scene.columns()));
        }
        return List.copyOf(lines);
    }

    /** One below the other; the last row is left to the sign that there is more. */
    private List<Line> stacked() {
        List<Line> head = head();
        List<Line> beside = VerdictList.beside(scene);
        int rows = scene.rows() - 1;
        int room = rows - head.size() - beside.size();
        List<Line> loose = VerdictList.of(scene, room - 2);
        List<Line> verdicts = loose.size() <= room - 2 ? loose : VerdictList.of(scene, room);
        List<Line> found =
                Stream.of(
                                Scene.stack(head, verdicts, beside),
                                Scene.stack(head, Line.stacked(verdicts, beside)))
                        .filter(lines -> lines.size() <= rows)
                        .findFirst()
                        .orElse(Line.stacked(head, Line.stacked(verdicts, beside)));
        List<Line> details = new ArrayList<>();
        for (MeasureResult measure : shown().results()) {
            details.add(Line.BLANK);
            details.addAll(details(scene, measure));
        }
        return Scene.stack(
                found,
                Remarks.ofVerdicts(scene),
                FlagLines.of(scene),
                details.isEmpty() ? details : details.subList(1, details.size()),
                Outcomes.of(scene),
                Remarks.ofValues(scene));
    }

    /** The numbers of one measure, how its intervals moved and what to expect. */
    private static List<Line> details(Scene scene, MeasureResult measure) {
        List<Line> lines = new ArrayList<>(SummaryTable.of(scene, measure));
        for (ComparisonPicture picture : VerdictList.pictures(scene, measure)) {
            if (measure.comparisons().size() > 1 && !picture.looks().isEmpty()) {
                lines.add(
                        Line.of(
                                Tone.STRONG,
                                "  "
                                        + Header.title(
                                                scene.state(), picture.comparison().condition())));
            }
            lines.addAll(picture.looks());
            lines.addAll(picture.forecast());
        }
        return List.copyOf(lines);
    }

    /** Each measure's verdicts on the left, how they came about on the right. */
    private List<Line> split(List<MeasureResult> measures) {
        int left = (scene.columns() - GAP) / 2;
        Scene first = scene.columns(left);
        Scene second = scene.columns(scene.columns() - GAP - left);
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : measures) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
            List<Line> found = VerdictList.of(first, measure, ComparisonPicture.Room.ROOMY);
            lines.addAll(
                    Line.beside(found, left + GAP, details(second, measure), scene.signs().cut()));
        }
        return List.copyOf(lines);
    }

    /** Everything of a measure below its verdicts. */
    private static List<Line> whole(Scene scene, MeasureResult measure) {
        return Scene.stack(
                VerdictList.of(scene, measure, ComparisonPicture.Room.ROOMY),
                details(scene, measure));
    }

    private Shown shown() {
        return scene.view().shown();
    }
}
