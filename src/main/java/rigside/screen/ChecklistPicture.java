package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.IfNot;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Checked;
import rigside.session.Place;

/** Things to confirm one by one: done, now, to come, told apart by signs and words. */
final class ChecklistPicture {
    private ChecklistPicture() {}

    /** Rows that what came before and comes next have at least. */
    private static final int NEIGHBOURS = 4;

    static List<Line> of(Scene scene, Activity.Checking activity) {
        Step.Checklist step = scene.step(activity.place(), Step.Checklist.class);
        List<Line> say = scene.wrapped(step.say());
        List<Line> items = new ArrayList<>();
        int now = 0;
        for (int at = 0; at < step.items().size(); at++) {
            now = at == activity.item() ? items.size() : now;
            items.addAll(
                    at < activity.item()
                            ? done(scene, step.items().get(at).text(), activity.place(), at)
                            : open(scene, step.items().get(at), at == activity.item()));
        }
        int most = scene.rows() - (say.isEmpty() ? 0 : say.size() + 1);
        int asked = open(scene, step.items().get(activity.item()), true).size();
        boolean whole = scene.size() == 0 || asked + NEIGHBOURS <= most;
        return Scene.stack(say, whole ? Scene.around(items, now + 1, most) : items);
    }

    private static List<Line> done(Scene scene, String text, Place place, int item) {
        Checked how = scene.state().course().checked(place, item).orElse(Checked.SO);
        Line sign =
                switch (how) {
                    case SO -> Line.of(Tone.GOOD, " " + scene.signs().tick() + " so   ");
                    case NOT_SO -> Line.of(Tone.WARN, " " + scene.signs().mark() + " no   ");
                    case LEFT_OUT -> Line.of(Tone.QUIET, " " + scene.signs().dot() + " left ");
                };
        return Wrap.hanging(sign, Tone.QUIET, text, scene.columns());
    }

    /** One item that is asked now, or later. */
    private static List<Line> open(Scene scene, Step.Checklist.Item item, boolean now) {
        if (!now) {
            return Wrap.hanging(
                    Line.of(Tone.QUIET, " " + scene.signs().dot() + " then "),
                    Tone.PLAIN,
                    item.text(),
                    scene.columns());
        }
        List<Line> lines = new ArrayList<>();
        lines.add(Line.BLANK);
        lines.addAll(asked(scene, item.text()));
        lines.addAll(
                Wrap.lines(Tone.QUIET, "if not: " + ifNot(item.ifNot()), scene.columns() - 8)
                        .stream()
                        .map(line -> line.indented(8))
                        .toList());
        lines.add(Line.BLANK);
        return lines;
    }

    /** What is asked now, in big letters where there is room. */
    private static List<Line> asked(Scene scene, String text) {
        Line sign = Line.of(Tone.STRONG, " " + scene.signs().here() + " NOW  ");
        int room = scene.columns() - sign.width();
        if (scene.size() == 0 || Big.fitting(text, scene.size(), room) == 0) {
            return Wrap.hanging(sign, Tone.STRONG, text, scene.columns());
        }
        return Line.beside(
                List.of(Line.of(Tone.STRONG, " " + scene.signs().here() + " NOW")),
                sign.width(),
                scene.columns(room).big(text),
                scene.signs().cut());
    }

    private static String ifNot(IfNot where) {
        return switch (where) {
            case REPEAT -> "put it right, then all of this list again";
            case ABANDON -> "the mask comes off, this donning is abandoned and done again";
            case STOP -> "everything stops here";
            case GO_ON -> "it is kept as an outcome, and the list goes on";
        };
    }
}
