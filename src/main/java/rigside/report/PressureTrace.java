package rigside.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
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

    /** So many usual intervals without a reading are a silence, as when a pull is judged. */
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

    List<Point> all() {
        return runs.stream().flatMap(List::stream).toList();
    }

    /** A window while its readings come, mostly in order of time. */
    static final class Growing {
        private final PressureWindow window;
        private final Column[] columns;
        private int readings;

        Growing(PressureWindow window) {
            this.window = window;
            double wanted = PER_SECOND * (window.end() - window.begin());
            this.columns = new Column[(int) Math.max(FEWEST, Math.min(MOST, wanted))];
        }

        void add(long moment, double suction) {
            Point point = new Point(window.at(moment), suction);
            double share = (point.seconds() - window.begin()) / (window.end() - window.begin());
            double column = Math.min(columns.length - 1, Math.floor(share * columns.length));
            int at = (int) Math.max(0, column);
            columns[at] =
                    columns[at] == null
                            ? new Column(point, point, point, point)
                            : columns[at].with(point);
            readings++;
        }

        /** Begins again: what came so far was of a time that is over. */
        void clear() {
            Arrays.fill(columns, null);
            readings = 0;
        }

        Optional<PressureTrace> trace() {
            List<Column> read = Arrays.stream(columns).filter(Objects::nonNull).toList();
            if (read.isEmpty()) {
                return Optional.empty();
            }
            double silence = silence(read);
            List<List<Point>> runs = new ArrayList<>();
            int from = 0;
            for (int at = 1; at <= read.size(); at++) {
                if (at == read.size() || read.get(at).after(read.get(at - 1)) > silence) {
                    runs.add(run(read.subList(from, at)));
                    from = at;
                }
            }
            return Optional.of(new PressureTrace(window, readings, runs));
        }

        /**
         * Longer without a reading is a silence: so many usual intervals, but never less than a
         * column. The longest interval does not say what is usual, or the few readings around a
         * long silence would hide it.
         */
        private double silence(List<Column> read) {
            double whole =
                    read.get(read.size() - 1).last().seconds() - read.get(0).first().seconds();
            double longest = 0;
            for (int at = 1; at < read.size(); at++) {
                longest = Math.max(longest, read.get(at).after(read.get(at - 1)));
            }
            double usual = readings > 2 ? (whole - longest) / (readings - 2) : 0;
            double column = (window.end() - window.begin()) / columns.length;
            return Math.max(SILENT_INTERVALS * usual, column);
        }

        /** It begins and ends where the readings do. */
        private static List<Point> run(List<Column> columns) {
            List<Point> run = new ArrayList<>();
            append(run, columns.get(0).first());
            columns.forEach(each -> each.extremes().forEach(point -> append(run, point)));
            append(run, columns.get(columns.size() - 1).last());
            return run;
        }

        private static void append(List<Point> run, Point point) {
            if (run.isEmpty() || !run.get(run.size() - 1).equals(point)) {
                run.add(point);
            }
        }
    }

    /** What is kept of the readings of one column of time. */
    private record Column(Point first, Point lowest, Point highest, Point last) {
        Column with(Point point) {
            return new Column(
                    point.seconds() < first.seconds() ? point : first,
                    point.pascals() < lowest.pascals() ? point : lowest,
                    point.pascals() > highest.pascals() ? point : highest,
                    point.seconds() < last.seconds() ? last : point);
        }

        /** The seconds from the last reading of the column before to its own first. */
        double after(Column before) {
            return first.seconds() - before.last().seconds();
        }

        List<Point> extremes() {
            return lowest.seconds() <= highest.seconds()
                    ? List.of(lowest, highest)
                    : List.of(highest, lowest);
        }
    }
}
