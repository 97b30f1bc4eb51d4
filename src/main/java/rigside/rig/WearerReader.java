package rigside.rig;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigside.measure.Dimension;
import rigside.yaml.Amount;
import rigside.yaml.Document;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;
import rigside.yaml.Words;

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
        fields.required("format").whole(FORMAT, FORMAT);
        Value<String> title = fields.required("title").line();
        fields.optional("about").text();
        Value<Double> ambient =
                Amounts.above0(fields.required("ambient"), Dimension.CONCENTRATION, "4000 /cm3");
        Value<Double> varies = spread(fields.required("ambient-varies"));
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
                    Value<String> id = fields.required("id").line();
                    Value<Wearer.Level> fit =
                            level(fields.required("fit-factor"), Dimension.NUMBER, "200");
                    Value<Wearer.Level> time =
                            level(fields.required("inhalation"), Dimension.TIME, "6 s");
                    Value<Wearer.Level> peak =
                            level(fields.required("peak-pressure"), Dimension.PRESSURE, "110 Pa");
                    return fields.make(
                            () ->
                                    new Named(
                                            id.get(),
                                            new Wearer.Behaviour(
                                                    fit.get(), time.get(), peak.get())));
                });
    }

    private static Value<Wearer.Level> level(Entry entry, Dimension dimension, String example) {
        return entry.fields(
                fields -> {
                    Value<Double> median =
                            Amounts.above0(fields.required("median"), dimension, example);
                    Value<Double> between = spread(fields.required("between-donnings"));
                    Value<Double> within = spread(fields.required("within-donning"));
                    return fields.make(
                            () -> new Wearer.Level(median.get(), between.get(), within.get()));
                });
    }

    /** A spread in percent, as a standard deviation on the natural-log scale: 20 % is ln 1.2. */
    private static Value<Double> spread(Entry entry) {
        Value<String> text = entry.line();
        return Amount.read(text, "20 %")
                .must(
                        amount ->
                                amount.unit().equals("%")
                                        && amount.number() >= 0
                                        && amount.number() <= 300,
                        amount -> text.label() + " is " + Words.quoted(text.get()),
                        "write a percentage from 0 to 300 %, such as '20 %'")
                .map(amount -> Math.log1p(amount.number() / 100));
    }
}
