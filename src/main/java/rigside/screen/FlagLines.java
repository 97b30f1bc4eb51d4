package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;

/** What is worth a second look, in quiet lines with the reason. A flag never acts by itself. */
final class FlagLines {
    private FlagLines() {}

    /** The flags of all measures under a heading; nothing where there are none. */
    static List<Line> of(Scene scene) {
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : scene.view().shown().measures()) {
            for (Flag flag : measure.flags()) {
                lines.addAll(line(scene, measure.measure().title() + ": ", flag));
            }
        }
        return lines.isEmpty() ? lines : Line.stacked(heading(), lines);
    }

    private static List<Line> heading() {
        return List.of(
                Line.of(Tone.STRONG, "Worth a second look")
                        .plus(Tone.QUIET, "  nothing is left out because of it"));
    }

    private static List<Line> line(Scene scene, String title, Flag flag) {
        return Wrap.hanging(
                Line.of(Tone.QUIET, " " + scene.signs().flag() + " "),
                Tone.QUIET,
                title
                        + Texts.sentence(flag.reason())
                        + (flag.whatIf().isEmpty() ? "" : " What if without: [f]"),
                scene.columns());
    }
}
