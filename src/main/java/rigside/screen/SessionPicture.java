package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.List;
import rigside.session.Activity;

/** Puts the parts of a session's picture together for one size. */
record SessionPicture(View view, int columns, int rows) {

    /** From this width on the tally stands beside the step. */
    private static final int WIDE = 120;

    private static final int MARGIN = 2;

    static Picture of(View view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), 0)
                : new SessionPicture(view, size.getColumns(), size.getRows()).picture();
    }

    private Picture picture() {
        List<Line> top = Header.of(view, columns);
        List<Line> bottom = Footer.of(view, columns);
        int room = Picture.room(rows, top, bottom);
        Scene scene = new Scene(view, columns - 2 * MARGIN, room);
        return switch (view.page()) {
            case STEP -> step(top, bottom, room);
            case TALLY -> scrolled(top, TallyPicture.of(scene), bottom);
            case HELP -> scrolled(top, HelpPicture.session(scene), bottom);
            case ENTRIES ->
                    Picture.list(
                            rows, top, indented(EntriesPicture.of(scene)), bottom, view.selected());
        };
    }

    private Picture step(List<Line> top, List<Line> bottom, int room) {
        Activity activity = view.state().activity();
        if (StepKeys.scrolls(activity)) {
            Scene scene = new Scene(view, columns - 2 * MARGIN, room);
            return scrolled(top, columns < WIDE ? StepPicture.of(scene) : wide(room), bottom);
        }
        return Picture.fixed(rows, top, indented(body(activity, room)), bottom, view.glyphs());
    }

    private List<Line> body(Activity activity, int room) {
        if (columns < WIDE) {
            Scene scene = new Scene(view, columns - 2 * MARGIN, room);
            List<Line> step = StepPicture.of(scene);
            return activity instanceof Activity.NextDonning
                    ? Scene.stack(step, Verdicts.brief(scene))
                    : step;
        }
        return wide(room);
    }

    private List<Line> wide(int room) {
        int half = columns / 2;
        List<Line> step = StepPicture.of(new Scene(view, half - 2 * MARGIN, room));
        List<Line> tally = TallyPicture.of(new Scene(view, columns - half - MARGIN - 1, room));
        return Line.beside(step, half - 1, tally, view.glyphs().cut());
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
