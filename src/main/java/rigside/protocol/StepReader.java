package rigside.protocol;

import rigside.protocol.Step.Checklist.IfNot;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one step: what all kinds share, and the short kinds. */
final class StepReader {
    /** The part of the procedure a step stands in. */
    enum Part {
        BEFORE,
        DONNING,
        AFTER
    }

    /** What a step can be done only after. */
    enum After {
        PUTTING_ON
    }

    /** What every kind of step says. */
    record Common(
            Value<String> title,
            Value<List<String>> onlyFor,
            boolean onlyAfterPuttingOn,
            Value<String> say) {
        /** Once all was read. */
        Step.Head head() {
            return new Step.Head(title.get(), say.orElse(""), applies());
        }

        Applies applies() {
            return new Applies(onlyFor.orElse(List.of()), onlyAfterPuttingOn);
        }
    }

    /** The words for the kinds of step, each with its reader. */
    private interface KindReader {
        Value<? extends Step> read(Fields fields, Common common, Part part, Known known);
    }

    private static final Map<String, KindReader> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("checklist", StepReader::checklist);
        KINDS.put("form", StepReader::form);
        KINDS.put("countdown", StepReader::countdown);
        KINDS.put("exercises", ExercisesReader::read);
        KINDS.put("trials", TrialsReader::read);
        KINDS.put("observations", StepReader::observations);
        KINDS.put("note", StepReader::note);
        KINDS.put("gates", GatesReader::read);
    }

    private StepReader() {}

    static Value<Step> read(Entry entry, Part part, Known known) {
        return entry.fields(
                fields ->
                        fields.deciding("step", "note")
                                .oneOf(KINDS)
                                .then(
                                        kind -> {
                                            String word = fields.optional("step").line().get();
                                            fields.is(StepElements.of(word, part));
                                            return kind.read(
                                                            fields,
                                                            common(fields, part, known),
                                                            part,
                                                            known)
                                                    .map(step -> step);
                                        }));
    }

    private static Common common(Fields fields, Part part, Known known) {
        Value<String> title = fields.required("title").line();
        Value<String> say = fields.optional("say").text();
        if (part != Part.DONNING) {
            fields.refused(
                    "only-for",
                    "is for steps of a donning",
                    "delete it: no condition is worn here");
            fields.refused(
                    "only-after", "is for steps of a donning", "delete it: no mask is put on here");
            return new Common(title, fields.value(List.of()), false, say);
        }
        Value<List<String>> onlyFor =
                fields.optional("only-for")
                        .list(
                                1,
                                "write at least one condition's id, or delete the line",
                                item -> known.conditions.refer(item.line()));
        Value<After> onlyAfter =
                fields.optional("only-after")
                        .oneOf(After.class)
                        .must(
                                after -> known.maskMayStayOn,
                                after -> "the mask is put on for every step of this kind",
                                "delete 'only-after', or write 'mask: stays-on' in the plan");
        return new Common(title, onlyFor, onlyAfter.isPresent(), say);
    }

    /** Whether a step that makes readings stands in a donning; noted if not. */
    static boolean isInDonning(Fields fields, Part part, String kind) {
        return part == Part.DONNING
                || fields.wrong(
                                "the step '" + kind + "' cannot stand before or after the donnings",
                                "move it under 'donning': its readings belong to one")
                        .isPresent();
    }

    private static Value<Step> checklist(Fields fields, Common common, Part part, Known known) {
        Value<List<Step.Checklist.Item>> items =
                fields.required("items")
                        .list(
                                1,
                                "write what has to be so, each as '- check: ...'",
                                item -> item.fields(keys -> check(keys, part)));
        return fields.make(() -> new Step.Checklist(common.head(), items.get()));
    }

    /** A failed check leads back to the first one unless the file says otherwise. */
    private static Value<Step.Checklist.Item> check(Fields fields, Part part) {
        fields.is(StepElements.CHECK);
        Value<String> text = fields.required("check").text();
        Value<IfNot> ifNot =
                fields.optional("if-not")
                        .oneOf(IfNot.class)
                        .must(
                                lead -> lead != IfNot.ABANDON || part == Part.DONNING,
                                lead -> "'if-not: abandon' stands outside a donning",
                                "write repeat or stop: there is no donning to abandon here");
        return fields.make(() -> new Step.Checklist.Item(text.get(), ifNot.orElse(IfNot.REPEAT)));
    }

    private static Value<Step> form(Fields fields, Common common, Part part, Known known) {
        Value<List<Field>> asked = asked(fields, known);
        if (part == Part.DONNING && asked.isPresent()) {
            asked.get()
                    .forEach(
                            field ->
                                    known.forms.put(
                                            field.id(), new Known.Asked(field, common.applies())));
        }
        return fields.make(() -> new Step.Form(common.head(), asked.get()));
    }

    private static Value<Step> observations(Fields fields, Common common, Part part, Known known) {
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

    private static Value<Step> countdown(Fields fields, Common common, Part part, Known known) {
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

    private static Value<Step> note(Fields fields, Common common, Part part, Known known) {
        fields.required("say");
        return fields.make(() -> new Step.Note(common.head()));
    }
}
