package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Subject;

/**
 * What sessions by one protocol have in common, which the index therefore holds once.
 *
 * @param protocol empty when it was never read
 * @param asked what was asked about the session and answered
 */
record About(
        Optional<Archived.Followed> protocol,
        List<Asked> asked,
        List<Archived.Worn> conditions,
        List<Archived.Measured> measures) {

    /** A question about the session, without its answer. */
    record Asked(String id, String question, Optional<Subject> about) {}

    static About of(Archived session) {
        return new About(
                session.protocol(),
                session.facts().stream()
                        .map(each -> new Asked(each.id(), each.question(), each.about()))
                        .toList(),
                session.conditions(),
                session.measures());
    }

    /**
     * The facts with their answers.
     *
     * @throws IllegalArgumentException if there is not one answer for each question
     */
    List<Archived.Fact> facts(List<String> answers) {
        if (answers.size() != asked.size()) {
            throw new IllegalArgumentException(
                    answers.size() + " answers to " + asked.size() + " questions");
        }
        List<Archived.Fact> facts = new ArrayList<>();
        for (int at = 0; at < answers.size(); at++) {
            Asked each = asked.get(at);
            facts.add(new Archived.Fact(each.id(), each.question(), answers.get(at), each.about()));
        }
        return facts;
    }
}
