package rigside.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.analysis.Shown;
import rigside.session.State;

/** The figures of a session: none of what may not be shown now. */
public final class Figures {
    private Figures() {}

    /** Stands in each, since a figure may go its own way. */
    private static final String INVENTED = "Simulated: every value is invented.";

    /** All of them, measure by measure, in the order they are to be read. */
    public static List<Figure> of(State state, Shown shown) {
        return state.protocol().measures().stream()
                .flatMap(measure -> of(state, shown, measure.id()).stream())
                .toList();
    }

    /** Those of one measure, by its id. */
    public static List<Figure> of(State state, Shown shown, String measure) {
        return Stream.of(
                        LooksPlot.of(state, shown, measure),
                        ValuesPlot.of(state, shown, measure),
                        TrialsPlot.of(state, shown, measure),
                        PullsPlot.of(state, shown, measure),
                        ExercisesPlot.of(state, shown, measure))
                .flatMap(Optional::stream)
                .map(figure -> told(state, figure))
                .toList();
    }

    /** All of them, with the pressure over time where its readings are there. */
    public static List<Figure> of(Material of) {
        return of.protocol().measures().stream()
                .flatMap(measure -> of(of, measure.id()).stream())
                .toList();
    }

    /** Those of one measure, by its id, with the pressure over time. */
    static List<Figure> of(Material of, String measure) {
        return Stream.concat(
                        of(of.state(), of.shown(), measure).stream(),
                        PressurePlot.of(of, measure).stream().map(each -> told(of.state(), each)))
                .toList();
    }

    private static Figure told(State state, Figure figure) {
        return isInvented(state) ? figure.with(INVENTED) : figure;
    }

    private static boolean isInvented(State state) {
        return state.opening().map(opened -> opened.event().simulated()).orElse(false);
    }

    /**
     * A figure as a PNG file: on white, at least 1600 dots wide, drawn from {@link Figure#svg()}.
     *
     * @throws IOException if it cannot be drawn, such as on a machine without fonts; the message
     *     says why in words, and on a line of its own what to do
     */
    public static byte[] png(Figure figure) throws IOException {
        return Png.of(figure);
    }
}
