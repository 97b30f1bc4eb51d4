package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;

/** The picture away from a session. */
public final class HomeScreen {
    private HomeScreen() {}

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, HomeView view) {
        new Painter(graphics, view.style()).paint(HomePicture.of(view, graphics.getSize()).lines());
    }

    /** The largest {@code selected} that means anything on the page looked at. */
    public static int limit(HomeView view, TerminalSize size) {
        return HomePicture.of(view, size).limit();
    }
}
