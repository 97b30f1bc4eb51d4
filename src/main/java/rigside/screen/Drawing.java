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

    /** Draws it on a blank picture. */
    public void on(TextGraphics graphics) {
        new Painter(graphics, style).paint(lines);
    }

    /** Draws what is not the same as in the drawing that is there. */
    public void over(Drawing there, TextGraphics graphics) {
        Painter painter = new Painter(graphics, style);
        boolean all = !style.equals(there.style);
        for (int row = 0; row < Math.max(lines.size(), there.lines.size()); row++) {
            if (all || !line(row).equals(there.line(row))) {
                painter.paint(row, line(row));
            }
        }
    }

    private Line line(int row) {
        return row < lines.size() ? lines.get(row) : Line.BLANK;
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
