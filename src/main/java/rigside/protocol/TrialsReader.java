package rigside.protocol;

import java.util.List;
import java.util.OptionalDouble;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads a step of timed inhalations. The lead-in is 3 s unless the file says otherwise. */
final class TrialsReader {
    static final int MOST_TRIALS = 50;
    static final double DEFAULT_LEAD_IN = 3;

    /** Half of a pull; ours, no source. */
    static final double DEFAULT_HELD = 0.5;

    private TrialsReader() {}

    static Value<Step> read(Fields fields, Item.Common common, Where where, Known known) {
        Value<String> measure =
                Feeds.measure(
                        fields.required("feeds"),
                        List.of(MeasureKind.TIMED_INHALATION),
                        "trials feed",
                        known);
        StepReader.mustBeInDonning(fields, where, "trials");
        common.feed(measure);
        Value<Step.Starting> starting = StepReader.starting(fields);
        Value<Integer> count = fields.required("trials").whole(1, MOST_TRIALS);
        Value<Quantity> target = target(fields.required("target"));
        Value<Double> tolerance = tolerance(fields.optional("tolerance"));
        Value<Double> held = held(fields.optional("held-for"), fields.optional("tolerance"));
        Value<Double> leadIn = QuantityText.seconds(fields.optional("lead-in"));
        Value<Double> rest = QuantityText.seconds(fields.required("rest"));
        Value<Double> shortest = QuantityText.seconds(fields.required("shortest"));
        Value<Double> longest = QuantityText.seconds(fields.required("longest"));
        if (shortest.isPresent() && longest.isPresent() && shortest.get() >= longest.get()) {
            longest.wrong(
                    "'longest' is "
                            + QuantityText.plain(longest.get())
                            + " s, not above 'shortest', which is "
                            + QuantityText.plain(shortest.get())
                            + " s",
                    "write the shortest and the longest time that one breath can plausibly take");
        }
        return fields.make(
                () ->
                        new Step.Trials(
                                common.head(),
                                starting.orElse(Step.Starting.BY_KEY),
                                measure.get(),
                                count.get(),
                                target.get(),
                                tolerance.isPresent()
                                        ? OptionalDouble.of(tolerance.get())
                                        : OptionalDouble.empty(),
                                held.orElse(DEFAULT_HELD),
                                leadIn.orElse(DEFAULT_LEAD_IN),
                                rest.get(),
                                shortest.get(),
                                longest.get()));
    }

    private static Value<Quantity> target(Entry entry) {
        return QuantityText.quantity(entry.line(), Dimension.PRESSURE)
                .must(
                        pressure -> pressure.value() > 0,
                        pressure -> "'target' is '" + pressure + "', must be above 0",
                        "write the suction to hold as a positive pressure, such as '250 Pa'");
    }

    /** Whether a pull was held is judged by its tolerance. */
    private static Value<Double> held(Entry entry, Entry tolerance) {
        Value<Double> held =
                QuantityText.share(entry.line(), "50 %")
                        .must(
                                share -> share > 0 && share <= 1,
                                share -> "'held-for' is " + QuantityText.plain(share * 100) + " %",
                                "write which share of a pull has to be within the tolerance, above"
                                        + " 0 %, at most 100 %");
        return tolerance.isGiven()
                ? held
                : held.must(
                        share -> false,
                        share -> "'held-for' is given without a 'tolerance'",
                        "add for example 'tolerance: 20 %', or delete 'held-for'");
    }

    private static Value<Double> tolerance(Entry entry) {
        return QuantityText.share(entry.line(), "20 %")
                .must(
                        share -> share > 0 && share < 1,
                        share -> "'tolerance' is " + QuantityText.plain(share * 100) + " %",
                        "write a percentage of the target, above 0 % and below 100 %");
    }
}
