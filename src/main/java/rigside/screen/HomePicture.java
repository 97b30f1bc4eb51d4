package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;

/** Puts the parts of the picture away from a session together for one size. */
record HomePicture(HomeView view, int columns, int rows) {

    static Picture of(HomeView view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), 0)
                : new HomePicture(view, size.getColumns(), size.getRows()).picture();
    }

    private Picture picture() {
        return Picture.fixed(rows, top(), List.of(), bottom(), Glyphs.of(view.style()));
    }

    private List<Line> top() {
        String notice = Header.notice(view.rig().simulated(), view.rig().speed());
        return List.of(
                Header.strip("Rigside", notice, columns, Glyphs.of(view.style())), Line.BLANK);
    }

    private List<Line> bottom() {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, Glyphs.of(view.style()).light().repeat(columns)));
        lines.add(
                view.message()
                        .map(message -> Line.of(Tone.WARN, " > ").plus(Tone.STRONG, message))
                        .orElse(Line.BLANK));
        List<KeyLine.Named> keys =
                HomeKeys.of(view).stream()
                        .map(key -> new KeyLine.Named(key.label(), key.help()))
                        .toList();
        KeyLine.lines(keys, columns - 2).forEach(line -> lines.add(line.indented(1)));
        return List.copyOf(lines);
    }
}
