package rigside.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.List;

/** Puts lines on a terminal's picture: the one place that knows colours and Lanterna's text. */
record Painter(TextGraphics graphics, View.Style style) {

    /** Fills the whole picture with these lines; rows without one are blank. */
    void paint(List<Line> lines) {
        int columns = graphics.getSize().getColumns();
        int rows = graphics.getSize().getRows();
        tone(Tone.PLAIN);
        graphics.fill(' ');
        for (int row = 0; row < Math.min(rows, lines.size()); row++) {
            int column = 0;
            for (Line.Span span : lines.get(row).cut(columns, Glyphs.of(style).cut()).spans()) {
                String text = style.unicode() ? span.text() : Clean.ascii(span.text());
                tone(span.tone());
                graphics.putString(column, row, text);
                column += Clean.width(text);
            }
        }
        tone(Tone.PLAIN);
    }

    private void tone(Tone tone) {
        graphics.clearModifiers();
        graphics.setForegroundColor(colour(tone));
        graphics.setBackgroundColor(TextColor.ANSI.DEFAULT);
        switch (tone) {
            case STRONG, GOOD, WARN, BIG -> graphics.enableModifiers(SGR.BOLD);
            case INVERSE -> graphics.enableModifiers(SGR.REVERSE);
            case PLAIN, QUIET -> {}
        }
    }

    /** Only colours that can be read on a dark and on a light ground. */
    private TextColor colour(Tone tone) {
        if (!style.colour()) {
            return TextColor.ANSI.DEFAULT;
        }
        return switch (tone) {
            case PLAIN, STRONG, INVERSE, BIG -> TextColor.ANSI.DEFAULT;
            case QUIET -> TextColor.ANSI.CYAN;
            case GOOD -> TextColor.ANSI.GREEN;
            case WARN -> TextColor.ANSI.RED;
        };
    }
}
