package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.screen.HomeKeys.HomeKey;

/** The picture beside an editor, and its keys. */
public final class WatchScreen {
    private WatchScreen() {}

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, WatchView view) {
        new Painter(graphics, view.style()).paint(of(view, graphics.getSize()).lines());
    }

    /** How far it scrolls, and how much of it there is room for. */
    public static View.Seen seen(WatchView view, TerminalSize size) {
        return of(view, size).seen();
    }

    /** What a press does; empty when it does nothing. */
    public static Optional<HomeAction> action(KeyStroke pressed) {
        Stroke stroke = Stroke.of(pressed);
        return pressed.isAltDown()
                ? Optional.empty()
                : keys().stream()
                        .filter(key -> key.strokes().contains(stroke))
                        .map(HomeKey::action)
                        .findFirst();
    }

    static List<HomeKey> keys() {
        List<HomeKey> keys = new ArrayList<>(HomeKeys.pages("scroll"));
        keys.add(
                new HomeKey(
                        "q",
                        "leave",
                        HomeAction.LEAVE,
                        List.of(
                                Stroke.of('q'),
                                Stroke.of(KeyType.Escape),
                                Stroke.ctrl('q'),
                                Stroke.ctrl('c'))));
        return List.copyOf(keys);
    }

    private static Picture of(WatchView view, TerminalSize size) {
        if (TooSmall.is(size)) {
            return new Picture(TooSmall.lines(size), TooSmall.SEEN);
        }
        int columns = size.getColumns();
        List<Line> body = body(view, columns - 4).stream().map(line -> line.indented(2)).toList();
        return Picture.scrolled(
                size.getRows(), top(view, columns), body, bottom(view, columns), view.first());
    }

    private static List<Line> top(WatchView view, int columns) {
        Glyphs signs = Glyphs.of(view.style());
        int count = view.problems().size();
        String notice = count == 0 ? "[no problems] " : "[" + Texts.count(count, "problem") + "] ";
        return List.of(
                Header.strip("Watching " + view.name(), notice, columns, signs),
                Line.of(
                        Tone.QUIET,
                        " Drawn anew at each save. Nothing is written or run from here."),
                Line.BLANK);
    }

    private static List<Line> body(WatchView view, int columns) {
        List<Line> lines = new ArrayList<>();
        for (String problem : view.problems()) {
            lines.addAll(Wrap.hanging(Line.of(Tone.WARN, "! "), Tone.STRONG, problem, columns));
        }
        if (view.kept()) {
            lines.add(Line.BLANK);
            lines.addAll(
                    Wrap.lines(Tone.WARN, "Below is the last version without problems:", columns));
        }
        return Scene.stack(
                lines,
                Paragraphs.of(view.lines(), columns),
                Paragraphs.sheet(view.sheet(), columns));
    }

    private static List<Line> bottom(WatchView view, int columns) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, Glyphs.of(view.style()).light().repeat(columns)));
        lines.add(view.doing().isEmpty() ? Line.BLANK : Line.of(Tone.QUIET, " " + view.doing()));
        List<KeyLine.Named> keys =
                keys().stream().map(key -> new KeyLine.Named(key.label(), key.help())).toList();
        KeyLine.lines(keys, columns - 2).forEach(line -> lines.add(line.indented(1)));
        return List.copyOf(lines);
    }
}
