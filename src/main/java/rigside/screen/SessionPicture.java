package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;
import rigside.session.Activity;

/** Puts the parts of a session's picture together for one size. */
record SessionPicture(View view, int columns, int rows) {

    /** From this width on the tally stands beside the step. */
    private static final int WIDE = 120;

    private static final int MARGIN = 2;

    static Picture of(View view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), TooSmall.SEEN)
                : new SessionPicture(view, size.getColumns(), size.getRows()).picture();
    }

    private Picture picture() {
        List<Line> top = Header.of(view, columns);
        List<Line> bottom = Footer.of(view, columns);
        int room = Picture.room(rows, top, bottom);
        return switch (view.page()) {
            case STEP -> step(top, bottom, room);
            case TALLY -> scrolled(top, TallyPicture.of(whole(room)), bottom);
            case METHOD -> scrolled(top, MethodPicture.of(whole(room)), bottom);
            case FLAGS -> scrolled(top, FlagsPicture.of(whole(room)), bottom);
            case HELP -> scrolled(top, HelpPicture.session(whole(room)), bottom);
            case UNKEPT -> scrolled(top, UnkeptPicture.of(whole(room)), bottom);
            case ENTRIES ->
                    Picture.list(
                            rows,
                            top,
                            indented(EntriesPicture.of(whole(room))),
                            bottom,
                            view.selected());
        };
    }

    private Picture step(List<Line> top, List<Line> bottom, int room) {
        Activity activity = view.state().activity();
        List<Line> body =
                isTallyBeside()
                        ? wide(room)
                        : narrow(activity, whole(room), StepKeys.scrolls(activity));
        return StepKeys.scrolls(activity)
                ? scrolled(top, body, bottom)
                : Picture.fixed(rows, top, indented(body), bottom, view.glyphs());
    }

    /** Before anything is worn there is nothing to tally. */
    private boolean isTallyBeside() {
        return columns >= WIDE && !view.state().course().donnings().isEmpty();
    }

    /**
     * What is asked goes before how large it is: where a line would be cut, big text shrinks, and
     * then blank lines go.
     */
    private static List<Line> narrow(Activity activity, Scene scene, boolean scrolls) {
        List<Line> large = narrow(activity, scene);
        if (scrolls || large.size() <= scene.rows()) {
            return large;
        }
        List<Line> shrunk = narrow(activity, scene.shrunk());
        return shrunk.size() <= scene.rows()
                ? shrunk
                : shrunk.stream().filter(line -> line.width() > 0).toList();
    }

    private static List<Line> narrow(Activity activity, Scene scene) {
        List<Line> step = StepPicture.of(scene);
        return activity instanceof Activity.NextDonning
                ? Scene.stack(step, Verdicts.brief(scene))
                : step;
    }

    private Scene whole(int room) {
        return new Scene(view, columns - 2 * MARGIN, room, false, false);
    }

    private List<Line> wide(int room) {
        int half = columns / 2;
        List<Line> step = StepPicture.of(new Scene(view, half - 2 * MARGIN, room, true, false));
        List<Line> tally =
                TallyPicture.of(new Scene(view, columns - half - 2 * MARGIN, room, false, false));
        List<Line> ruled = new ArrayList<>();
        for (int row = 0; row < Math.max(room, tally.size()); row++) {
            ruled.add(
                    Line.of(Tone.QUIET, view.glyphs().upright() + " ")
                            .plus(row < tally.size() ? tally.get(row) : Line.BLANK));
        }
        return Line.beside(step, half - MARGIN, ruled, view.glyphs().cut());
    }

    private Picture scrolled(List<Line> top, List<Line> body, List<Line> bottom) {
        return Picture.scrolled(rows, top, indented(body), bottom, view.selected());
    }

    private static List<Line> indented(List<Line> lines) {
        return lines.stream()
                .map(line -> line.spans().isEmpty() ? line : line.indented(MARGIN))
                .toList();
    }
}
