package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;

/** The picture of a session. */
public final class SessionScreen {
    private SessionScreen() {}

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, View view) {
        new Painter(graphics, view.style())
                .paint(SessionPicture.of(view, graphics.getSize()).lines());
    }

    /**
     * The largest {@code selected} that means anything on the page looked at: the last line of a
     * list, or how far a text scrolls until its end is seen. 0 when there is nothing to move to.
     */
    public static int limit(View view, TerminalSize size) {
        return SessionPicture.of(view, size).limit();
    }
}
