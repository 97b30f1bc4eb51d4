package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.Part;
import rigside.protocol.Step;
import rigside.protocol.Window;
import rigside.session.Place;
import rigside.session.Slot;

/** All exercises of a step: done, now, to come, with the fit factor of each once it is out. */
final class FitList {
    private FitList() {}

    /**
     * The list.
     *
     * @param place where the exercises stand
     * @param now the exercise that is meant now, from 0
     * @param room how many rows it may take
     */
    static List<Line> of(Scene scene, Place place, int now, int room) {
        Step.Exercises step = scene.step(place, Step.Exercises.class);
        Optional<DonningValue> value = step.fitFactor().flatMap(scene::open);
        int width =
                Math.min(
                        scene.columns() - 26,
                        step.exercises().stream()
                                .mapToInt(each -> Clean.width(Clean.text(each.title())))
                                .max()
                                .orElse(0));
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < step.exercises().size(); at++) {
            Line name =
                    Line.of(at == now ? Tone.STRONG : Tone.PLAIN, step.exercises().get(at).title());
            lines.add(
                    sign(scene.signs(), at, now)
                            .plus(name.cut(width, scene.signs().cut()).padded(width, Tone.PLAIN))
                            .plus("  ")
                            .plus(fit(scene, place, value, at, at < now)));
        }
        Optional<Line> overall = overall(scene, step, value);
        List<Line> seen =
                new ArrayList<>(Scene.around(lines, now, room - (overall.isPresent() ? 1 : 0)));
        overall.ifPresent(seen::add);
        return List.copyOf(seen);
    }

    private static Line sign(Glyphs signs, int at, int now) {
        String number = String.format("%2d ", at + 1);
        if (at < now) {
            return Line.of(Tone.GOOD, signs.tick()).plus(number);
        }
        return at == now
                ? Line.of(Tone.STRONG, signs.here()).plus(Tone.STRONG, number)
                : Line.of(Tone.QUIET, signs.dot()).plus(number);
    }

    /** What an exercise gave, where it may be seen. */
    static Optional<Part> part(Scene scene, Step.Exercises step, int at) {
        return part(step.fitFactor().flatMap(scene::open), step, at);
    }

    /**
     * Only exercises with a mask sample have a part: the others, a grimace say, must not shift the
     * list.
     */
    private static Optional<Part> part(Optional<DonningValue> value, Step.Exercises step, int at) {
        if (at < 0 || step.exercises().get(at).mask().isEmpty()) {
            return Optional.empty();
        }
        int index =
                (int)
                        step.exercises().subList(0, at).stream()
                                .filter(before -> before.mask().isPresent())
                                .count();
        List<Part> parts = value.map(DonningValue::parts).orElse(List.of());
        return index < parts.size() ? Optional.of(parts.get(index)) : Optional.empty();
    }

    private static Line fit(
            Scene scene, Place place, Optional<DonningValue> value, int at, boolean done) {
        Step.Exercises step = scene.step(place, Step.Exercises.class);
        return part(value, step, at)
                .filter(part -> part.value().isPresent())
                .map(part -> fit(part, mayChange(scene, place, at)))
                .orElseGet(() -> done ? live(scene, at) : Line.BLANK);
    }

    /** Where readings are taken at the end of all exercises, what instruments gave of one. */
    private static Line live(Scene scene, int at) {
        return scene.view()
                .live()
                .fit(at)
                .map(
                        fit ->
                                Line.of("fit factor ")
                                        .plus(
                                                Tone.STRONG,
                                                Figures.value(
                                                        OptionalDouble.of(fit.value()),
                                                        fit.bounded()))
                                        .plus(" so far"))
                .orElse(Line.BLANK);
    }

    private static Line fit(Part part, boolean mayChange) {
        Line line =
                Line.of("fit factor ")
                        .plus(Tone.STRONG, Scene.value(part))
                        .plus(mayChange ? " so far" : "");
        String remark =
                part.level() == Level.MISSED
                        ? "  below the level"
                        : part.counted() ? "" : "  not counted";
        return line.plus(Tone.WARN, remark);
    }

    /**
     * Whether the fit factor of an exercise may still change: no ambient concentration after its
     * mask sample is there yet, while one is to come.
     */
    static boolean mayChange(Scene scene, Place place, int at) {
        Step.Exercises step = scene.step(place, Step.Exercises.class);
        double from = step.exercises().get(at).mask().map(Window::from).orElse(0.0);
        List<Slot> after = new ArrayList<>();
        for (int exercise = at; exercise < step.exercises().size(); exercise++) {
            List<Window> windows = step.exercises().get(exercise).ambient();
            for (int window = 0; window < windows.size(); window++) {
                if (exercise > at || windows.get(window).from() >= from) {
                    after.add(new Slot.Ambient(place, exercise, window));
                }
            }
        }
        return !after.isEmpty()
                && after.stream()
                        .noneMatch(slot -> scene.state().captured().standing(slot).isPresent());
    }

    private static Optional<Line> overall(
            Scene scene, Step.Exercises step, Optional<DonningValue> value) {
        if (step.fitFactor().isPresent() && !scene.view().shown().result()) {
            return Optional.of(Line.of(Tone.QUIET, "  overall: concealed"));
        }
        return value.filter(each -> each.value().isPresent())
                .map(
                        each ->
                                Line.of("  so far overall ")
                                        .plus(
                                                Tone.STRONG,
                                                Figures.value(each.value(), each.bounded())));
    }
}
