package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;

/** The picture of a session. */
public final class SessionScreen {
    private SessionScreen() {}

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, View view) {
        of(view, graphics.getSize()).on(graphics);
    }

    /** The whole picture for a window of this size. */
    public static Drawing of(View view, TerminalSize size) {
        return new Drawing(
                SessionPicture.of(view.with(seen(view, size)), size).lines(), view.style());
    }

    /**
     * How far the page looked at goes: to the last line of a list, or until the end of a text is
     * seen; and how much of it there is room for. What does not fit without the keys that scroll is
     * measured beside the longest bottom lines, so that an end once seen stays seen.
     */
    public static View.Seen seen(View view, TerminalSize size) {
        if (TooSmall.is(size)) {
            return TooSmall.SEEN;
        }
        boolean fixed = view.page() == View.Page.STEP && !StepKeys.scrolls(view.state().activity());
        View.Seen whole =
                fixed ? View.Seen.ALL : SessionPicture.of(view.with(View.Seen.ALL), size).seen();
        return whole.limit() == 0
                ? whole
                : SessionPicture.of(view.with(View.Seen.SCROLLED), size).seen();
    }
}
