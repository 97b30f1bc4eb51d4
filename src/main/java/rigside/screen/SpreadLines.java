package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.MeasureResult;
import rigside.analysis.Repeatability;

/** Where one condition is repeated: how far its values spread, and what that means. */
final class SpreadLines {
    private SpreadLines() {}

    /** So many sentences hold what was found; the others say what follows. */
    private static final int FOUND = 2;

    /** Measure by measure; nothing where conditions are compared, or the result is concealed. */
    static List<Line> of(Scene scene) {
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : scene.view().shown().measures()) {
            List<String> sentences =
                    measure.repeatability().map(Repeatability::sentences).orElse(List.of());
            if (!sentences.isEmpty()) {
                lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
                lines.add(Line.of(Tone.STRONG, measure.measure().title()));
                for (int at = 0; at < sentences.size(); at++) {
                    lines.addAll(
                            Wrap.hanging(
                                    Line.of("  "),
                                    at < FOUND ? Tone.STRONG : Tone.PLAIN,
                                    sentences.get(at),
                                    scene.columns()));
                }
            }
        }
        return List.copyOf(lines);
    }
}
