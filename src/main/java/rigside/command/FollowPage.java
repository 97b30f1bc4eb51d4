package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.archive.Following;
import rigside.archive.FollowingWords;
import rigside.archive.Scaled;
import rigside.decide.Chart;
import rigside.decide.Limits;
import rigside.report.Block;
import rigside.report.Cell;
import rigside.report.ControlPlot;
import rigside.report.Figure;
import rigside.report.Page;

/** One condition over time, to read. */
final class FollowPage {
    private FollowPage() {}

    /**
     * As a page of text, with a chart of letters, or to be written as HTML, with a figure.
     *
     * @param drawn whether with the figure
     */
    static Page of(Following following, Optional<String> leftOut, boolean drawn) {
        List<Block> blocks = new ArrayList<>();
        following.remarks().forEach(each -> blocks.add(new Block.Words(each)));
        leftOut.ifPresent(each -> blocks.add(new Block.Words(each)));
        if (drawn) {
            plot(following).ifPresent(each -> blocks.add(new Block.Drawn(each)));
        } else {
            blocks.add(new Block.Verbatim(String.join("\n", StripChart.of(following))));
        }
        FollowingWords.of(following).forEach(each -> blocks.add(new Block.Words(each)));
        if (drawn) {
            // Hundreds of rows, it may be: what they say comes first.
            blocks.add(table(following));
        }
        blocks.add(AcrossBlocks.NOT_CERTIFIED);
        return new Page(
                following.measure().title() + ", " + following.condition() + ", over time",
                following.points().size() == 1
                        ? "1 session"
                        : following.points().size() + " sessions",
                blocks);
    }

    private static Block table(Following following) {
        return new Block.Table(
                "",
                List.of(
                        new Block.Head("session", false),
                        new Block.Head("piece", false),
                        new Block.Head("worn before", true),
                        new Block.Head("donnings", true),
                        new Block.Head("mean", true),
                        new Block.Head("spread", true)),
                following.points().stream().map(each -> row(following.scale(), each)).toList());
    }

    private static List<Cell> row(Scaled scale, Following.Point point) {
        return Cell.texts(
                List.of(
                        AcrossBlocks.name(point.session()),
                        point.piece(),
                        String.valueOf(Math.round(point.wornBefore())),
                        String.valueOf(point.n()),
                        (point.bounded() ? "at least " : "") + scale.value(point.mean()),
                        AcrossBlocks.spread(scale, point)));
    }

    /** None where there is no chart, or its limits are one. */
    static Optional<Figure> plot(Following following) {
        return following
                .chart()
                .filter(chart -> chart.spread() > 0)
                .map(chart -> ControlPlot.of(content(following, chart)));
    }

    private static ControlPlot.Content content(Following following, Chart chart) {
        Scaled scale = following.scale();
        List<ControlPlot.Value> values = new ArrayList<>();
        for (int at = 0; at < following.points().size(); at++) {
            Following.Point point = following.points().get(at);
            values.add(
                    new ControlPlot.Value(
                            AcrossBlocks.name(point.session()),
                            scale.outward(point.mean()),
                            point.bounded(),
                            chart.beyond().contains(at)));
        }
        return new ControlPlot.Content(
                following.measure().title(),
                following.condition(),
                scale.unit(),
                scale.ratio(),
                values,
                scale.outward(chart.mean()),
                new Limits(
                        scale.outward(chart.limits().low()), scale.outward(chart.limits().high())),
                values.size() < 3
                        ? Optional.empty()
                        : chart.expected(values.size(), Following.CONFIDENCE).map(scale::outward));
    }
}
