package rigside.guide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** Keys in words. */
final class KeyWords {
    private KeyWords() {}

    /** What it means and what holds otherwise, in one text. */
    static String whole(Key key) {
        return (key.meaning() + " " + otherwise(key) + words(key)).strip();
    }

    /** What holds when it is left out, or when it has to be there: one sentence or nothing. */
    static String otherwise(Key key) {
        if (key.otherwise().isEmpty()) {
            return "";
        }
        return switch (key.need()) {
            case REQUIRED -> "";
            case OPTIONAL -> "If left out: " + key.otherwise() + ".";
            case SOMETIMES -> "Required " + key.otherwise() + ".";
        };
    }

    private static String words(Key key) {
        return meanings(key).entrySet().stream()
                .map(word -> " " + word.getKey() + ": " + word.getValue() + ".")
                .collect(Collectors.joining());
    }

    /**
     * The words a key takes with what each means, where each means something of its own; of units
     * nothing: their page tells.
     */
    static Map<String, String> meanings(Key key) {
        return key.shape() instanceof Shape.Word word && isTold(word)
                ? new LinkedHashMap<>(word.meanings())
                : Map.of();
    }

    private static boolean isTold(Shape.Word word) {
        return word.meanings().values().stream().distinct().count() == word.meanings().size();
    }

    /** How its value is written, in words that fit "write ...". */
    static String form(Shape shape) {
        return shape.match(FORMS);
    }

    private static final Shape.Cases<String> FORMS =
            new Shape.Cases<>() {
                @Override
                public String line(Shape.Line shape) {
                    return shape.example().isEmpty()
                            ? shape.words()
                            : shape.words() + ", such as " + shape.example();
                }

                @Override
                public String text(Shape.Text shape) {
                    return "text, over several lines if need be";
                }

                @Override
                public String numeric(Shape.Numeric shape) {
                    if (Double.isInfinite(shape.least())) {
                        return "a number";
                    }
                    String most = plain(shape.most());
                    return shape.isLeastTaken()
                            ? "a number from " + plain(shape.least()) + " to " + most
                            : "a number above " + plain(shape.least()) + ", at most " + most;
                }

                private String plain(double number) {
                    return number == Math.rint(number)
                            ? Long.toString((long) number)
                            : Double.toString(number);
                }

                @Override
                public String whole(Shape.Whole shape) {
                    return shape.least() == shape.most()
                            ? "the number " + shape.least()
                            : "a whole number from " + shape.least() + " to " + shape.most();
                }

                @Override
                public String yesOrNo(Shape.YesOrNo shape) {
                    return "yes or no";
                }

                @Override
                public String word(Shape.Word shape) {
                    if (shape.meanings().size() <= MOST_WORDS) {
                        return String.join(" or ", shape.meanings().keySet());
                    }
                    return isTold(shape)
                            ? "one of the words below"
                            : "a unit (see the page 'units')";
                }

                @Override
                public String itself(Shape.Itself shape) {
                    return "the word " + shape.word();
                }

                @Override
                public String items(Shape.Items shape) {
                    return "a list of "
                            + (shape.least() > 1 ? shape.least() + " or more: " : "one or more: ")
                            + form(shape.item());
                }

                @Override
                public String oneOrItems(Shape.OneOrItems shape) {
                    return form(shape.item()) + "; or a list of such";
                }

                @Override
                public String group(Shape.Group shape) {
                    return "keys of '" + shape.element().name() + "'";
                }

                @Override
                public String oneOf(Shape.OneOf shape) {
                    List<String> words = shape.elements().stream().map(shape::word).toList();
                    return "keys of a " + shape.name() + " (" + String.join(", ", words) + ")";
                }
            };

    private static final int MOST_WORDS = 8;
}
