package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.measure.Numbers;
import rigside.protocol.Field;

/** What a field takes, in words. */
record AnswerWords() implements Field.Answer.Cases<List<String>> {

    /** More choices than these are written one after the other. */
    private static final int MOST_LINES = 6;

    static List<String> of(Field field) {
        List<String> words = new ArrayList<>(field.answer().match(new AnswerWords()));
        if (field.optional()) {
            words.add("may be left empty");
        }
        return List.copyOf(words);
    }

    @Override
    public List<String> numeric(Field.Numeric answer) {
        String unit = answer.unit().symbol();
        String from = answer.from().isPresent() ? Numbers.plain(answer.from().getAsDouble()) : "";
        String to = answer.to().isPresent() ? Numbers.plain(answer.to().getAsDouble()) : "";
        String range =
                from.isEmpty() && to.isEmpty()
                        ? ""
                        : from.isEmpty()
                                ? ", at most " + to
                                : to.isEmpty() ? ", at least " + from : ", " + from + " to " + to;
        return List.of("a number" + (unit.isEmpty() ? "" : " in " + unit) + range);
    }

    @Override
    public List<String> choice(Field.Choice answer) {
        List<String> options = new ArrayList<>();
        for (int at = 0; at < answer.options().size(); at++) {
            options.add((at + 1) + "  " + answer.options().get(at));
        }
        return options.size() <= MOST_LINES
                ? List.copyOf(options)
                : List.of(String.join(";  ", options));
    }

    @Override
    public List<String> scale(Field.Scale answer) {
        return List.of(
                "a whole number, "
                        + answer.from()
                        + " ("
                        + answer.low()
                        + ") to "
                        + answer.to()
                        + " ("
                        + answer.high()
                        + ")");
    }

    @Override
    public List<String> words(Field.Words answer) {
        return List.of("words, at most " + answer.longest() + " characters");
    }
}
