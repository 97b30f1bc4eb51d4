package rigside.command;

import java.util.Optional;
import rigside.archive.Following;
import rigside.archive.FollowingWords;
import rigside.archive.Scaled;
import rigside.decide.Chart;
import rigside.decide.Interval;
import rigside.decide.RandomLine;

/**
 * One condition over time as JSON. Means and limits are as people read them; spreads and slopes on
 * the scale of the analysis, of natural logarithms for ratios. Places in the list of sessions count
 * from 0.
 */
final class FollowJson {
    private FollowJson() {}

    static String of(Following following, Optional<String> leftOut) {
        Scaled scale = following.scale();
        return new JsonText()
                        .text("measure", following.measure().id())
                        .text("unit", following.measure().unit())
                        .text("compare", scale.ratio() ? "ratio" : "difference")
                        .text("condition", following.condition())
                        .objects(
                                "sessions",
                                following.points().stream()
                                        .map(each -> point(scale, each))
                                        .toList())
                        .object("chart", following.chart().map(each -> chart(scale, each)))
                        .object("slope_a_day", following.byDay().map(FollowJson::line))
                        .objects(
                                "pieces",
                                following.pieces().stream().map(FollowJson::piece).toList())
                        .texts("remarks", following.remarks())
                        .text("left_out", leftOut)
                        .texts("sentences", FollowingWords.of(following))
                + "\n";
    }

    private static JsonText point(Scaled scale, Following.Point point) {
        return new JsonText()
                .text("session", AcrossBlocks.name(point.session()))
                .text("day", point.day().toString())
                .text("piece", point.piece())
                .whole("n", point.n())
                .number("mean", scale.outward(point.mean()))
                .number("spread", point.spread().orElse(Double.NaN))
                .number("worn_before", point.wornBefore())
                .truth("bounded", point.bounded());
    }

    private static JsonText chart(Scaled scale, Chart chart) {
        JsonText json =
                new JsonText()
                        .number("mean", scale.outward(chart.mean()))
                        .number("spread", chart.spread())
                        .limits(
                                "limits",
                                scale.outward(chart.limits().low()),
                                scale.outward(chart.limits().high()))
                        .wholes("beyond", chart.beyond())
                        .wholes("ends_of_runs", chart.endsOfRuns());
        chart.expected(chart.values().size(), Following.CONFIDENCE)
                .ifPresent(each -> PoolJson.interval(json, "next_expected", scale, each));
        return json;
    }

    private static JsonText line(RandomLine line) {
        Interval slope = line.interval(Following.CONFIDENCE);
        return new JsonText()
                .number("estimate", slope.estimate())
                .limits("interval", slope.lower(), slope.upper())
                .number("p", line.slope().p());
    }

    private static JsonText piece(Following.Piece piece) {
        return new JsonText()
                .text("piece", piece.name())
                .whole("sessions", piece.sessions())
                .limits("worn_before", piece.from(), piece.to())
                .object("slope_a_wearing", piece.byWearing().map(FollowJson::line));
    }
}
