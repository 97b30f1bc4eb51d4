package rigside.command;

import java.util.List;
import java.util.Optional;
import rigside.archive.DaysApart;
import rigside.archive.DaysApartWords;
import rigside.archive.Scaled;
import rigside.decide.Interval;
import rigside.decide.Summary;

/** Conditions of two sessions against each other, as JSON; scales as in {@link PoolJson}. */
final class CompareJson {
    private CompareJson() {}

    static String of(DaysApart apart) {
        return new JsonText()
                        .text("verdict", Optional.empty())
                        .text("why_no_verdict", DaysApartWords.WARNING)
                        .truth("simulated", apart.one().session().simulated())
                        .objects("sides", List.of(side(apart.one()), side(apart.two())))
                        .texts("remarks", apart.remarks())
                        .objects(
                                "measures",
                                apart.compared().stream().map(each -> of(apart, each)).toList())
                + "\n";
    }

    private static JsonText side(DaysApart.Side side) {
        return new JsonText()
                .text("session", AcrossBlocks.name(side.session()))
                .text("condition", side.condition().id())
                .text("day", side.session().day().map(Object::toString));
    }

    private static JsonText of(DaysApart apart, DaysApart.Compared each) {
        return new JsonText()
                .text("measure", each.measure().id())
                .text("compare", each.scale().ratio() ? "ratio" : "difference")
                .objects(
                        "values",
                        each.summaries().stream()
                                .map(summary -> summary(each.scale(), summary))
                                .toList())
                .object("through_reference", of(each.scale(), each.through()))
                .object("over_days", of(each.scale(), each.overDays()))
                .whole("other_days", each.days())
                .object("within_sessions_too_narrow", of(each.scale(), each.within()))
                .truth("bounded", each.bounded())
                .texts("sentences", DaysApartWords.of(apart, each));
    }

    private static JsonText summary(Scaled scale, Summary summary) {
        return new JsonText()
                .whole("n", summary.n())
                .number("mean", scale.outward(summary.mean()))
                .number("spread", summary.sd());
    }

    private static Optional<JsonText> of(Scaled scale, Optional<Interval> interval) {
        return interval.map(
                each -> {
                    JsonText json =
                            new JsonText().number("estimate", scale.outward(each.estimate()));
                    PoolJson.interval(json, "interval", scale, each);
                    return json.number("confidence", DaysApart.CONFIDENCE)
                            .number("degrees_of_freedom", each.degreesOfFreedom());
                });
    }
}
