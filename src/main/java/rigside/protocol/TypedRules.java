package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.measure.Unit;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Rules between measures that are typed and the form fields they are typed in. */
final class TypedRules {
    private TypedRules() {}

    /** Every typed number has one numeric form field that is always filled in. */
    static void typedNumbersAreAsked(Known known, List<Step> donning) {
        List<Step> forms = donning.stream().filter(Step.Form.class::isInstance).toList();
        for (Known.Typed typed : known.typed) {
            typed.field().toOptional().ifPresent(id -> isAsked(typed, id, known, forms));
        }
    }

    private static void isAsked(Known.Typed typed, String id, Known known, List<Step> forms) {
        List<Step> asking = forms.stream().filter(step -> step.asks().contains(id)).toList();
        Value<String> field = typed.field();
        if (asking.isEmpty()) {
            field.wrong(
                    "no form of the donning has a field with the id '" + id + "'",
                    Words.nearest(id, forms.stream().flatMap(step -> step.asks().stream()).toList())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("add it to a step 'form' under 'donning'"));
            return;
        }
        Field asked = known.fields.get(id);
        Optional<Unit> unit =
                asked.answer() instanceof Field.Numeric number
                        ? Optional.of(number.unit())
                        : Optional.empty();
        boolean fits =
                typed.unit().isPresent()
                        && unit.filter(u -> u.dimension() == typed.unit().get().dimension())
                                .isPresent();
        if (!fits && typed.unit().isPresent()) {
            field.wrong(
                    "the field '"
                            + id
                            + "' does not take "
                            + typed.unit().get().dimension().words(),
                    "give the field and the measure units of one kind");
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
