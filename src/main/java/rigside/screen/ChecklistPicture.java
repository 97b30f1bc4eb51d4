package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Step;
import rigside.session.Activity;

/** Things to confirm one by one: done, now, to come, told apart by signs and words. */
final class ChecklistPicture {
    private ChecklistPicture() {}

    static List<Line> of(Scene scene, Activity.Checking activity) {
        Step.Checklist step = scene.step(activity.place(), Step.Checklist.class);
        List<Line> say = scene.wrapped(step.say());
        List<Line> items = new ArrayList<>();
        int now = 0;
        for (int at = 0; at < step.items().size(); at++) {
            now = at == activity.item() ? items.size() : now;
            items.addAll(item(scene, step.items().get(at), at - activity.item()));
        }
        int room = scene.rows() - (say.isEmpty() ? 0 : say.size() + 1);
        return Scene.stack(say, Scene.around(items, now + 1, room));
    }

    /**
     * One item.
     *
     * @param order below 0 for one that is done, 0 for the one asked now
     */
    private static List<Line> item(Scene scene, Step.Checklist.Item item, int order) {
        if (order < 0) {
            return Wrap.hanging(
                    Line.of(Tone.GOOD, " " + scene.signs().tick() + " so   "),
                    Tone.QUIET,
                    item.text(),
                    scene.columns());
        }
        if (order > 0) {
            return Wrap.hanging(
                    Line.of(Tone.QUIET, " " + scene.signs().dot() + " then "),
                    Tone.PLAIN,
                    item.text(),
                    scene.columns());
        }
        List<Line> lines = new ArrayList<>();
        lines.add(Line.BLANK);
        lines.addAll(
                Wrap.hanging(
                        Line.of(Tone.STRONG, " " + scene.signs().here() + " NOW  "),
                        Tone.STRONG,
                        item.text(),
                        scene.columns()));
        lines.addAll(
                Wrap.lines(Tone.QUIET, "if not: " + ifNot(item.ifNot()), scene.columns() - 8)
                        .stream()
                        .map(line -> line.indented(8))
                        .toList());
        lines.add(Line.BLANK);
        return lines;
    }

    private static String ifNot(Step.Checklist.IfNot where) {
        return switch (where) {
            case REPEAT -> "put it right, then all of this list again";
            case ABANDON -> "the mask comes off, this donning is abandoned and done again";
            case STOP -> "everything stops here";
        };
    }
}
