package rigside.screen;

import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.List;

/**
 * A picture ready to be drawn. Equal drawings look the same: what is drawn already need not be
 * drawn again, and most of twenty pictures a second are.
 */
public final class Drawing {
    private final List<Line> lines;
    private final View.Style style;

    Drawing(List<Line> lines, View.Style style) {
        this.lines = List.copyOf(lines);
        this.style = style;
    }

    /** Draws it. */
    public void on(TextGraphics graphics) {
        new Painter(graphics, style).paint(lines);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Drawing that
                && lines.equals(that.lines)
                && style.equals(that.style);
    }

    @Override
    public int hashCode() {
        return lines.hashCode();
    }
}
