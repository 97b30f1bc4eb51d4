package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Exercise;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Place;

/**
 * A timed exercise: before it starts the list of all, while it runs the clock and the sample tube.
 *
 * @param scene the room and the view
 * @param place where the exercises stand
 * @param step the exercises
 * @param at which of them, from 0
 */
record ExercisePicture(Scene scene, Place place, Step.Exercises step, int at) {

    /** From this width on all exercises stand beside the one that is running. */
    private static final int WIDE = 100;

    private static final int GAP = 4;

    static List<Line> of(Scene scene, Activity.Exercising activity) {
        ExercisePicture picture =
                new ExercisePicture(
                        scene,
                        activity.place(),
                        scene.step(activity.place(), Step.Exercises.class),
                        activity.exercise());
        return activity.startedAt().isEmpty()
                ? picture.waiting()
                : picture.running(scene.view().secondsSince(activity.startedAt().getAsLong()));
    }

    private List<Line> waiting() {
        List<Line> title =
                scene.isTall()
                        ? Line.stacked(List.of(count(), Line.BLANK), scene.big(exercise().title()))
                        : Line.stacked(List.of(count()), scene.strong(exercise().title()));
        List<Line> go =
                scene.strong(
                        scene.state().isFromPaper()
                                ? "[Enter] when the form says that it was done."
                                : "[Enter] starts it. It lasts "
                                        + Figures.length(exercise().seconds())
                                        + ".");
        List<Line> said = scene.wrapped(step.say());
        int others = title.size() + said.size() + go.size() + step.exercises().size() + 4;
        List<Line> say =
                scene.isTall()
                        ? scene.twice(exercise().say(), scene.rows() - others)
                        : scene.wrapped(exercise().say());
        List<Line> what =
                Scene.stack(
                        title,
                        scene.isTall() ? Scene.stack(said, say) : Line.stacked(said, say),
                        go);
        return Scene.stack(what, list(scene, scene.rows() - what.size() - 1));
    }

    /** The tube's side in large letters, unless that leaves no room for the rest at this size. */
    private List<Line> running(double elapsed) {
        List<Line> large = running(elapsed, scene.isTall());
        return large.size() <= scene.rows() ? large : running(elapsed, false);
    }

    private List<Line> running(double elapsed, boolean largeTube) {
        List<Line> time = Windows.lines(exercise(), elapsed, scene.columns(), scene.signs());
        if (scene.columns() < WIDE) {
            return Scene.stack(now(scene, elapsed, largeTube), live(scene), time);
        }
        List<Line> list = list(scene.columns(scene.columns() / 2), scene.rows() - time.size() - 1);
        int column = scene.columns() - list.stream().mapToInt(Line::width).max().orElse(0) - GAP;
        List<Line> both =
                Line.beside(
                        Scene.stack(
                                now(scene.columns(column - GAP), elapsed, largeTube),
                                live(scene.columns(column - GAP))),
                        column,
                        list,
                        scene.signs().cut());
        return Scene.stack(both, time);
    }

    /** The exercise, its clock and what to do. */
    private List<Line> now(Scene scene, double elapsed, boolean largeTube) {
        double left = exercise().seconds() - elapsed;
        List<Line> clock = scene.clock(left, scene.columns() / 2);
        int column = Math.max(24, clock.stream().mapToInt(Line::width).max().orElse(0) + GAP);
        int beside = scene.columns() - column;
        List<Line> tube = tube(scene.columns(beside), elapsed, largeTube);
        List<Line> say = scene.columns(beside).within(exercise().say(), clock.size() - tube.size());
        boolean brief = LiveLines.isAny(scene) && !scene.isTall();
        List<Line> name = brief ? scene.strong(exercise().title()) : scene.name(exercise().title());
        List<Line> plain = scene.strong(exercise().say());
        return Scene.stack(
                Line.stacked(List.of(count()), name),
                Line.beside(clock, column, Line.stacked(say, tube), scene.signs().cut()),
                scene.isTall() && !say.equals(scene.columns(beside).strong(exercise().say()))
                        ? plain
                        : List.of());
    }

    /** What the hand on the sample tube has to know: in large letters where there is room. */
    private List<Line> tube(Scene scene, double elapsed, boolean large) {
        String tube = Windows.tube(exercise(), elapsed);
        Optional<String> next = Windows.next(exercise(), elapsed);
        List<Line> lines = new ArrayList<>(List.of(Line.BLANK));
        Line words = Line.of("sample tube: ");
        Line line =
                tube.isEmpty() ? words.plus("nothing is read now") : words.plus(Tone.WARN, tube);
        lines.add(next.map(each -> line.plus(Tone.QUIET, ", " + each)).orElse(line));
        if (large && !tube.isEmpty()) {
            lines.addAll(scene.sized(Math.min(scene.size(), Big.USUAL)).big(tube));
            lines.add(Line.BLANK);
        }
        if (Windows.readsPressure(exercise(), elapsed)) {
            lines.add(Line.of("mask pressure is read now"));
        }
        Windows.legend(exercise()).map(each -> Line.of(Tone.QUIET, each)).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    /** What particle counters give meanwhile. */
    private List<Line> live(Scene scene) {
        LiveLines lines = new LiveLines(scene, step.unit());
        List<Line> fit = lines.fit(at);
        List<Line> read = fit.isEmpty() ? lines.reading() : fit;
        return Line.stacked(
                Line.stacked(LiveLines.amiss(scene), read),
                lines.air(step.ambientMayMove()).stream().toList());
    }

    private Exercise exercise() {
        return step.exercises().get(at);
    }

    private Line count() {
        Line count =
                Line.of("exercise ").plus(Tone.STRONG, (at + 1) + " of " + step.exercises().size());
        return at + 1 < step.exercises().size()
                ? count.plus(Tone.QUIET, "   then: " + step.exercises().get(at + 1).title())
                : count.plus(Tone.QUIET, "   the last one");
    }

    /**
     * All exercises; the fit factor of the one before in big digits, once it is out, beside them or
     * below.
     */
    private List<Line> list(Scene scene, int rows) {
        List<Line> list = FitList.of(scene, place, at, rows);
        int width = list.stream().mapToInt(Line::width).max().orElse(0);
        List<Line> last = last(scene, scene.columns() - width - GAP);
        boolean below = scene.columns() - width - GAP <= 24;
        List<Line> narrow = below ? last(scene, scene.columns()) : List.of();
        return below && !narrow.isEmpty() && list.size() + 1 + narrow.size() <= rows
                ? Scene.stack(list, narrow)
                : Line.beside(list, width + GAP, last, scene.signs().cut());
    }

    private List<Line> last(Scene scene, int room) {
        return FitList.part(scene, step, at - 1)
                .filter(part -> part.value().isPresent() && room > 24)
                .map(
                        part ->
                                Line.stacked(
                                        List.of(Line.of("fit factor of exercise " + at)),
                                        Big.of(
                                                Scene.value(part),
                                                soFar(Scene.value(part), room),
                                                Math.max(Big.USUAL, scene.lesser()),
                                                room,
                                                scene.signs())))
                .orElse(List.of());
    }

    /** Said again beside the digits where that does not make them smaller. */
    private String soFar(String digits, int room) {
        String words = "so far";
        boolean fits = Big.fitting(digits, Big.USUAL, room - words.length() - 1) == Big.USUAL;
        return fits && FitList.mayChange(scene, place, at - 1) ? words : "";
    }
}
