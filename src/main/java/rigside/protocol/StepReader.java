package rigside.protocol;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigside.protocol.Item.Common;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads one step: what all kinds share, and the short kinds. */
final class StepReader {
    /** What a step can be done only after. */
    enum After {
        PUTTING_ON
    }

    /** The words for the kinds of step, each with its reader. */
    private interface ItemReader {
        Value<Item> read(Fields fields, Where where, Known known);
    }

    /** Reads what is special to one kind of step. */
    private interface KindReader {
        Value<? extends Step> read(Fields fields, Common common, Where where, Known known);

        /** With what all kinds share. */
        default ItemReader whole() {
            return (fields, where, known) -> {
                Common common = common(fields, where, known);
                return read(fields, common, where, known).map(common::written);
            };
        }
    }

    private static final Map<String, ItemReader> KINDS = new LinkedHashMap<>();

    static {
        kind("checklist", StepReader::checklist);
        kind("form", StepReader::form);
        kind("countdown", StepReader::countdown);
        kind("exercises", ExercisesReader::read);
        kind("trials", TrialsReader::read);
        kind("observations", StepReader::observations);
        kind("note", StepReader::note);
        kind("gates", GatesReader::read);
        KINDS.put("group", GroupReader::use);
    }

    private StepReader() {}

    private static void kind(String word, KindReader reader) {
        KINDS.put(word, reader.whole());
    }

    static Value<Item> read(Entry entry, Where where, Known known) {
        return entry.fields(
                fields ->
                        fields.deciding("step", "note")
                                .oneOf(KINDS)
                                .then(
                                        kind -> {
                                            String word = fields.optional("step").line().get();
                                            fields.is(StepElements.of(word, where));
                                            return kind.read(fields, where, known);
                                        }));
    }

    private static Common common(Fields fields, Where where, Known known) {
        Value<String> title = fields.required("title").line();
        Value<String> say = fields.optional("say").text();
        return new Common(
                title,
                say,
                onlyFor(fields, where, known),
                onlyAfter(fields, where, known),
                OnlyIfText.read(fields));
    }

    private static Value<After> onlyAfter(Fields fields, Where where, Known known) {
        if (!where.isInDonning()) {
            fields.refused(
                    "only-after", "is for steps of a donning", "delete it: no mask is put on here");
        }
        return fields.optional("only-after")
                .oneOf(After.class)
                .must(
                        after -> known.maskMayStayOn || !where.isInDonning(),
                        after -> "the mask is put on for every step of this kind",
                        "delete 'only-after', or write 'mask: stays-on' in the plan");
    }

    /** The conditions a step, or the use of a group, is for; absent for all. */
    static Value<List<String>> onlyFor(Fields fields, Where where, Known known) {
        if (!where.isInDonning()) {
            fields.refused(
                    "only-for",
                    "is for steps of a donning",
                    "delete it: no condition is worn here");
            return fields.value(List.of());
        }
        return fields.optional("only-for")
                .list(
                        1,
                        "write at least one condition's id, or delete the line",
                        item -> known.conditions.refer(item.line()));
    }

    /** Notes it where a step that makes readings does not stand in a donning. */
    static void mustBeInDonning(Fields fields, Where where, String kind) {
        if (!where.isInDonning()) {
            fields.wrong(
                    "the step '" + kind + "' cannot stand before or after the donnings",
                    where.inGroup()
                            ? "use its group under 'donning' only: its readings belong to one"
                            : "move it under 'donning': its readings belong to one");
        }
    }

    private static Value<Step> checklist(Fields fields, Common common, Where where, Known known) {
        Value<List<Step.Checklist.Item>> items =
                fields.required("items")
                        .list(
                                1,
                                "write what has to be so, each as '- check: ...'",
                                item -> item.fields(keys -> check(keys, where, known)));
        return fields.make(() -> new Step.Checklist(common.head(), items.get()));
    }

    /** A failed check leads back to the first one unless the file says otherwise. */
    private static Value<Step.Checklist.Item> check(Fields fields, Where where, Known known) {
        fields.is(CheckElements.CHECK);
        Value<String> id = known.id(fields.optional("id"));
        Value<String> text = fields.required("check").text();
        Value<IfNot> ifNot =
                fields.optional("if-not")
                        .oneOf(IfNot.class)
                        .must(
                                lead -> lead != IfNot.ABANDON || where.isInDonning(),
                                lead -> "'if-not: abandon' stands outside a donning",
                                "write repeat, go-on or stop: there is no donning to abandon here");
        Value<Step.Checklist.Item> item =
                fields.make(
                        () ->
                                new Step.Checklist.Item(
                                        id.toOptional(), text.get(), ifNot.orElse(IfNot.REPEAT)));
        item.toOptional().ifPresent(known::addCheck);
        return item;
    }

    private static Value<Step> form(Fields fields, Common common, Where where, Known known) {
        Value<List<Field>> asked = asked(fields, known);
        return fields.make(() -> new Step.Form(common.head(), asked.get()));
    }

    private static Value<Step> observations(
            Fields fields, Common common, Where where, Known known) {
        Value<List<Field>> asked = asked(fields, known);
        return fields.make(() -> new Step.Observations(common.head(), asked.get()));
    }

    private static Value<List<Field>> asked(Fields fields, Known known) {
        return fields.required("fields")
                .list(
                        1,
                        "write what is asked, each as '- id: ...' with 'ask' below it",
                        item -> FieldReader.read(item, known));
    }

    private static Value<Step> countdown(Fields fields, Common common, Where where, Known known) {
        Value<Double> seconds = QuantityText.seconds(fields.required("for"));
        Value<Step.Starting> starting = starting(fields);
        return fields.make(
                () ->
                        new Step.Countdown(
                                common.head(),
                                starting.orElse(Step.Starting.BY_KEY),
                                seconds.get()));
    }

    static Value<Step.Starting> starting(Fields fields) {
        return fields.optional("starts").oneOf(Step.Starting.class);
    }

    private static Value<Step> note(Fields fields, Common common, Where where, Known known) {
        fields.required("say");
        return fields.make(() -> new Step.Note(common.head()));
    }
}
