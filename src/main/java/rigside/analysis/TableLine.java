package rigside.analysis;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a table, cut into cells.
 *
 * @param cells in order, without the spaces around them and without quotes
 * @param isClosed whether every double quote was closed
 */
record TableLine(List<Cell> cells, boolean isClosed) {

    TableLine {
        cells = List.copyOf(cells);
    }

    /**
     * @param column where it begins, from 1
     */
    record Cell(int column, String text) {
        /** The text as a message can quote it. */
        String shown() {
            return Sentences.clean(text);
        }
    }

    static TableLine of(String line, char separator) {
        List<Cell> cells = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        int column = 1;
        boolean quoted = false;
        for (int at = 0; at < line.length(); at++) {
            char c = line.charAt(at);
            boolean doubled =
                    quoted && c == '"' && at + 1 < line.length() && line.charAt(at + 1) == '"';
            if (doubled) {
                text.append('"');
                at++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(new Cell(column, text.toString().strip()));
                text.setLength(0);
                column = at + 2;
            } else {
                text.append(c);
            }
        }
        cells.add(new Cell(column, text.toString().strip()));
        return new TableLine(cells, !quoted);
    }
}
