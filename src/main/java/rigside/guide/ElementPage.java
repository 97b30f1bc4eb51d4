package rigside.guide;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigside.protocol.ProtocolElements;
import rigside.yaml.Element;
import rigside.yaml.Key;

/** The page of one element: what it is for, its keys, an example, what to heed. */
final class ElementPage {
    private static final int KEY_COLUMN = 20;

    private ElementPage() {}

    /**
     * The page of an element.
     *
     * @param all every element of the file, to tell where this one stands
     */
    static Page of(Element element, List<Element> all) {
        StringBuilder page = new StringBuilder(heading(element.name()));
        page.append(Wrapped.text(element.about(), 0)).append('\n');
        String where = where(element, all);
        if (!where.isEmpty()) {
            page.append(Wrapped.text("It stands in " + where + ".", 0)).append('\n');
        }
        if (!element.cautions().isEmpty()) {
            page.append("To heed\n\n");
            element.cautions().forEach(caution -> page.append(item(caution, 0)));
            page.append('\n');
        }
        page.append("Keys (* must be there)\n\n");
        element.keys().forEach(key -> page.append(key(key)));
        for (List<String> keys : element.exactlyOneOf()) {
            String choice = "Exactly one of " + String.join(", ", keys) + " must be there.";
            page.append('\n').append(Wrapped.text(choice, 2));
        }
        page.append("\nExample (invented)\n\n").append(Examples.of(element).indent(4));
        return new Page(element.name(), summary(element), page.toString());
    }

    static String heading(String words) {
        return words + "\n" + "=".repeat(words.length()) + "\n\n";
    }

    /** A key: its name, how it is written, what it means, what holds when it is left out. */
    static String key(Key key) {
        String name = (key.need() == Key.Need.REQUIRED ? "* " : "  ") + key.name();
        String form = Wrapped.text(KeyWords.form(key.shape()), KEY_COLUMN);
        String first =
                name.length() < KEY_COLUMN
                        ? name + form.substring(name.length())
                        : name + "\n" + form;
        StringBuilder told =
                new StringBuilder(first)
                        .append(
                                Wrapped.text(
                                        key.meaning() + " " + KeyWords.otherwise(key), KEY_COLUMN));
        KeyWords.meanings(key)
                .forEach((word, meaning) -> told.append(item(word + ": " + meaning, KEY_COLUMN)));
        if (!key.with().isEmpty()) {
            told.append(
                    Wrapped.text(
                            "Only together with " + String.join(", ", key.with()) + ".",
                            KEY_COLUMN));
        }
        return told.toString();
    }

    private static String where(Element element, List<Element> all) {
        return all.stream()
                .flatMap(
                        outer ->
                                outer.keys().stream()
                                        .filter(key -> holds(key, element))
                                        .map(
                                                key ->
                                                        "'"
                                                                + key.name()
                                                                + "' of '"
                                                                + outer.name()
                                                                + "'"))
                .collect(Collectors.joining(", "));
    }

    private static boolean holds(Key key, Element element) {
        return key.shape().elements().stream()
                .anyMatch(each -> ProtocolElements.isSameKind(each, element));
    }

    /** The first sentence of what it is for, for a list. */
    private static String summary(Element element) {
        String about = element.about();
        int end = about.indexOf(". ");
        int colon = about.indexOf(": ");
        int cut = colon > 0 && (end < 0 || colon < end) ? colon : end;
        String first = cut < 0 ? about : about.substring(0, cut);
        String plain = first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
        return plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
    }

    private static String item(String text, int indent) {
        return " ".repeat(indent) + "- " + Wrapped.text(text, indent + 2).substring(indent + 2);
    }
}
