package rigside.screen;

import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.ArrayList;
import java.util.List;

/** The picture of a self-test. */
public final class SelfTestScreen {
    private SelfTestScreen() {}

    /** Longer lines are hard to find back in. */
    private static final int READABLE = 100;

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, SelfTestView view) {
        int columns = graphics.getSize().getColumns();
        int rows = graphics.getSize().getRows();
        new Painter(graphics, view.style()).paint(lines(view, columns, rows));
    }

    private static List<Line> lines(SelfTestView view, int columns, int rows) {
        Glyphs signs = Glyphs.of(view.style());
        List<Line> top =
                List.of(
                        Header.strip("Self-test", "", columns, signs),
                        Line.of(Tone.STRONG, " " + view.title()),
                        Line.of(Tone.QUIET, signs.light().repeat(columns)),
                        Line.BLANK);
        List<Line> bottom =
                new ArrayList<>(List.of(Line.of(Tone.QUIET, signs.light().repeat(columns))));
        bottom.add(
                view.message()
                        .map(words -> Line.of(Tone.WARN, " > ").plus(Tone.STRONG, words))
                        .orElse(Line.BLANK));
        KeyLine.lines(
                        view.keys().stream()
                                .map(key -> new KeyLine.Named(key.stroke().label(), key.help()))
                                .toList(),
                        columns - 2)
                .forEach(line -> bottom.add(line.indented(1)));
        List<Line> text =
                view.lines().stream().flatMap(line -> wrapped(line, columns - 4).stream()).toList();
        int room = Picture.room(rows, top, bottom) - text.size();
        List<Line> big =
                view.big()
                        .map(words -> Big.of(words, Big.largest(room), columns - 4, signs))
                        .orElse(List.of());
        List<Line> body = Scene.stack(big, text).stream().map(line -> line.indented(2)).toList();
        return Picture.fixed(rows, top, body, bottom, signs).lines();
    }

    private static List<Line> wrapped(String line, int columns) {
        return line.isBlank()
                ? List.of(Line.BLANK)
                : Wrap.lines(Tone.PLAIN, line, Math.min(READABLE, columns));
    }
}
