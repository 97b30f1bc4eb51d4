package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pressure in one window, thinned for drawing: of every column of time the lowest and the
 * highest reading, so that no peak is lost and nothing is averaged.
 *
 * @param window when it was
 * @param readings how many there were before thinning; at least 1
 * @param runs in order of time, apart where the instrument was silent; at least one, none empty
 */
public record PressureTrace(PressureWindow window, int readings, List<List<Point>> runs) {
    /** At least so many columns, and no more than a panel can show. */
    static final int FEWEST = 80;

    static final int MOST = 160;

    /** Between them so many a second: breaths keep their shape. */
    private static final double PER_SECOND = 2;

    /** So many usual intervals without a reading are a silence; the same as when it was judged. */
    private static final double SILENT_INTERVALS = 5;

    public PressureTrace {
        runs = runs.stream().map(List::copyOf).toList();
    }

    /**
     * One reading.
     *
     * @param seconds from the window's zero
     * @param pascals the suction: above 0 while breathing in
     */
    public record Point(double seconds, double pascals) {}

    double lowest() {
        return all().stream().mapToDouble(Point::pascals).min().orElseThrow();
    }

    double highest() {
        return all().stream().mapToDouble(Point::pascals).max().orElseThrow();
    }

    private List<Point> all() {
        return runs.stream().flatMap(List::stream).toList();
    }

    /** A window while its readings come, in order of time. */
    static final class Growing {
        private final PressureWindow window;
        private final Column[] columns;
        private int readings;
        private double first;
        private double last;

        Growing(PressureWindow window) {
            this.window = window;
            double wanted = PER_SECOND * (window.end() - window.begin());
            this.columns = new Column[(int) Math.max(FEWEST, Math.min(MOST, wanted))];
        }

        void add(long moment, double suction) {
            Point point = new Point(window.at(moment), suction);
            double share = (point.seconds() - window.begin()) / (window.end() - window.begin());
            int at =
                    (int)
                            Math.max(
                                    0,
                                    Math.min(
                                            columns.length - 1,
                                            Math.floor(share * columns.length)));
            if (columns[at] == null) {
                columns[at] = new Column(point, point, point, point);
            } else {
                columns[at] = columns[at].with(point);
            }
            first = readings == 0 ? point.seconds() : first;
            last = point.seconds();
            readings++;
        }

        Optional<PressureTrace> trace() {
            if (readings == 0) {
                return Optional.empty();
            }
            double usual = readings > 1 ? (last - first) / (readings - 1) : 0;
            double column = (window.end() - window.begin()) / columns.length;
            double silence = Math.max(SILENT_INTERVALS * usual, column);
            List<List<Point>> runs = new ArrayList<>();
            List<Point> run = new ArrayList<>();
            Column before = null;
            for (Column each : columns) {
                if (each != null) {
                    if (before != null && each.silentSince(before) > silence) {
                        runs.add(run);
                        run = new ArrayList<>();
                    }
                    run.addAll(each.points());
                    before = each;
                }
            }
            runs.add(run);
            return Optional.of(new PressureTrace(window, readings, runs));
        }
    }

    /** What is kept of the readings of one column of time. */
    private record Column(Point first, Point lowest, Point highest, Point last) {
        Column with(Point point) {
            return new Column(
                    first,
                    point.pascals() < lowest.pascals() ? point : lowest,
                    point.pascals() > highest.pascals() ? point : highest,
                    point);
        }

        double silentSince(Column before) {
            return first.seconds() - before.last().seconds();
        }

        List<Point> points() {
            if (lowest.equals(highest)) {
                return List.of(lowest);
            }
            return lowest.seconds() <= highest.seconds()
                    ? List.of(lowest, highest)
                    : List.of(highest, lowest);
        }
    }
}
