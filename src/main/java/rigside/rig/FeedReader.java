package rigside.rig;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Reads the declaration of one instrument. */
final class FeedReader {
    /** It becomes part of a file's name. */
    static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,29}");

    private static final double LOST_AFTER_SECONDS = 2;

    /** Where nothing is declared, so many readings may be missing in a row. */
    private static final double LOST_AFTER_READINGS = 5;

    /** More than any instrument shows. */
    private static final double LARGEST = 1e12;

    private FeedReader() {}

    /** A feed, and where its id and quantity stand. */
    record Placed(Feed feed, Value<String> id, Value<Sampled> sampled) {}

    static Value<Placed> read(Entry entry, Path folder) {
        return entry.fields(fields -> read(fields, folder));
    }

    private static Value<Placed> read(Fields fields, Path folder) {
        fields.is(RigElements.FEED);
        Value<String> id =
                fields.required("id")
                        .line()
                        .must(
                                word -> ID.matcher(word).matches(),
                                word ->
                                        "the id "
                                                + Words.quoted(word)
                                                + " is not a short plain word",
                                "write lower-case letters, digits and hyphens, such as 'gauge'");
        Value<Sampled> sampled = fields.required("quantity").oneOf(Sampled.words());
        boolean switched = sampled.orElse(Sampled.SWITCHED) == Sampled.SWITCHED;
        Value<LineForm> form = LineFormReader.read(fields, switched);
        Value<Origin> origin = OriginReader.read(fields, folder, form);
        Value<Scale> scale = scale(fields, sampled);
        Value<Double> rate = Amounts.perSecond(fields.optional("rate"), "10 /s");
        Value<Double> lost = Amounts.above0(fields.optional("lost-after"), Dimension.TIME, "2 s");
        Value<Double> settling = settling(fields, switched);
        return fields.make(
                () -> {
                    OptionalDouble perSecond =
                            rate.isPresent()
                                    ? OptionalDouble.of(rate.get())
                                    : OptionalDouble.empty();
                    Feed feed =
                            new Feed(
                                    id.get(),
                                    sampled.get(),
                                    origin.get(),
                                    form.get(),
                                    scale.get(),
                                    perSecond,
                                    lost.orElse(lostAfter(perSecond)),
                                    settling.orElse(0.0));
                    return new Placed(feed, id, sampled);
                });
    }

    private static double lostAfter(OptionalDouble perSecond) {
        return perSecond.isPresent()
                ? Math.max(LOST_AFTER_SECONDS, LOST_AFTER_READINGS / perSecond.getAsDouble())
                : LOST_AFTER_SECONDS;
    }

    private static Value<Double> settling(Fields fields, boolean switched) {
        if (!switched) {
            fields.refused("settling", "is for a switched counter only", "delete the line");
        }
        return Amounts.above0(fields.optional("settling"), Dimension.TIME, "3 s");
    }

    private static Value<Scale> scale(Fields fields, Value<Sampled> sampled) {
        Value<Unit> unit =
                sampled.isPresent()
                        ? Amounts.unit(fields.required("unit"), sampled.get().dimension())
                        : fields.required("unit").line().map(any -> Unit.ONE);
        Value<Double> factor = fields.optional("scale").number();
        Value<Double> offset = Amounts.bare(fields.optional("offset"), unit);
        Value<Double> from = Amounts.bare(fields.optional("from"), unit);
        Value<Double> to = Amounts.bare(fields.optional("to"), unit);
        factor.must(
                number -> number != 0,
                number -> "'scale' is 0: every reading would be the same",
                "write what a number is multiplied by, such as -1 or 0.1");
        to.must(
                highest -> !from.isPresent() || highest > from.get(),
                highest -> "'to' is not above 'from'",
                "write the highest value the instrument can mean");
        double least =
                sampled.toOptional().filter(each -> each != Sampled.MASK_PRESSURE).isPresent()
                        ? 0
                        : -LARGEST;
        return unit.map(
                known ->
                        new Scale(
                                known,
                                factor.orElse(1.0),
                                offset.orElse(0.0),
                                from.orElse(least),
                                to.orElse(LARGEST)));
    }
}
