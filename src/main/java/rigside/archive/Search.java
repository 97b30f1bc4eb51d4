package rigside.archive;

import java.util.List;
import java.util.stream.Stream;

/**
 * Words to be found in a session: each of them somewhere in its protocol's title and question, in
 * the conditions and what is worn in them, in what was answered about it, in its folder's name, or
 * in a verdict it came to once it is closed. Capitals, accents and the order of the words make no
 * difference.
 *
 * @param words folded, none empty
 */
public record Search(List<String> words) {
    public Search {
        words =
                words.stream()
                        .map(Folded::of)
                        .flatMap(each -> Stream.of(each.split(" ", -1)))
                        .filter(each -> !each.isEmpty())
                        .toList();
    }

    /** Of words as they were typed, with spaces between them. */
    public static Search of(String typed) {
        return new Search(List.of(typed));
    }

    /** Whether nothing is looked for, so that every session is found. */
    public boolean isForAll() {
        return words.isEmpty();
    }

    public boolean finds(Archived session) {
        return isForAll() || finds(text(session));
    }

    /**
     * The same for who asks again and again.
     *
     * @param text of the session
     */
    public boolean finds(String text) {
        return words.stream().allMatch(text::contains);
    }

    /** All of a session that words are looked for in. */
    public static String text(Archived session) {
        StringBuilder text = new StringBuilder();
        add(session.title(), text);
        add(session.question(), text);
        for (Archived.Worn each : session.conditions()) {
            add(each.title(), text);
            add(each.piece(), text);
        }
        for (Archived.Fact each : session.facts()) {
            add(each.answer(), text);
        }
        for (Archived.Finding each : session.findings()) {
            add(each.words(), text);
        }
        add(session.name(), text);
        return text.toString();
    }

    /** What is searched never runs on from one text into the next: no word holds a line end. */
    private static void add(String part, StringBuilder text) {
        text.append(Folded.of(part)).append('\n');
    }
}
