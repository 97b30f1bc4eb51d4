package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.yaml.Document;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads the text of a protocol file. */
public final class ProtocolReader {
    /** The format written and read by this version. */
    public static final int FORMAT = 1;

    private static final int LARGEST_FORMAT = 1000;

    private ProtocolReader() {}

    /**
     * The protocol the text describes, or every problem in it.
     *
     * @param name the file's name, used in problems only
     * @param text the whole text
     */
    public static Read read(String name, String text) {
        return of(Document.read(name, text, fields -> protocol(fields, new Known(false))));
    }

    /**
     * The protocol that a session was run by, by the rules of its day: what a later version came to
     * refuse, although it can be read as well as ever, is let pass. A rule that only refuses asks
     * {@link Known#recorded}; one by which a text means something else is a new format.
     *
     * @param name the file's name, used in problems only
     * @param text the whole text, as the journal holds it
     */
    public static Read readRecorded(String name, String text) {
        return of(Document.read(name, text, fields -> protocol(fields, new Known(true))));
    }

    /**
     * The protocol a file's bytes describe, or every problem in them.
     *
     * @param name the file's name, used in problems only
     * @param bytes the whole file; of a file larger than {@link Document#MOST_BYTES} any part that
     *     is larger will do
     */
    public static Read read(String name, byte[] bytes) {
        return of(Document.read(name, bytes, fields -> protocol(fields, new Known(false))));
    }

    private static Read of(Document<Protocol> document) {
        return document.value()
                .<Read>map(Read.Good::new)
                .orElseGet(() -> new Read.Bad(document.problems()));
    }

    private static Value<Protocol> protocol(Fields fields, Known known) {
        Value<Integer> format =
                fields.deciding("format", "1")
                        .whole(1, LARGEST_FORMAT)
                        .must(
                                number -> number <= FORMAT,
                                number ->
                                        "the file has format "
                                                + number
                                                + ", this program reads format "
                                                + FORMAT,
                                "use a newer version of the program");
        return format.then(
                number -> {
                    fields.is(ProtocolElements.FILE);
                    return wearsNothing(fields)
                            ? instrumentCheck(fields, known)
                            : formatOne(fields, known);
                });
    }

    /** Neither something worn nor what is done with it: not by a slip of the fingers either. */
    private static boolean wearsNothing(Fields fields) {
        return fields.speaksOf("before")
                && Stream.of("conditions", "donning").noneMatch(fields::speaksOf);
    }

    private static Value<Protocol> instrumentCheck(Fields fields, Known known) {
        for (String key : List.of("measures", "conditions", "plan", "donning", "after")) {
            fields.refused(
                    key,
                    "is for a protocol in which something is worn",
                    "delete it, or add 'conditions' and 'donning'");
        }
        Head head = Head.read(fields, known);
        Optional<List<Step>> before = ProcedureReader.readBefore(fields, known);
        return fields.make(
                () ->
                        head.protocol(
                                List.of(),
                                List.of(),
                                Plan.NONE,
                                before.orElseThrow(),
                                List.of(),
                                List.of()));
    }

    private static Value<Protocol> formatOne(Fields fields, Known known) {
        Head head = Head.read(fields, known);
        Entry measureList = fields.required("measures");
        Value<List<Measure>> measures =
                measureList.list(
                        1,
                        "write at least one measure, such as a timed-inhalation",
                        item -> MeasureReader.read(item, known));
        expectUnread(measureList, true, known.measures);
        Entry conditionList = fields.required("conditions");
        boolean compares = conditionList.items() != 1;
        Value<List<Condition>> conditions =
                conditionList.list(
                        1,
                        "write two or more to compare them, the first being the reference, or one"
                                + " to see how far its values spread",
                        item -> ConditionReader.read(item, known));
        expectUnread(conditionList, true, known.conditions);
        Value<PlanReader.Planned> plan =
                fields.required("plan").fields(keys -> PlanReader.read(keys, compares));
        known.maskMayStayOn = plan.toOptional().map(read -> read.plan().maskStaysOn()).orElse(true);
        ProcedureReader.Steps steps = ProcedureReader.read(fields, known);
        if (!compares) {
            WholeRules.oneConditionComparesNothing(conditionList, measures, plan);
        } else if (measures.isPresent()) {
            WholeRules.somethingDecides(measureList, measures.get());
            if (plan.isPresent()) {
                WholeRules.replicatesFit(plan.get(), measures.get());
            }
        }
        if (steps.donning().isPresent()) {
            TypedRules.typedNumbersAreAsked(known, steps.donning().get());
            steps.before()
                    .ifPresent(
                            before ->
                                    new CalculatedRules(known, before, steps.donning().get())
                                            .check());
            if (measures.isPresent() && conditions.isPresent()) {
                FeedRules.everyMeasureIsFed(known, measures.get(), conditions.get());
            }
        }
        Value<Protocol> protocol =
                fields.make(
                        () ->
                                head.protocol(
                                        conditions.get(),
                                        measures.get(),
                                        plan.get().plan(),
                                        steps.before().orElseThrow(),
                                        steps.donning().orElseThrow(),
                                        steps.after().orElseThrow()));
        protocol.toOptional()
                .filter(whole -> !known.recorded)
                .ifPresent(
                        whole -> {
                            WholeRules.donningTakesLongEnough(plan.get().donningTakes(), whole);
                            WholeRules.mostHoldsADonning(plan.get().most(), whole);
                        });
        return protocol;
    }

    /** What every protocol begins with. */
    private record Head(
            Value<String> title,
            Value<String> question,
            Value<String> about,
            Value<List<String>> cautions,
            Value<List<Field>> facts) {

        static Head read(Fields fields, Known known) {
            Value<String> title = fields.required("title").line();
            Value<String> question = fields.required("question").text();
            Value<String> about = fields.optional("about").text();
            Value<List<String>> cautions =
                    fields.required("cautions")
                            .list(
                                    1,
                                    "write what the tester must know before the first donning",
                                    Entry::text);
            Entry factList = fields.optional("facts");
            Value<List<Field>> facts =
                    factList.list(
                            1,
                            "write at least one fact, or delete the line",
                            item -> FieldReader.fact(item, known));
            expectUnread(factList, factList.isGiven() || fields.isMisspelt("facts"), known.facts);
            return new Head(title, question, about, cautions, facts);
        }

        Protocol protocol(
                List<Condition> conditions,
                List<Measure> measures,
                Plan plan,
                List<Step> before,
                List<Step> donning,
                List<Step> after) {
            return new Protocol(
                    title.get(),
                    question.get(),
                    about.orElse(""),
                    cautions.get(),
                    facts.orElse(List.of()),
                    conditions,
                    measures,
                    plan,
                    before,
                    donning,
                    after);
        }
    }

    /** Where a list that is meant cannot be read, what refers to its items may well be right. */
    private static void expectUnread(Entry list, boolean isMeant, Ids ids) {
        if (isMeant && !list.isList()) {
            ids.expect();
        }
    }
}
