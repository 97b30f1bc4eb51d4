package rigside.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.List;

/** Puts lines on a terminal's picture: the one place that knows colours and Lanterna's text. */
record Painter(TextGraphics graphics, View.Style style) {

    /** Numbers of the 256 colours: #767676, #008700, #d70000. */
    private static final int GREY = 243;

    private static final int GREEN = 28;

    private static final int RED = 160;

    /** Puts these lines on a blank picture. */
    void paint(List<Line> lines) {
        int rows = graphics.getSize().getRows();
        for (int row = 0; row < Math.min(rows, lines.size()); row++) {
            put(row, lines.get(row));
        }
        tone(Tone.PLAIN);
    }

    /** Puts a line in the place of the one that is there; below the last row nothing. */
    void paint(int row, Line line) {
        if (row < graphics.getSize().getRows()) {
            tone(Tone.PLAIN);
            graphics.putString(0, row, " ".repeat(graphics.getSize().getColumns()));
            put(row, line);
            tone(Tone.PLAIN);
        }
    }

    private void put(int row, Line line) {
        int columns = graphics.getSize().getColumns();
        int column = 0;
        for (Line.Span span : line.cut(columns, Glyphs.of(style).cut()).spans()) {
            String text = style.unicode() ? span.text() : Clean.ascii(span.text());
            tone(span.tone());
            graphics.putString(column, row, text);
            column += Clean.width(text);
        }
    }

    private void tone(Tone tone) {
        graphics.clearModifiers();
        graphics.setForegroundColor(colour(tone, style.colours()));
        graphics.setBackgroundColor(TextColor.ANSI.DEFAULT);
        switch (tone) {
            case STRONG, GOOD, WARN, BIG -> graphics.enableModifiers(SGR.BOLD);
            case INVERSE -> graphics.enableModifiers(SGR.REVERSE);
            case PLAIN, QUIET -> {}
        }
    }

    /**
     * Only colours that can be read on a black and on a white ground: of the eight, whose shades
     * differ from terminal to terminal, red alone; of the 256 a grey, a green and a red that stand
     * out from black as much as from white.
     */
    static TextColor colour(Tone tone, View.Colours colours) {
        return switch (colours) {
            case NONE -> TextColor.ANSI.DEFAULT;
            case FEW -> tone == Tone.WARN ? TextColor.ANSI.RED : TextColor.ANSI.DEFAULT;
            case MANY ->
                    switch (tone) {
                        case PLAIN, STRONG, INVERSE, BIG -> TextColor.ANSI.DEFAULT;
                        case QUIET -> new TextColor.Indexed(GREY);
                        case GOOD -> new TextColor.Indexed(GREEN);
                        case WARN -> new TextColor.Indexed(RED);
                    };
        };
    }
}
