package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.Part;
import rigside.protocol.Step;

/** All exercises of a step: done, now, to come, with the fit factor of each once it is out. */
final class FitList {
    private FitList() {}

    /**
     * The list.
     *
     * @param now the exercise that is meant now, from 0
     * @param room how many rows it may take
     */
    static List<Line> of(Scene scene, Step.Exercises step, int now, int room) {
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
                            .plus(fit(value, step, at)));
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

    private static Line fit(Optional<DonningValue> value, Step.Exercises step, int at) {
        return part(value, step, at)
                .filter(part -> part.value().isPresent())
                .map(FitList::fit)
                .orElse(Line.BLANK);
    }

    private static Line fit(Part part) {
        Line line = Line.of("fit factor ").plus(Tone.STRONG, Scene.value(part));
        String remark =
                part.level() == Level.MISSED
                        ? "  below the level"
                        : part.counted() ? "" : "  not counted";
        return line.plus(Tone.WARN, remark);
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
                                                (each.bounded() ? ">= " : "")
                                                        + Figures.three(each.value())));
    }
}
