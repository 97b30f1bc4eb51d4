package rigside.protocol;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Pattern;
import rigside.yaml.Entry;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** The short words of one sort that a file declares and other parts of it refer to. */
final class Ids {
    static final Pattern SHAPE = Pattern.compile("[a-z][a-z0-9-]{0,39}");

    private final String sort;
    private final boolean recorded;
    private final Set<String> declared = new LinkedHashSet<>();
    private final Set<String> titles = new HashSet<>();
    private int expected;

    /**
     * @param sort what bears these ids, for messages: {@code condition}
     * @param recorded as {@link Known}'s
     */
    Ids(String sort, boolean recorded) {
        this.sort = sort;
        this.recorded = recorded;
    }

    /** Announces one bearer, whether or not its id turns out to be readable. */
    void expect() {
        expected++;
    }

    /** An id given to a bearer. */
    Value<String> declare(Entry entry) {
        Value<String> id = entry.line();
        return id.must(
                        word -> SHAPE.matcher(word).matches(),
                        word -> "the id " + Words.quoted(word) + " is not a short plain word",
                        "write lower-case letters, digits and hyphens, such as 'with-disc'")
                .must(
                        word -> declared.add(word),
                        word -> "the id '" + word + "' is given to more than one " + sort,
                        "give each its own");
    }

    /**
     * The title of a bearer: at the bench they are told apart by it alone. Refused since 28
     * November 2026; sessions of before may have twins.
     */
    Value<String> title(Entry entry) {
        return entry.line()
                .must(
                        words -> titles.add(words) || recorded,
                        words ->
                                "the title "
                                        + Words.quoted(words)
                                        + " is given to more than one "
                                        + sort,
                        "give each its own; it is by their titles that they are told apart");
    }

    /** An id that was checked when it was declared elsewhere. */
    void add(String id) {
        declared.add(id);
    }

    /** An id used to refer to a bearer. */
    Value<String> refer(Value<String> id) {
        return id.must(
                word -> declared.contains(word) || isIncomplete(),
                word -> "no " + sort + " has the id " + Words.quoted(word),
                id.toOptional().map(this::cure).orElse(""));
    }

    private String cure(String word) {
        if (declared.isEmpty()) {
            return "give one in this file that id";
        }
        return word.contains(",")
                ? "write several as a list, such as [" + String.join(", ", declared) + "]"
                : Words.suggestion(word, declared);
    }

    Set<String> all() {
        return declared;
    }

    /** Some bearer has no id of its own, so that an unknown id may be meant for it. */
    private boolean isIncomplete() {
        return expected > declared.size();
    }
}
