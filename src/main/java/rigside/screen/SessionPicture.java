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
                ? new Picture(TooSmall.ofSession(view, size), TooSmall.SEEN)
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
            case ENTRIES -> entries(top, bottom, whole(room));
        };
    }

    /** The list gives way to the whole words of its chosen line. */
    private Picture entries(List<Line> top, List<Line> bottom, Scene scene) {
        List<Line> below = Line.stacked(indented(EntriesPicture.chosen(scene)), bottom);
        return Picture.list(rows, top, indented(EntriesPicture.of(scene)), below, view.selected());
    }

    private Picture step(List<Line> top, List<Line> bottom, int room) {
        boolean scrolls = StepKeys.scrolls(view.state().activity());
        List<Line> body = isTallyBeside() ? wide(room, scrolls) : fitted(whole(room), scrolls);
        return scrolls
                ? scrolled(top, body, bottom)
                : Picture.fixed(rows, top, indented(body), bottom, view.glyphs());
    }

    /** Between donnings there is time to read it; with a mask on, all room is for what to do. */
    private boolean isTallyBeside() {
        Activity activity = view.state().activity();
        boolean between = activity instanceof Activity.NextDonning || StepKeys.isVerdict(activity);
        return columns >= WIDE && between && !view.state().course().donnings().isEmpty();
    }

    /**
     * What is asked goes before how large it is: big text is as large as leaves room for
     * everything; where plain letters are too many still, blank lines go.
     */
    private static List<Line> fitted(Scene scene, boolean scrolls) {
        for (int size = Big.largest(scene.rows()); size > 0; size--) {
            List<Line> lines = narrow(scene.sized(size));
            if (lines.size() <= scene.rows()) {
                return Beyond.below(scene, lines);
            }
        }
        List<Line> plain = narrow(scene.sized(0));
        return scrolls || plain.size() <= scene.rows()
                ? plain
                : plain.stream().filter(line -> line.width() > 0).toList();
    }

    private static List<Line> narrow(Scene scene) {
        List<Line> step = StepPicture.of(scene);
        boolean brief =
                scene.state().activity() instanceof Activity.NextDonning && !scene.tallyBeside();
        List<Line> more = brief ? VerdictList.brief(scene) : FitSoFar.of(scene);
        List<Line> both = Scene.stack(step, more);
        boolean needed = brief || scene.size() > Big.USUAL;
        return needed || both.size() <= scene.rows() ? both : step;
    }

    private Scene whole(int room) {
        return new Scene(view, columns - 2 * MARGIN, room, false, Big.USUAL);
    }

    private List<Line> wide(int room, boolean scrolls) {
        int half = columns / 2;
        List<Line> step =
                fitted(new Scene(view, half - 2 * MARGIN, room, true, Big.USUAL), scrolls);
        List<Line> whole =
                TallyPicture.of(
                        new Scene(view, columns - half - 2 * MARGIN, room, false, Big.USUAL));
        List<Line> tally = scrolls ? whole : Scene.cut(whole, room, "[t]");
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
