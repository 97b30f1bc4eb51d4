package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How the panels of a figure are laid beside one another: on a wide sheet a donning is a row of its
 * own, where that makes good rows.
 *
 * @param columns the most panels of a row
 * @param byDonning whether a donning begins a row
 */
record PressureRows(int columns, boolean byDonning) {
    /** Beside one another on a wide sheet. */
    private static final int MOST = 4;

    static PressureRows of(List<PressureFollowed> all, boolean isWide) {
        if (all.get(0).trials().isEmpty()) {
            return new PressureRows(isWide ? 2 : 1, false);
        }
        int together = together(all);
        boolean byDonning = isWide && together > 1 && together <= MOST;
        return new PressureRows(byDonning ? together : isWide ? MOST : 2, byDonning);
    }

    /** The most panels of one donning. */
    private static int together(List<PressureFollowed> all) {
        Map<Integer, Long> each =
                all.stream()
                        .collect(
                                Collectors.groupingBy(
                                        one -> one.donning().donning(), Collectors.counting()));
        return each.values().stream().mapToInt(Long::intValue).max().orElse(1);
    }

    /** Those of one condition, row by row. */
    List<List<PressureFollowed>> rows(List<PressureFollowed> own) {
        List<List<PressureFollowed>> rows = new ArrayList<>();
        int donning = 0;
        for (PressureFollowed each : own) {
            List<PressureFollowed> row = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
            boolean isFull = row.isEmpty() || row.size() == columns;
            if (isFull || (byDonning && each.donning().donning() != donning)) {
                row = new ArrayList<>();
                rows.add(row);
            }
            donning = each.donning().donning();
            row.add(each);
        }
        return rows;
    }
}
