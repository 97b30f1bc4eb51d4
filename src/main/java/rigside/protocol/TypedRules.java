package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.measure.Unit;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Rules between measures that are typed and the fields they are typed in. */
final class TypedRules {
    private TypedRules() {}

    /** Every typed number has one field, a number or a scale, that is always filled in. */
    static void typedNumbersAreAsked(Known known, List<Step> donning) {
        List<Step> asking = donning.stream().filter(step -> !step.fields().isEmpty()).toList();
        for (Known.Typed typed : known.typed) {
            typed.field().toOptional().ifPresent(id -> isAsked(typed, id, known, asking));
        }
    }

    private static void isAsked(Known.Typed typed, String id, Known known, List<Step> all) {
        List<Step> asking = all.stream().filter(step -> step.asks().contains(id)).toList();
        Value<String> field = typed.field();
        if (asking.isEmpty()) {
            field.wrong(
                    "no step of the donning has a field with the id '" + id + "'",
                    Words.nearest(id, all.stream().flatMap(step -> step.asks().stream()).toList())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("add it to a step 'form' or 'observations' under 'donning'"));
            return;
        }
        Field asked = known.fields.get(id);
        Optional<Unit> unit = asked.unit();
        if (unit.isEmpty()) {
            field.wrong(
                    "the field '" + id + "' takes words, and a measure needs a number",
                    "name a field with a 'unit' or a 'scale'");
        } else if (typed.unit().isPresent()
                && unit.get().dimension() != typed.unit().get().dimension()) {
            field.wrong(
                    "the field '"
                            + id
                            + "' takes "
                            + unit.get().dimension().words()
                            + ", but the measure's unit '"
                            + typed.unit().get().symbol()
                            + "' is "
                            + typed.unit().get().dimension().words(),
                    asked.answer() instanceof Field.Scale
                            ? "write 'unit: none'"
                            : "give the field and the measure units of one kind");
        } else if (asked.optional()) {
            field.wrong(
                    "the field '" + id + "' may be empty, but the measure needs it",
                    "delete 'may-be-empty' there");
        } else if (isAskedTwice(asking, known)) {
            field.wrong(
                    "the field '" + id + "' is asked several times in a donning",
                    "write 'kind: calculated' with 'function: mean' and 'of: " + id + "'");
        } else {
            asking.forEach(step -> known.feed(typed.measure(), step.head().applies()));
        }
    }

    private static boolean isAskedTwice(List<Step> asking, Known known) {
        return known.conditions.all().stream()
                .anyMatch(
                        condition ->
                                asking.stream().filter(step -> step.appliesTo(condition)).count()
                                        > 1);
    }
}
