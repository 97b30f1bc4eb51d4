package rigside.report;

import java.util.List;
import rigside.analysis.Shown;
import rigside.session.State;

/** The figures of a session: none of what may not be shown now. */
public final class Figures {
    private Figures() {}

    /** All of them, measure by measure, in the order they are to be read. */
    public static List<Figure> of(State state, Shown shown) {
        return state.protocol().measures().stream()
                .flatMap(measure -> of(state, shown, measure.id()).stream())
                .toList();
    }

    /** Those of one measure, by its id. */
    public static List<Figure> of(State state, Shown shown, String measure) {
        return List.of();
    }
}
