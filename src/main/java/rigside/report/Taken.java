package rigside.report;

import java.util.OptionalDouble;
import rigside.measure.Numbers;
import rigside.protocol.Field;

/** What a field takes, on one line. */
record Taken() implements Field.Answer.Cases<String> {

    static String of(Field field) {
        return field.answer().match(new Taken()) + (field.optional() ? "; may be left empty" : "");
    }

    @Override
    public String numeric(Field.Numeric answer) {
        String unit = answer.unit().symbol();
        String range = range(answer.from(), answer.to());
        String number = unit.isEmpty() ? "a number" : unit;
        return range.isEmpty() ? number : number + ", " + range;
    }

    /** What is plausible: {@code 10 to 35}; empty without limits. */
    static String range(OptionalDouble from, OptionalDouble to) {
        String low = from.isPresent() ? Numbers.plain(from.getAsDouble()) : "";
        String high = to.isPresent() ? Numbers.plain(to.getAsDouble()) : "";
        if (low.isEmpty()) {
            return high.isEmpty() ? "" : "at most " + high;
        }
        return high.isEmpty() ? "at least " + low : low + " to " + high;
    }

    @Override
    public String choice(Field.Choice answer) {
        return "one of: " + String.join(", ", answer.options());
    }

    @Override
    public String scale(Field.Scale answer) {
        return answer.from()
                + " ("
                + answer.low()
                + ") to "
                + answer.to()
                + " ("
                + answer.high()
                + ")";
    }

    @Override
    public String words(Field.Words answer) {
        return "words, at most " + answer.longest() + " characters";
    }
}
