package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Protocol;

/** The question and all cautions, to be read before the first donning. */
final class CautionsPicture {
    private CautionsPicture() {}

    static List<Line> of(Scene scene) {
        Protocol protocol = scene.state().protocol();
        List<Line> cautions = new ArrayList<>();
        for (int at = 0; at < protocol.cautions().size(); at++) {
            cautions.addAll(
                    Wrap.hanging(
                            Line.of(Tone.WARN, String.format("%2d ", at + 1)),
                            Tone.PLAIN,
                            protocol.cautions().get(at),
                            scene.columns()));
        }
        return Scene.stack(
                scene.wrapped(protocol.question()),
                scene.strong(
                        protocol.donning().isEmpty()
                                ? "Before anything else, read these cautions:"
                                : "Before the first donning, read these cautions:"),
                cautions,
                scene.strong("[Enter] says that you have read them and will keep to them."));
    }
}
