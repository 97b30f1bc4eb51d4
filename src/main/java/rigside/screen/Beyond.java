package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Applicable;
import rigside.session.Place;
import rigside.session.Procedure;

/**
 * What a large window shows below a step in the rows it leaves over: the steps that follow, and
 * what was captured in this part. It is read beside the rig, not from two metres, and never makes a
 * step's letters smaller.
 */
record Beyond(Scene scene) {
    /** Fewer rows tell nothing. */
    private static final int FEWEST = 3;

    /** More captured values than this are looked for on the page of entries. */
    private static final int MOST = 12;

    /** Nothing while a pull is timed, between donnings and where the window is small. */
    static List<Line> below(Scene scene, List<Line> step) {
        Activity activity = scene.state().activity();
        boolean read = scene.isTall() && !StepKeys.isTimed(activity) && !StepKeys.scrolls(activity);
        int room = scene.rows() - step.size() - 1;
        return read && room >= FEWEST ? Scene.stack(step, new Beyond(scene).lines(room)) : step;
    }

    private List<Line> lines(int room) {
        List<Line> next = next();
        List<Line> captured = captured(room - next.size() - (next.isEmpty() ? 0 : 1));
        return Scene.stack(next, captured);
    }

    private List<Line> next() {
        Optional<Place> place = Places.of(scene.state());
        if (place.isEmpty()) {
            return List.of();
        }
        List<Step> steps = Procedure.steps(scene.state().protocol(), place.get().stage());
        Place here = place.get();
        List<String> titles =
                Applicable.steps(scene.state(), here.stage(), here.donning()).stream()
                        .filter(at -> at > here.step())
                        .map(at -> steps.get(at).title())
                        .toList();
        return titles.isEmpty()
                ? List.of()
                : List.of(
                        Line.of(Tone.QUIET, "after this: ")
                                .plus(String.join(", ", titles))
                                .cut(scene.columns(), scene.signs().cut()));
    }

    /** The last ones, under a heading. */
    private List<Line> captured(int room) {
        List<Listing.Row> rows = Listing.underWay(scene.state());
        int most = Math.min(MOST, room - 1);
        if (rows.isEmpty() || most < 1) {
            return List.of();
        }
        String part = scene.state().course().open().isPresent() ? "in this donning" : "so far";
        List<Line> lines = new ArrayList<>(List.of(Line.of(Tone.QUIET, "captured " + part)));
        EntriesPicture entries = new EntriesPicture(scene);
        rows.subList(Math.max(0, rows.size() - most), rows.size())
                .forEach(
                        row ->
                                lines.add(
                                        entries.row(row)
                                                .cut(scene.columns(), scene.signs().cut())));
        return List.copyOf(lines);
    }
}
