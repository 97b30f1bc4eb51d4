package rigside.archive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigside.protocol.Subject;

/**
 * What was answered about the mask and is not the same in all sessions set together. How it was
 * written makes no difference, as in searching.
 */
final class AnsweredUnlike {
    /** So many answers are told; hundreds of sessions may have as many. */
    private static final int NAMED = 5;

    private AnsweredUnlike() {}

    /**
     * A sentence for each question that has several answers; may be empty.
     *
     * @param sessions in the order in which their answers are told; who did not answer says nothing
     */
    static List<String> remarks(List<Archived> sessions) {
        Map<String, Map<String, String>> answers = new LinkedHashMap<>();
        sessions.stream()
                .flatMap(each -> each.facts().stream())
                .filter(fact -> fact.about().equals(Optional.of(Subject.MASK)))
                .forEach(
                        fact ->
                                answers.computeIfAbsent(
                                                fact.question(), none -> new LinkedHashMap<>())
                                        .putIfAbsent(
                                                Folded.of(fact.answer()),
                                                "'" + fact.answer() + "'"));
        return answers.entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .map(
                        each ->
                                "Not the same mask, it seems: '"
                                        + each.getKey()
                                        + "' was answered "
                                        + some(List.copyOf(each.getValue().values()))
                                        + ". Part of what differs may be that.")
                .toList();
    }

    private static String some(List<String> answers) {
        return answers.size() <= NAMED
                ? Names.list(answers)
                : String.join(", ", answers.subList(0, NAMED)) + " and more";
    }
}
