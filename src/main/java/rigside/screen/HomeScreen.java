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

    /** How far the page looked at goes, and how much of it there is room for. */
    public static View.Seen seen(HomeView view, TerminalSize size) {
        return HomePicture.of(view, size).seen();
    }
}
