package rigside.protocol;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import rigside.measure.BareNumber;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads one fact, or one field of a form or of observations. */
final class FieldReader {
    static final List<String> ANSWERS = List.of("unit", "choices", "scale", "words");
    static final int SCALE_END = 100;
    static final int MOST_WORDS = 400;

    private FieldReader() {}

    static Value<Field> fact(Entry entry, Known known) {
        known.facts.expect();
        Value<Field> fact = read(entry, known);
        fact.toOptional().ifPresent(known::addFact);
        return fact;
    }

    static Value<Field> read(Entry entry, Known known) {
        known.answers.expect();
        Value<Field> field = field(entry, known);
        field.toOptional().ifPresent(known::addField);
        return field;
    }

    private static Value<Field> field(Entry entry, Known known) {
        return entry.fields(
                fields -> {
                    fields.is(FieldElements.FIELD);
                    Value<String> id = known.answers.declare(fields.required("id"));
                    Value<String> ask = fields.required("ask").line();
                    Value<Boolean> optional = fields.optional("may-be-empty").yesOrNo();
                    Value<Subject> about = fields.optional("about").oneOf(Subject.class);
                    String way = fields.oneKeyOf(ANSWERS).orElse("");
                    Value<? extends Field.Answer> answer = answer(fields, way);
                    return fields.make(
                            () ->
                                    new Field(
                                            id.get(),
                                            ask.get(),
                                            answer.get(),
                                            optional.orElse(false),
                                            about.toOptional()));
                });
    }

    private static Value<? extends Field.Answer> answer(Fields fields, String way) {
        Entry entry = way.isEmpty() ? fields.optional("unit") : fields.optional(way);
        if (way.equals("unit") || way.isEmpty()) {
            return numeric(fields, UnitText.unit(entry));
        }
        for (String limit : List.of("from", "to")) {
            fields.refused(limit, "is for numbers only", "delete it, or give a 'unit'");
        }
        return switch (way) {
            case "choices" -> choice(entry);
            case "scale" -> entry.fields(FieldReader::scale);
            default -> entry.whole(1, MOST_WORDS).map(Field.Words::new);
        };
    }

    private static Value<Field.Numeric> numeric(Fields fields, Value<Unit> unit) {
        Value<Double> from = limit(fields.optional("from"), unit);
        Value<Double> to = limit(fields.optional("to"), unit);
        return unit.then(
                known ->
                        below(from, to)
                                ? unit.map(
                                        same -> new Field.Numeric(known, number(from), number(to)))
                                : to.wrong(
                                        "'to' is "
                                                + QuantityText.plain(to.get())
                                                + ", not above 'from'",
                                        "write the lowest plausible value in 'from', the highest"
                                                + " in 'to'"));
    }

    private static Value<Double> limit(Entry entry, Value<Unit> unit) {
        return entry.number(
                amount ->
                        unit.toOptional()
                                .flatMap(
                                        known ->
                                                BareNumber.cure(
                                                        amount.number(), amount.unit(), known)));
    }

    private static boolean below(Value<Double> from, Value<Double> to) {
        return !from.isPresent() || !to.isPresent() || from.get() < to.get();
    }

    private static OptionalDouble number(Value<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private static Value<Field.Choice> choice(Entry entry) {
        Value<List<String>> options =
                entry.list(2, "write two or more choices, such as [small, large]", Entry::line);
        return options.must(
                        words -> new HashSet<>(words).size() == words.size(),
                        words -> "a choice is given twice",
                        "keep one of them")
                .map(Field.Choice::new);
    }

    private static Value<Field.Scale> scale(Fields fields) {
        fields.is(FieldElements.SCALE);
        Value<Integer> from = fields.required("from").whole(0, SCALE_END);
        Value<Integer> to = fields.required("to").whole(0, SCALE_END);
        Value<String> low = fields.required("low").line();
        Value<String> high = fields.required("high").line();
        if (from.isPresent() && to.isPresent() && from.get() >= to.get()) {
            to.wrong(
                    "'to' is " + to.get() + ", not above 'from'",
                    "write the lowest number in 'from', the highest in 'to'");
        }
        return fields.make(() -> new Field.Scale(from.get(), to.get(), low.get(), high.get()));
    }
}
