package rigside.rig;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.yaml.Document;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads the text of a simulated-rig file: an invented wearer and room. */
public final class WearerReader {
    private static final int FORMAT = 1;

    private WearerReader() {}

    /**
     * The wearer the text describes, or every problem in it.
     *
     * @param name the file's name, used in problems only
     */
    public static Document<Wearer> read(String name, String text) {
        return Document.read(name, text, WearerReader::wearer);
    }

    /**
     * The wearer the bytes of a file describe, or every problem in it.
     *
     * @param name the file's name, used in problems only
     */
    public static Document<Wearer> read(String name, byte[] bytes) {
        return Document.read(name, bytes, WearerReader::wearer);
    }

    private record Named(String id, Wearer.Behaviour behaviour) {}

    /** The wearer that the outermost keys of a file describe. */
    static Value<Wearer> wearer(Fields fields) {
        fields.is(RigElements.SIMULATED);
        fields.required("format").whole(FORMAT, FORMAT);
        Value<String> title = fields.required("title").line();
        fields.optional("about").text();
        Value<Double> ambient =
                Amounts.above0(fields.required("ambient"), Dimension.CONCENTRATION, "4000 /cm3");
        Value<Double> varies = Spread.percent(fields.required("ambient-varies"));
        Value<Boolean> gauge = fields.optional("gauge").yesOrNo();
        Entry listed = fields.required("conditions");
        Value<List<Named>> conditions =
                listed.list(1, "write how the wearer fares in at least one", WearerReader::named);
        return fields.make(
                () ->
                        new Wearer(
                                title.get(),
                                ambient.get(),
                                varies.get(),
                                byId(conditions.get()),
                                conditions.get().get(0).behaviour(),
                                gauge.orElse(false)));
    }

    private static Map<String, Wearer.Behaviour> byId(List<Named> conditions) {
        Map<String, Wearer.Behaviour> byId = new HashMap<>();
        conditions.forEach(each -> byId.putIfAbsent(each.id(), each.behaviour()));
        return byId;
    }

    private static Value<Named> named(Entry entry) {
        return entry.fields(
                fields -> {
                    fields.is(RigElements.WEARER);
                    Value<String> id = fields.required("id").line();
                    Value<Wearer.Level> fit =
                            level(fields.required("fit-factor"), Dimension.NUMBER, "200");
                    Value<Wearer.Level> time =
                            level(fields.required("inhalation"), Dimension.TIME, "6 s");
                    Value<Wearer.Level> peak =
                            level(fields.required("peak-pressure"), Dimension.PRESSURE, "110 Pa");
                    Value<List<Measured>> measures =
                            fields.optional("measures")
                                    .list(1, "write one, or leave it out", WearerReader::measured);
                    return fields.make(
                            () -> {
                                Wearer.Behaviour behaviour =
                                        new Wearer.Behaviour(fit.get(), time.get(), peak.get());
                                for (Measured each : measures.orElse(List.of())) {
                                    behaviour = behaviour.with(each.id(), each.level());
                                }
                                return new Named(id.get(), behaviour);
                            });
                });
    }

    private record Measured(String id, Wearer.Level level) {}

    /** What one measure of a protocol gives: any quantity, whose unit tells which. */
    private static Value<Measured> measured(Entry entry) {
        return entry.fields(
                fields -> {
                    fields.is(RigElements.MEASURED);
                    Value<String> id = fields.required("measure").line();
                    Value<Quantity> median = Amounts.any(fields.required("median"), "110 Pa");
                    Entry between = fields.required("between-donnings");
                    Entry within = fields.required("within-donning");
                    Value<Wearer.Level> level =
                            median.then(
                                    middle -> {
                                        Dimension dimension = middle.unit().dimension();
                                        Value<Spread> first = Spread.read(between, dimension);
                                        Value<Spread> second = Spread.read(within, dimension);
                                        return first.then(
                                                        one ->
                                                                second.must(
                                                                        two ->
                                                                                one.scatter()
                                                                                        == two
                                                                                                .scatter(),
                                                                        two ->
                                                                                "one spread is a"
                                                                                        + " percentage,"
                                                                                        + " the other"
                                                                                        + " an amount",
                                                                        "write both the same way"))
                                                .map(
                                                        two ->
                                                                new Wearer.Level(
                                                                        middle.si(),
                                                                        first.get().size(),
                                                                        two.size(),
                                                                        two.scatter(),
                                                                        dimension));
                                    });
                    return fields.make(() -> new Measured(id.get(), level.get()));
                });
    }

    private static Value<Wearer.Level> level(Entry entry, Dimension dimension, String example) {
        return entry.fields(
                fields -> {
                    fields.is(RigElements.LEVEL);
                    Value<Double> median =
                            Amounts.above0(fields.required("median"), dimension, example);
                    Value<Double> between = Spread.percent(fields.required("between-donnings"));
                    Value<Double> within = Spread.percent(fields.required("within-donning"));
                    return fields.make(
                            () ->
                                    new Wearer.Level(
                                            median.get(), between.get(), within.get(), dimension));
                });
    }
}
