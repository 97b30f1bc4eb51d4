package rigside.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What was answered so far when a protocol is drafted.
 *
 * @param all the answers as typed or chosen, by the id of their question, in the order given; an
 *     empty one was left open
 */
record DraftAnswers(Map<String, String> all) {
    static final DraftAnswers NONE = new DraftAnswers(Map.of());

    /** The words for what can be measured. */
    static final String SEAL = "seal";

    static final String BREATHING = "breathing";
    static final String PRESSURE = "pressure";
    static final String NUMBER = "number";

    /** Parts the words of an answer that ticks several. */
    static final String COMMA = ",";

    private static final int LONGEST_ID = 40;

    DraftAnswers {
        all = Collections.unmodifiableMap(new LinkedHashMap<>(all));
    }

    DraftAnswers with(String id, String answer) {
        Map<String, String> more = new LinkedHashMap<>(all);
        more.put(id, answer);
        return new DraftAnswers(more);
    }

    DraftAnswers without(String id) {
        Map<String, String> fewer = new LinkedHashMap<>(all);
        fewer.remove(id);
        return new DraftAnswers(fewer);
    }

    /** The id of the question answered last; empty text when none is. */
    String last() {
        return all.keySet().stream().reduce("", (earlier, later) -> later);
    }

    boolean has(String id) {
        return all.containsKey(id);
    }

    /** An answer; empty text when there is none yet. */
    String of(String id) {
        return all.getOrDefault(id, "");
    }

    /** A whole number; what stands in for it where none was given. */
    int number(String id, int otherwise) {
        String text = of(id);
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : otherwise;
    }

    int conditions() {
        return number("conditions", 2);
    }

    boolean measures(String word) {
        return List.of(of("measures").split(COMMA, -1)).contains(word);
    }

    /** Whether something is done by exercises. */
    boolean exercises() {
        return measures(SEAL) || measures(PRESSURE);
    }

    /** Whether a gauge is read. */
    boolean gauge() {
        return measures(BREATHING) || measures(PRESSURE);
    }

    /** The ids of the conditions: their names as far as an id can be made of them. */
    List<String> conditionIds() {
        Set<String> ids = new LinkedHashSet<>();
        for (int at = 1; at <= conditions(); at++) {
            String id = id(of("condition-" + at));
            ids.add(
                    id.isEmpty() || ids.contains(id)
                            ? "condition-" + at + "-of-" + conditions()
                            : id);
        }
        return new ArrayList<>(ids);
    }

    /** Lower-case letters, digits and hyphens of a text, beginning with a letter; may be empty. */
    static String id(String text) {
        String plain =
                text.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^[^a-z]+", "");
        String cut = plain.substring(0, Math.min(LONGEST_ID, plain.length()));
        return cut.replaceAll("-+$", "");
    }
}
