package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Step;
import rigside.session.Activity;

/**
 * A timed exercise: before it starts the list of all, while it runs the clock and the sample tube.
 *
 * @param scene the room and the view
 * @param step the exercises
 * @param at which of them, from 0
 */
record ExercisePicture(Scene scene, Step.Exercises step, int at) {

    static List<Line> of(Scene scene, Activity.Exercising activity) {
        ExercisePicture picture =
                new ExercisePicture(
                        scene,
                        scene.step(activity.place(), Step.Exercises.class),
                        activity.exercise());
        return activity.startedAt().isEmpty()
                ? picture.waiting()
                : picture.running(scene.view().secondsSince(activity.startedAt().getAsLong()));
    }

    private List<Line> waiting() {
        List<Line> what =
                Scene.stack(
                        Line.stacked(List.of(count()), scene.strong(exercise().title())),
                        Line.stacked(scene.wrapped(step.say()), scene.wrapped(exercise().say())),
                        scene.strong(
                                "[Enter] starts it. It lasts "
                                        + Figures.length(exercise().seconds())
                                        + "."));
        return Scene.stack(what, list(scene.rows() - what.size() - 1));
    }

    private List<Line> running(double elapsed) {
        double left = exercise().seconds() - elapsed;
        List<Line> clock = scene.big(Figures.left(left), left < 60 ? "s" : "min:s", 38);
        int column = Math.max(24, clock.stream().mapToInt(Line::width).max().orElse(0) + 4);
        int beside = scene.columns() - column;
        List<Line> tube = new ArrayList<>(List.of(Line.BLANK, sampling(elapsed)));
        Windows.legend(exercise()).map(each -> Line.of(Tone.QUIET, each)).ifPresent(tube::add);
        return Scene.stack(
                Line.stacked(List.of(count()), scene.big(exercise().title())),
                Line.beside(
                        clock,
                        column,
                        Line.stacked(Wrap.lines(Tone.STRONG, exercise().say(), beside), tube),
                        scene.signs().cut()),
                Windows.lines(exercise(), elapsed, scene.columns(), scene.signs()),
                scene.isTall() ? list(scene.rows() - 16) : List.of());
    }

    private Step.Exercise exercise() {
        return step.exercises().get(at);
    }

    private Line count() {
        Line count =
                Line.of("exercise ").plus(Tone.STRONG, (at + 1) + " of " + step.exercises().size());
        return at + 1 < step.exercises().size()
                ? count.plus(Tone.QUIET, "   then: " + step.exercises().get(at + 1).title())
                : count.plus(Tone.QUIET, "   the last one");
    }

    private Line sampling(double elapsed) {
        String tube = Windows.open(exercise(), elapsed);
        return tube.isEmpty()
                ? Line.of("sample tube: nothing is read now")
                : Line.of("sample tube: ").plus(Tone.WARN, tube);
    }

    /**
     * All exercises; beside them the fit factor of the one before in big digits, once it is out.
     */
    private List<Line> list(int rows) {
        List<Line> list = FitList.of(scene, step, at, rows);
        int column = list.stream().mapToInt(Line::width).max().orElse(0) + 4;
        int room = scene.columns() - column;
        List<Line> last =
                FitList.part(scene, step, at - 1)
                        .filter(part -> part.value().isPresent() && room > 20)
                        .map(
                                part ->
                                        Line.stacked(
                                                List.of(Line.of("fit factor of exercise " + at)),
                                                scene.big(Scene.value(part), "", room)))
                        .orElse(List.of());
        return Line.beside(list, column, last, scene.signs().cut());
    }
}
