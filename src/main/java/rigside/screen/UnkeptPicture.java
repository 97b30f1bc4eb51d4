package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/** What is said while something could not be written to disk. */
final class UnkeptPicture {
    private UnkeptPicture() {}

    static List<Line> of(Scene scene) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.BLANK);
        lines.addAll(Big.of("NOT KEPT", Big.USUAL, scene.columns(), scene.view().glyphs()));
        lines.add(Line.BLANK);
        lines.addAll(
                Wrap.lines(
                        "The last thing entered is not on disk. It is held here as long as the"
                                + " program runs. Free some space or mend the disk, then press"
                                + " [Enter]. Leaving gives it up.",
                        scene.columns()));
        return List.copyOf(lines);
    }
}
