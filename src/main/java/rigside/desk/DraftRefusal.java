package rigside.desk;

import java.util.Optional;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.yaml.Problem;
import rigside.yaml.Quoted;

/** Why an answer of a draft is not taken. */
final class DraftRefusal {
    private DraftRefusal() {}

    /**
     * In words; empty when the answer can be taken.
     *
     * @param given the answers before it
     * @param record the sessions on record; empty while they are read
     */
    static Optional<String> of(
            DraftQuestion question,
            String answer,
            DraftAnswers given,
            Optional<DraftRecord> record) {
        if (answer.isEmpty() && question.mayStayOpen()) {
            return Optional.empty();
        }
        if (question.id().equals(DraftOffer.WEARER)) {
            return record.filter(read -> read.of(answer).isEmpty())
                    .map(read -> "no session on record is of '" + answer + "'");
        }
        if (answer.isEmpty() && !question.options().isEmpty()) {
            return Optional.of("nothing is ticked: Space ticks what is measured");
        }
        if (answer.isEmpty()) {
            return Optional.of("nothing is typed yet; type an answer, then press Enter");
        }
        if (question.isWhole() && !answer.matches("\\d{1,5}")) {
            return Optional.of("a whole number is asked for, such as " + question.standIn());
        }
        Optional<String> unfit =
                Quoted.refusal(answer)
                        .or(
                                () ->
                                        question.id().equals("bench-time")
                                                ? DraftPlanQuestions.refusal(answer)
                                                : Optional.empty());
        return unfit.isPresent() ? unfit : problem(given.with(question.id(), answer));
    }

    /** The first thing that would be wrong with the file. */
    private static Optional<String> problem(DraftAnswers tried) {
        Read read = ProtocolReader.read(Draft.NAME, Draft.text(tried));
        return read instanceof Read.Bad bad
                ? bad.problems().stream().findFirst().map(DraftRefusal::words)
                : Optional.empty();
    }

    private static String words(Problem problem) {
        return problem.help().isEmpty() ? problem.what() : problem.what() + "; " + problem.help();
    }
}
