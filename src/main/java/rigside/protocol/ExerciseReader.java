package rigside.protocol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigside.measure.Dimension;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads one exercise and its sample windows. */
final class ExerciseReader {
    private static final String EXAMPLE = "15 to 55 s";

    private ExerciseReader() {}

    static Value<Exercise> read(Entry entry) {
        return entry.fields(ExerciseReader::exercise);
    }

    private static Value<Exercise> exercise(Fields fields) {
        fields.is(ExerciseElements.EXERCISE);
        Value<String> title = fields.required("title").line();
        Value<String> say = fields.optional("say").text();
        Value<Double> seconds = QuantityText.seconds(fields.required("for"));
        Value<Boolean> counted = fields.optional("counted").yesOrNo();
        Value<List<Window>> ambient =
                fields.optional("ambient").oneOrList(item -> window(item, seconds));
        Value<Window> mask = window(fields.optional("mask"), seconds);
        Value<Window> pressure = window(fields.optional("pressure"), seconds);
        List<Window> ordered = inTime(ambient.orElse(List.of()));
        refuseOverlap(ambient, ordered, mask);
        return fields.make(
                () ->
                        new Exercise(
                                title.get(),
                                say.orElse(""),
                                seconds.get(),
                                counted.orElse(true),
                                ordered,
                                mask.toOptional(),
                                pressure.toOptional()));
    }

    private static Value<Window> window(Entry entry, Value<Double> exerciseSeconds) {
        Value<String> text = entry.line();
        return RangeText.read(text, Dimension.TIME, EXAMPLE)
                .must(
                        range -> range.from().value() >= 0,
                        range -> text.label() + " begins before the exercise does",
                        "count its seconds from the start of the exercise, such as '0 to 10 s'")
                .must(
                        range -> range.from().si() < range.to().si(),
                        range ->
                                text.label()
                                        + " is '"
                                        + text.get()
                                        + "', its end not after its start",
                        "write the earlier second first, such as '" + EXAMPLE + "'")
                .map(range -> new Window(range.from().si(), range.to().si()))
                .must(
                        window ->
                                !exerciseSeconds.isPresent()
                                        || window.to() <= exerciseSeconds.get(),
                        window ->
                                text.label()
                                        + " ends at "
                                        + QuantityText.plain(window.to())
                                        + " s, after the exercise, which takes "
                                        + QuantityText.plain(exerciseSeconds.get())
                                        + " s",
                        "end it within the exercise, or make the exercise longer");
    }

    private static List<Window> inTime(List<Window> windows) {
        return windows.stream().sorted(Comparator.comparingDouble(Window::from)).toList();
    }

    /** One counter samples one air at a time; the manometer may read beside it. */
    private static void refuseOverlap(
            Value<List<Window>> ambient, List<Window> ordered, Value<Window> mask) {
        List<Window> all = new ArrayList<>(ordered);
        mask.toOptional().ifPresent(all::add);
        List<Window> sequence = inTime(all);
        for (int i = 1; i < sequence.size(); i++) {
            if (sequence.get(i).from() < sequence.get(i - 1).to()) {
                (mask.isPresent() ? mask : ambient)
                        .wrong(
                                "sample windows overlap at "
                                        + QuantityText.plain(sequence.get(i).from())
                                        + " s",
                                "end one window before the next begins: one counter samples one"
                                        + " air at a time");
                return;
            }
        }
    }
}
