package rigside.analysis;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Values by round and condition, as a table holds them.
 *
 * @param rows each round and condition at most once
 */
public record ValueTable(List<Row> rows) {

    public ValueTable {
        rows = List.copyOf(rows);
    }

    /**
     * One value.
     *
     * @param round from 1
     * @param condition the condition's name
     * @param value the number, on the scale people read
     * @param step the last digit it was written to: 0.1 for 12.4
     */
    public record Row(int round, String condition, double value, double step) {
        /** Whether it ends with a zero behind the point that a shorter number would do without. */
        boolean isPadded() {
            int needed = BigDecimal.valueOf(value).stripTrailingZeros().scale();
            return step < 1 && Math.max(0, needed) < Math.round(-Math.log10(step));
        }
    }

    /**
     * One thing wrong in the text of a table.
     *
     * @param line from 1
     * @param column from 1
     * @param what what is wrong
     * @param help what to do
     */
    public record Problem(int line, int column, String what, String help) {}

    /** What reading a table gives: the table, or everything that is wrong with it. */
    public sealed interface Read {
        /** A table without problems. */
        record Good(ValueTable table) implements Read {}

        /**
         * A table that cannot be used.
         *
         * @param problems at least one, in the order of the text
         */
        record Bad(List<Problem> problems) implements Read {
            public Bad {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * Reads {@code round,condition,value}: a header line with these three words in any order, then
     * one line a value. Cells are parted by commas, semicolons or tabs; a cell may stand in double
     * quotes. A comma that parts no cells is a decimal comma. Empty lines are skipped.
     *
     * @param text the whole text
     * @param ratio whether the values will be compared as ratios, so that each must be above 0
     */
    public static Read read(String text, boolean ratio) {
        return new TableReader(ratio).read(text);
    }

    /** The names of its conditions in the order they are met, the first being the reference. */
    public List<String> conditions() {
        return List.copyOf(byCondition().keySet());
    }

    /** The same table with another reference; as it is if there is no such condition. */
    public ValueTable against(String reference) {
        return new ValueTable(
                rows.stream()
                        .sorted(Comparator.comparing(row -> !row.condition().equals(reference)))
                        .toList());
    }

    /**
     * The values of each condition by rising round; the conditions in the order they are met, the
     * first being the reference.
     */
    Map<String, SortedMap<Integer, Double>> byCondition() {
        Map<String, SortedMap<Integer, Double>> grouped = new LinkedHashMap<>();
        for (Row row : rows) {
            grouped.computeIfAbsent(row.condition(), first -> new TreeMap<>())
                    .put(row.round(), row.value());
        }
        return grouped;
    }

    /**
     * The step the values are read to; 0 without a value. Where a condition's values are written
     * with zeros at their ends, digits mean what they say: the last one that half of them have, so
     * that one odd value does not speak for the rest. Of the others zeros may have been left off,
     * as spreadsheets do, and only the finest value of them all shows the step. The coarsest of
     * these counts.
     */
    public double resolution() {
        Map<String, List<Row>> grouped = new LinkedHashMap<>();
        rows.forEach(
                row ->
                        grouped.computeIfAbsent(row.condition(), first -> new ArrayList<>())
                                .add(row));
        double finest = Double.POSITIVE_INFINITY;
        double coarsest = 0;
        for (List<Row> each : grouped.values()) {
            double[] steps = each.stream().mapToDouble(Row::step).sorted().toArray();
            if (each.stream().anyMatch(Row::isPadded)) {
                coarsest = Math.max(coarsest, steps[(steps.length - 1) / 2]);
            } else {
                finest = Math.min(finest, steps[0]);
            }
        }
        return Double.isFinite(finest) ? Math.max(coarsest, finest) : coarsest;
    }
}
