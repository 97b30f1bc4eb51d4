package rigside.protocol;

import java.util.Optional;
import rigside.measure.Unit;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Rules between measures that are typed and the form fields they are typed in. */
final class TypedRules {
    private TypedRules() {}

    /** Every typed number has one numeric form field that is always filled in. */
    static void typedNumbersAreAsked(Known known) {
        for (Known.Typed typed : known.typed) {
            typed.field().toOptional().ifPresent(id -> isAsked(typed, id, known));
        }
    }

    private static void isAsked(Known.Typed typed, String id, Known known) {
        Known.Asked asked = known.forms.get(id);
        Value<String> field = typed.field();
        if (asked == null) {
            field.wrong(
                    "no form of the donning has a field with the id '" + id + "'",
                    Words.nearest(id, known.forms.keySet())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("add it to a step 'form' under 'donning'"));
            return;
        }
        Optional<Unit> unit =
                asked.field().answer() instanceof Field.Numeric number
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
        } else if (asked.field().optional()) {
            field.wrong(
                    "the field '" + id + "' may be empty, but the measure needs it",
                    "delete 'may-be-empty' there");
        } else {
            known.feed(typed.measure(), asked.applies());
        }
    }
}
