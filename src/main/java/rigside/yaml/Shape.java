package rigside.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** How the value of a key is written in a file, as far as it can be said without the whole file. */
public sealed interface Shape {
    <R> R match(Cases<R> cases);

    /** The elements a value of this shape may hold right away. */
    default List<Element> elements() {
        return List.of();
    }

    /** One case for each shape. */
    interface Cases<R> {
        R line(Line shape);

        R text(Text shape);

        R numeric(Numeric shape);

        R whole(Whole shape);

        R yesOrNo(YesOrNo shape);

        R word(Word shape);

        R itself(Itself shape);

        R items(Items shape);

        R oneOrItems(OneOrItems shape);

        R group(Group shape);

        R oneOf(OneOf shape);
    }

    /**
     * A text of one line.
     *
     * @param words what it is: {@code a time}
     * @param pattern a regular expression for the whole line that both Java and JSON Schema (ECMA
     *     262) understand; empty for any text
     * @param example a line that is right
     */
    record Line(String words, String pattern, String example) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.line(this);
        }
    }

    /** A text that may run over several lines. */
    record Text() implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.text(this);
        }
    }

    /**
     * A number.
     *
     * @param least its lower limit, negative infinity for none
     * @param isLeastTaken whether the lower limit itself is taken
     * @param most its upper limit, itself taken; infinity for none
     */
    record Numeric(double least, boolean isLeastTaken, double most) implements Shape {
        /** Any number. */
        public static final Numeric ANY =
                new Numeric(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY);

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.numeric(this);
        }
    }

    /** A whole number within limits, both taken. */
    record Whole(int least, int most) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whole(this);
        }
    }

    /** Yes or no. */
    record YesOrNo() implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.yesOrNo(this);
        }
    }

    /**
     * One of a few words.
     *
     * @param meanings what each means, in the order they are told
     */
    record Word(Map<String, String> meanings) implements Shape {
        public Word {
            meanings = new LinkedHashMap<>(meanings);
        }

        /** The constants of an enum, as {@link Entry#oneOf(Class)} reads them. */
        public static <E extends Enum<E>> Word of(Class<E> type, Function<E, String> meaning) {
            Map<String, String> meanings = new LinkedHashMap<>();
            for (E constant : type.getEnumConstants()) {
                meanings.put(word(constant), meaning.apply(constant));
            }
            return new Word(meanings);
        }

        /** A constant of an enum as a file writes it. */
        public static String word(Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.word(this);
        }
    }

    /** The one word that says which element a group of keys is. */
    record Itself(String word) implements Shape {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.itself(this);
        }
    }

    /** A list of at least so many items. */
    record Items(Shape item, int least) implements Shape {
        @Override
        public List<Element> elements() {
            return item.elements();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.items(this);
        }
    }

    /** One item standing alone, or a list of at least one. */
    record OneOrItems(Shape item) implements Shape {
        @Override
        public List<Element> elements() {
            return item.elements();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.oneOrItems(this);
        }
    }

    /** A group of keys. */
    record Group(Element element) implements Shape {
        @Override
        public List<Element> elements() {
            return List.of(element);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.group(this);
        }
    }

    /**
     * A group of keys of which one says which of several elements it is.
     *
     * @param name what they have in common: {@code step}
     * @param key the key that says which: of shape {@link Itself} in each
     * @param elements those that may stand here; at least one
     * @param misplaced those that are known but have no place here
     */
    record OneOf(String name, String key, List<Element> elements, List<Element> misplaced)
            implements Shape {
        public OneOf {
            elements = List.copyOf(elements);
            misplaced = List.copyOf(misplaced);
        }

        /** The word that says which element a group is. */
        public String word(Element element) {
            return ((Itself) element.key(key).orElseThrow().shape()).word();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.oneOf(this);
        }
    }
}
