package rigside.analysis;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import rigside.analysis.TableLine.Cell;

/** Reads the text of a table of values, gathering every problem. */
final class TableReader {

    private static final List<String> COLUMNS = List.of("round", "condition", "value");
    private static final int MOST_ROUND = 1_000_000;
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_NUMBER = 200;

    /** More conditions than anybody compares: their names are not spelt alike. */
    private static final int MOST_CONDITIONS = 50;

    private final boolean ratio;
    private final List<ValueTable.Problem> problems = new ArrayList<>();
    private final List<ValueTable.Row> rows = new ArrayList<>();

    /** Where a round and condition was first met. */
    private final Map<List<Object>, Integer> lines = new HashMap<>();

    private char separator = ',';
    private List<String> header = List.of();

    TableReader(boolean ratio) {
        this.ratio = ratio;
    }

    ValueTable.Read read(String text) {
        String[] all = text.replace("\uFEFF", "").split("\\R", -1);
        for (int at = 0; at < all.length && (header.size() == 3 || problems.isEmpty()); at++) {
            if (!all[at].isBlank()) {
                read(at + 1, all[at]);
            }
        }
        checkWhole();
        return problems.isEmpty()
                ? new ValueTable.Read.Good(new ValueTable(rows))
                : new ValueTable.Read.Bad(problems);
    }

    private void read(int line, String text) {
        if (header.isEmpty()) {
            readHeader(line, text);
            return;
        }
        TableLine cells = TableLine.of(text, separator);
        if (!cells.isClosed()) {
            wrong(line, 1, "a double quote is opened and not closed", "close it");
        } else if (cells.cells().size() != 3) {
            wrong(
                    line,
                    1,
                    cells.cells().size() + " cells, must be 3",
                    separator == ','
                            ? "write decimals with a point, or part the cells by semicolons"
                            : "write round, condition and value");
        } else {
            readRow(line, cells.cells());
        }
    }

    private void readHeader(int line, String text) {
        separator = text.contains(";") ? ';' : text.contains("\t") ? '\t' : ',';
        List<Cell> cells = TableLine.of(text, separator).cells();
        List<String> words =
                cells.stream().map(cell -> cell.text().toLowerCase(Locale.ROOT)).toList();
        if (words.size() == 3 && new HashSet<>(words).equals(Set.copyOf(COLUMNS))) {
            header = words;
        } else {
            boolean more = new HashSet<>(words).containsAll(COLUMNS);
            wrong(
                    line,
                    1,
                    more
                            ? "there are " + words.size() + " columns, must be 3"
                            : "the first line is '"
                                    + Sentences.clean(text)
                                    + "', not the names of columns",
                    more
                            ? "leave only round, condition and value"
                            : "write 'round,condition,value' above the values");
        }
    }

    private void readRow(int line, List<Cell> cells) {
        int before = problems.size();
        int round = round(line, cells.get(header.indexOf("round")));
        String condition = condition(line, cells.get(header.indexOf("condition")));
        BigDecimal value = value(line, cells.get(header.indexOf("value")));
        if (problems.size() > before) {
            return;
        }
        Integer first = lines.putIfAbsent(List.of(round, condition), line);
        if (first != null) {
            wrong(
                    line,
                    1,
                    "round " + round + " has a second value of '" + condition + "'",
                    "the first is on line " + first + "; keep one, or give each its own round");
            return;
        }
        double step = Math.pow(10, -Math.max(value.scale(), 0));
        rows.add(new ValueTable.Row(round, condition, value.doubleValue(), step));
    }

    private int round(int line, Cell cell) {
        if (cell.text().matches("[0-9]{1,7}")) {
            int round = Integer.parseInt(cell.text());
            if (round >= 1 && round <= MOST_ROUND) {
                return round;
            }
        }
        wrong(
                line,
                cell,
                "round '" + cell.shown() + "' is not a whole number from 1",
                "number the rounds 1, 2, 3");
        return 0;
    }

    private String condition(int line, Cell cell) {
        String name = cell.text();
        if (name.isEmpty()) {
            wrong(line, cell, "the condition is missing", "write its name");
        } else if (name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            wrong(
                    line,
                    cell,
                    "condition '" + cell.shown() + "' is not a name",
                    "write a short word");
        }
        return name;
    }

    private BigDecimal value(int line, Cell cell) {
        // A comma that parts no cells can only be a decimal comma.
        String text = cell.text().replace(',', '.');
        BigDecimal value = null;
        try {
            value = new BigDecimal(text.length() <= LONGEST_NUMBER ? text : "");
        } catch (NumberFormatException notANumber) {
            wrong(
                    line,
                    cell,
                    "value '" + cell.shown() + "' is not a number",
                    "write a number such as 12.4; if nothing was measured leave the line out, and say so"
                            + " with the result");
            return BigDecimal.ZERO;
        }
        boolean lost = value.signum() != 0 && value.doubleValue() == 0;
        if (lost || !Scale.holds(value.doubleValue())) {
            String how = Math.abs(value.doubleValue()) > 1 ? "large" : "small";
            wrong(line, cell, "value '" + cell.shown() + "' is too " + how, "check it");
        } else if (ratio && !(value.doubleValue() > 0)) {
            wrong(
                    line,
                    cell,
                    "value '" + cell.shown() + "' has no ratio, it must be above 0",
                    "check it, or compare by difference");
        }
        return value;
    }

    private void checkWhole() {
        if (!problems.isEmpty()) {
            return;
        }
        if (header.isEmpty()) {
            wrong(
                    1,
                    1,
                    "the table is empty",
                    "write 'round,condition,value', then a line for each value");
            return;
        }
        int conditions = new ValueTable(rows).byCondition().size();
        if (conditions < 2) {
            wrong(
                    1,
                    1,
                    "there is nothing to compare with",
                    "write values of two conditions, the reference first");
        } else if (conditions > MOST_CONDITIONS) {
            wrong(
                    1,
                    1,
                    "there are " + conditions + " conditions, must be at most " + MOST_CONDITIONS,
                    "write the name of one condition alike on every line");
        }
    }

    private void wrong(int line, Cell cell, String what, String help) {
        wrong(line, cell.column(), what, help);
    }

    private void wrong(int line, int column, String what, String help) {
        problems.add(new ValueTable.Problem(line, column, what, help));
    }
}
