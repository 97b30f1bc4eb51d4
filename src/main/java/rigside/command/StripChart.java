package rigside.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rigside.archive.Following;
import rigside.decide.Chart;
import rigside.decide.Limits;

/**
 * A control chart in plain ASCII, a line a session: the day, how many donnings, their mean and
 * spread, and the mean's place between the limits.
 */
final class StripChart {
    /** With what stands before it, 80 columns. */
    private static final int WIDTH = 38;

    /** More lines than this nobody reads; earlier ones are counted. */
    private static final int MOST = 60;

    private final Following following;
    private final double low;
    private final double high;

    private StripChart(Following following) {
        this.following = following;
        DoubleStream limits =
                following.chart().stream()
                        .map(Chart::limits)
                        .flatMapToDouble(each -> DoubleStream.of(each.low(), each.high()));
        double[] all =
                DoubleStream.concat(
                                limits,
                                following.points().stream().mapToDouble(Following.Point::mean))
                        .toArray();
        low = Arrays.stream(all).min().orElseThrow();
        high = Arrays.stream(all).max().orElseThrow();
    }

    static List<String> of(Following following) {
        return new StripChart(following).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<Following.Point> points = following.points();
        int from = Math.max(0, points.size() - MOST);
        lines.add(
                String.format(Locale.ROOT, "%-10s %4s %12s %8s", "day", "n", "mean", "spread")
                        + "  "
                        + ends());
        if (from > 0) {
            lines.add("(" + from + " earlier sessions are not drawn)");
        }
        for (int at = from; at < points.size(); at++) {
            lines.add(line(points.get(at)));
        }
        if (following.chart().isPresent()) {
            lines.add("");
            lines.add("* mean of a session, X the same beyond the limits");
            lines.add(": mean over sessions, | control limits");
        }
        return lines;
    }

    /** What the ends of the strip stand for. */
    private String ends() {
        String left = following.scale().value(low);
        String right = following.scale().value(high);
        return left + " ".repeat(Math.max(1, WIDTH - left.length() - right.length())) + right;
    }

    private String line(Following.Point point) {
        return String.format(
                        Locale.ROOT,
                        "%-10s %4d %12s %8s",
                        point.day(),
                        point.n(),
                        (point.bounded() ? ">=" : "") + following.scale().value(point.mean()),
                        AcrossBlocks.spread(following.scale(), point))
                + "  "
                + strip(point);
    }

    private String strip(Following.Point point) {
        char[] cells = new char[WIDTH];
        Arrays.fill(cells, ' ');
        Optional<Limits> limits = following.chart().map(Chart::limits);
        following.chart().ifPresent(chart -> cells[cell(chart.mean())] = ':');
        limits.ifPresent(
                each -> {
                    cells[cell(each.low())] = '|';
                    cells[cell(each.high())] = '|';
                });
        boolean beyond =
                limits.filter(each -> point.mean() < each.low() || point.mean() > each.high())
                        .isPresent();
        cells[cell(point.mean())] = beyond ? 'X' : '*';
        return new String(cells).stripTrailing();
    }

    private int cell(double value) {
        double share = high > low ? (value - low) / (high - low) : 0.5;
        return (int) Math.max(0, Math.min(WIDTH - 1, Math.round(share * (WIDTH - 1))));
    }
}
