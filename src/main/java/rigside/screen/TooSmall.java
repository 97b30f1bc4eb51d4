package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;

/** What is shown instead of a picture that has no room. */
final class TooSmall {
    private TooSmall() {}

    /** The smallest terminal every picture fits into. */
    static final TerminalSize SMALLEST = new TerminalSize(60, 18);

    /** Nothing is seen, and so nothing has been read. */
    static final View.Seen SEEN = new View.Seen(0, 0, false);

    static boolean is(TerminalSize size) {
        return size.getColumns() < SMALLEST.getColumns() || size.getRows() < SMALLEST.getRows();
    }

    /** What can be done without seeing anything: stop, end the pull that is timed, leave. */
    static List<Key> keys(View view) {
        List<Key> keys = new ArrayList<>();
        if (view.page() != View.Page.UNKEPT) {
            keys.addAll(PageKeys.stop(view));
            if (StepKeys.isTimed(view.state().activity())) {
                keys.add(Key.of(view.style().trigger(), "", Action.TRIGGER));
            }
        }
        boolean timed =
                view.page() != View.Page.UNKEPT && StepKeys.isTimed(view.state().activity());
        keys.add(new Lettered(false).leave(!timed));
        return List.copyOf(keys);
    }

    /** What a session's window says. */
    static List<Line> ofSession(View view, TerminalSize size) {
        boolean timed = StepKeys.isTimed(view.state().activity());
        String works =
                view.rehearsed()
                        ? "A rehearsal, every value invented: [q][Esc] stop it."
                        : works(view, timed);
        List<Line> lines = new ArrayList<>(lines(size));
        lines.addAll(Wrap.lines(works, size.getColumns()));
        return List.copyOf(lines);
    }

    private static String works(View view, boolean timed) {
        return "[Esc] stops, "
                + (timed ? "[" + view.style().trigger().label() + "] times the pull, " : "")
                + (timed ? "[Ctrl-Q]" : "[q]")
                + " leaves; nothing else works until there is room.";
    }

    static List<Line> lines(TerminalSize size) {
        String words =
                "This terminal has "
                        + words(size)
                        + ". Rigside needs "
                        + words(SMALLEST)
                        + ": make the window larger or the letters smaller."
                        + " Nothing is lost meanwhile.";
        List<Line> lines = new ArrayList<>();
        lines.addAll(Wrap.lines(Tone.STRONG, "Too small to show", size.getColumns()));
        lines.addAll(Wrap.lines(words, size.getColumns()));
        return List.copyOf(lines);
    }

    private static String words(TerminalSize size) {
        return size.getColumns() + " columns and " + size.getRows() + " rows";
    }
}
