package rigside.yaml;

/** Checks on texts after quotes and escapes are resolved. */
final class Texts {
    private Texts() {}

    static Value<String> oneLine(Value<String> text) {
        return safe(text)
                .must(
                        written -> written.indexOf('\n') < 0,
                        written -> text.label() + " runs over several lines",
                        "write it on one line")
                .then(written -> notLonger(text, Entry.LONGEST_LINE));
    }

    static Value<String> anyLines(Value<String> text) {
        return safe(text).then(written -> notLonger(text, Entry.LONGEST_TEXT));
    }

    private static Value<String> safe(Value<String> text) {
        return text.must(
                        written -> !written.isEmpty(),
                        written -> text.label() + " is empty",
                        "write the text, or leave the key out")
                .then(
                        written ->
                                written.codePoints()
                                        .filter(point -> point != '\n' && !Characters.isSafe(point))
                                        .boxed()
                                        .findFirst()
                                        .map(
                                                point ->
                                                        text.<String>wrong(
                                                                text.label()
                                                                        + " holds the hidden"
                                                                        + " character "
                                                                        + Characters.name(point),
                                                                point == '\t'
                                                                        ? "write spaces instead of"
                                                                                + " the tab"
                                                                        : "delete it"))
                                        .orElse(text));
    }

    private static Value<String> notLonger(Value<String> text, int most) {
        return text.must(
                written -> written.codePointCount(0, written.length()) <= most,
                written ->
                        text.label()
                                + " is "
                                + written.codePointCount(0, written.length())
                                + " characters long",
                "shorten it to " + most + " characters");
    }
}
