package rigside.command;

import java.util.Optional;
import rigside.archive.Pool;
import rigside.archive.Pooled;
import rigside.archive.Scaled;
import rigside.decide.Interval;
import rigside.decide.Limits;
import rigside.decide.Pooling;
import rigside.decide.RandomEffects;

/**
 * Pooled sessions as JSON. Estimates and intervals are ratios, or differences in the measure's
 * unit; spreads are standard deviations, of natural logarithms for ratios.
 */
final class PoolJson {
    private PoolJson() {}

    static String of(Pool pool, Optional<String> leftOut) {
        return new JsonText()
                        .text("verdict", Optional.empty())
                        .text("why_no_verdict", Pool.NO_VERDICT)
                        .truth("simulated", pool.sessions().get(0).simulated())
                        .texts(
                                "sessions",
                                pool.sessions().stream().map(AcrossBlocks::name).toList())
                        .texts("remarks", pool.remarks())
                        .text("left_out", leftOut)
                        .objects(
                                "comparisons",
                                pool.comparisons().stream().map(PoolJson::of).toList())
                + "\n";
    }

    private static JsonText of(Pooled each) {
        return new JsonText()
                .text("measure", each.measure().id())
                .text("condition", each.condition().id())
                .text("reference", each.reference().id())
                .text("compare", each.scale().ratio() ? "ratio" : "difference")
                .objects(
                        "sessions",
                        each.lines().stream().map(line -> line(each.scale(), line)).toList())
                .object("pooled", each.pooled().map(pooling -> of(each.scale(), pooling)))
                .object("at_half", each.halved().map(pooling -> of(each.scale(), pooling)))
                .texts("sentences", each.sentences());
    }

    private static JsonText line(Scaled scale, Pooled.Line line) {
        JsonText json =
                new JsonText()
                        .text("session", AcrossBlocks.name(line.session()))
                        .whole("n", line.n())
                        .number("estimate", scale.outward(line.estimate()));
        line.ordinary().ifPresent(each -> interval(json, "ordinary_interval", scale, each));
        line.finding()
                .ifPresent(
                        found -> {
                            json.text("verdict", found.conclusion().verdict().word())
                                    .whole("direction", found.conclusion().direction());
                            found.interval()
                                    .ifPresent(
                                            each ->
                                                    json.limits(
                                                            "interval", each.low(), each.high()));
                        });
        return json;
    }

    static void interval(JsonText json, String key, Scaled scale, Interval interval) {
        Limits limits = scale.outward(interval);
        json.limits(key, limits.low(), limits.high());
    }

    private static JsonText of(Scaled scale, Pooling pooling) {
        RandomEffects effects = pooling.effects().orElseThrow();
        JsonText json =
                new JsonText()
                        .number("estimate", scale.outward(pooling.mean()))
                        .number("confidence", Pool.CONFIDENCE);
        interval(json, "interval", scale, effects.cautiousInterval(Pool.CONFIDENCE));
        interval(json, "interval_by_scatter_alone", scale, effects.interval(Pool.CONFIDENCE));
        interval(json, "prediction", scale, effects.prediction(Pool.CONFIDENCE));
        return json.number("q", effects.q())
                .number("degrees_of_freedom", effects.degreesOfFreedom())
                .number("degrees_of_freedom_within", effects.freedom())
                .number("p", effects.p())
                .number("tau", effects.spreadBetween())
                .limits("tau_limits", effects.betweenLimits(Pool.CONFIDENCE))
                .number("i_squared", effects.shareBetween())
                .limits("i_squared_limits", effects.shareLimits(Pool.CONFIDENCE))
                .number("spread_within", pooling.within())
                .number("spreads_unlike_p", pooling.unlike());
    }
}
