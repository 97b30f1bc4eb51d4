package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.List;

/** Puts the parts of a session's picture together for one size. */
record SessionPicture(View view, int columns, int rows) {

    static Picture of(View view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), 0)
                : new SessionPicture(view, size.getColumns(), size.getRows()).picture();
    }

    private Picture picture() {
        List<Line> top = Header.of(view, columns);
        List<Line> bottom = Footer.of(view, columns);
        return Picture.fixed(rows, top, List.of(), bottom, view.glyphs());
    }
}
