package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TerminalTextUtils;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.graphics.TextGraphics;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;

/** What a virtual terminal shows, as text. */
public final class Drawn {
    private Drawn() {}

    public static String of(View view, int columns, int rows) {
        return of(columns, rows, graphics -> SessionScreen.draw(graphics, view));
    }

    public static String of(HomeView view, int columns, int rows) {
        return of(columns, rows, graphics -> HomeScreen.draw(graphics, view));
    }

    public static String of(WatchView view, int columns, int rows) {
        return of(columns, rows, graphics -> WatchScreen.draw(graphics, view));
    }

    public static String of(DraftView view, int columns, int rows) {
        return of(columns, rows, graphics -> DraftScreen.draw(graphics, view));
    }

    /** One view drawn over another, row by row where they differ. */
    static String over(View before, View after, int columns, int rows) {
        TerminalSize size = new TerminalSize(columns, rows);
        Drawing there = SessionScreen.of(before, size);
        return of(
                columns,
                rows,
                graphics -> {
                    there.on(graphics);
                    SessionScreen.of(after, size).over(there, graphics);
                });
    }

    private static String of(int columns, int rows, Consumer<TextGraphics> draw) {
        DefaultVirtualTerminal terminal =
                new DefaultVirtualTerminal(new TerminalSize(columns, rows));
        try (Screen screen = new TerminalScreen(terminal)) {
            screen.startScreen();
            draw.accept(screen.newTextGraphics());
            screen.refresh(Screen.RefreshType.DELTA);
            return text(terminal, columns, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Wide characters are there twice when read cell by cell; the second is passed over. */
    private static String text(DefaultVirtualTerminal terminal, int columns, int rows) {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < rows; row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                TextCharacter cell = terminal.getCharacter(column, row);
                line.append(cell.getCharacterString());
                if (TerminalTextUtils.isCharDoubleWidth(cell.getCharacterString().charAt(0))) {
                    column++;
                }
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
