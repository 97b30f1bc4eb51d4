package rigside.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What stands between the columns of a line. */
enum Separator {
    /** Nothing: the whole line is one column. */
    NONE('\n'),
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t'),
    /** Any number of spaces and tabs. */
    SPACE(' ');

    private final char mark;

    Separator(char mark) {
        this.mark = mark;
    }

    /** Each by the word it is written with; none is not written. */
    static Map<String, Separator> words() {
        Map<String, Separator> words = new LinkedHashMap<>();
        for (Separator each : values()) {
            if (each != NONE) {
                words.put(each.name().toLowerCase(Locale.ROOT), each);
            }
        }
        return words;
    }

    /** The cells of a line, without spaces and double quotes around them; at least one. */
    List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        String rest = this == SPACE ? line.strip().replaceAll("[ \t]+", " ") : line;
        int from = 0;
        for (int at = rest.indexOf(mark); at >= 0; at = rest.indexOf(mark, from)) {
            cells.add(bare(rest.substring(from, at)));
            from = at + 1;
        }
        cells.add(bare(rest.substring(from)));
        return cells;
    }

    private static String bare(String cell) {
        String text = cell.strip();
        boolean quoted = text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).strip() : text;
    }
}
