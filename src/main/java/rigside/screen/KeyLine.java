package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/** The bottom lines: every live key and what it does. */
final class KeyLine {
    private KeyLine() {}

    private static final String GAP = "  ";

    /**
     * A key as the bottom line needs it.
     *
     * @param label the key's name
     * @param help what it does; empty when the next key says it for both
     */
    record Named(String label, String help) {}

    /** The keys in as many lines as they need; a key is never parted from its words. */
    static List<Line> lines(List<Named> keys, int columns) {
        List<Line> lines = new ArrayList<>();
        Line line = Line.BLANK;
        for (Line piece : pieces(keys)) {
            int with = line.width() + GAP.length() + piece.width();
            if (!line.spans().isEmpty() && with > columns) {
                lines.add(line);
                line = Line.BLANK;
            }
            line = line.spans().isEmpty() ? piece : line.plus(GAP).plus(piece);
        }
        lines.add(line);
        return List.copyOf(lines);
    }

    private static List<Line> pieces(List<Named> keys) {
        List<Line> pieces = new ArrayList<>();
        Line labels = Line.BLANK;
        for (Named key : keys) {
            labels = labels.plus(Tone.STRONG, "[" + key.label() + "]");
            if (!key.help().isEmpty()) {
                pieces.add(labels.plus(" " + key.help()));
                labels = Line.BLANK;
            }
        }
        return pieces;
    }
}
