package rigside.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigside.desk.DraftQuestion.Kind;
import rigside.desk.DraftQuestion.Option;
import rigside.protocol.BenchTime;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.yaml.Problem;
import rigside.yaml.Quoted;

/**
 * Where an interview stands. An answer is taken only if the file it leads to, with good answers in
 * the place of those still missing, has no problems; so the finished file has none.
 *
 * @param answers taken so far
 * @param remembered answers taken before, by the id of their question, that a question gone back to
 *     begins with
 * @param typed the line typed so far
 * @param chosen the position of the option the cursor is on
 * @param ticked the words of the options ticked
 * @param message why an answer was not taken, if one was not
 */
record Draft(
        DraftAnswers answers,
        Map<String, String> remembered,
        String typed,
        int chosen,
        Set<String> ticked,
        Optional<String> message) {
    /** The name problems would call the file by. */
    private static final String NAME = "draft.yaml";

    Draft {
        remembered = Map.copyOf(remembered);
        ticked = Set.copyOf(ticked);
    }

    static Draft begin() {
        return at(DraftAnswers.NONE, Map.of());
    }

    /** At the first question without an answer, as it was left when it was answered before. */
    private static Draft at(DraftAnswers answers, Map<String, String> remembered) {
        Optional<DraftQuestion> next = DraftQuestions.next(answers);
        String known = next.map(each -> remembered.getOrDefault(each.id(), "")).orElse("");
        String start = next.filter(each -> known.isEmpty()).map(DraftQuestion::usual).orElse(known);
        boolean text = next.filter(each -> each.kind() instanceof Kind.Text).isPresent();
        List<String> words =
                next.map(each -> each.options().stream().map(Option::word).toList())
                        .orElse(List.of());
        boolean several = next.filter(each -> each.kind() instanceof Kind.Several).isPresent();
        Set<String> ticked =
                several ? Set.of(start.split(DraftAnswers.COMMA, -1)) : Set.<String>of();
        int chosen = several ? 0 : Math.max(0, words.indexOf(start));
        return new Draft(answers, remembered, text ? known : "", chosen, ticked, Optional.empty());
    }

    /** The question asked now; empty when all are answered. */
    Optional<DraftQuestion> question() {
        return DraftQuestions.next(answers)
                .map(
                        next ->
                                next.id().equals("most") || next.id().equals("bench-time")
                                        ? DraftPlanQuestions.timed(next, answers, roundSeconds())
                                        : next);
    }

    /** Where it stands: how many are answered, and of how many as far as can be told. */
    int total() {
        return DraftQuestions.of(answers).size();
    }

    /** The whole file, with good answers in the place of missing ones. */
    String text() {
        return DraftText.of(DraftQuestions.completed(answers));
    }

    /** What the file says. */
    Protocol protocol() {
        if (ProtocolReader.read(NAME, text()) instanceof Read.Good good) {
            return good.protocol();
        }
        throw new IllegalStateException("the answers taken give a file with problems");
    }

    private double roundSeconds() {
        return BenchTime.round(protocol());
    }

    Draft typing(String text) {
        return new Draft(answers, remembered, text, chosen, ticked, Optional.empty());
    }

    /** With the cursor some options further down, no further than there are any. */
    Draft choosing(int by) {
        int last = question().map(each -> each.options().size() - 1).orElse(0);
        int to = Math.max(0, Math.min(chosen + by, last));
        return new Draft(answers, remembered, typed, to, ticked, Optional.empty());
    }

    /** With the option under the cursor ticked, or not any more. */
    Draft ticking() {
        Optional<DraftQuestion> asked =
                question().filter(each -> each.kind() instanceof Kind.Several);
        if (asked.isEmpty()) {
            return this;
        }
        String word = asked.get().options().get(chosen).word();
        Set<String> other = new LinkedHashSet<>(ticked);
        if (!other.remove(word)) {
            other.add(word);
        }
        return new Draft(answers, remembered, typed, chosen, other, Optional.empty());
    }

    /** Takes the answer, or says why it cannot be one. */
    Draft take() {
        Optional<DraftQuestion> asked = question();
        if (asked.isEmpty()) {
            return this;
        }
        DraftQuestion question = asked.get();
        String answer = answer(question);
        return refusal(question, answer)
                .map(this::saying)
                .orElseGet(() -> at(answers.with(question.id(), answer), remembered));
    }

    /** At the question before this one, as it was answered; the first has none before it. */
    Draft back() {
        List<String> given = new ArrayList<>(answers.all().keySet());
        if (given.isEmpty()) {
            return this;
        }
        String last = given.get(given.size() - 1);
        Map<String, String> known = new LinkedHashMap<>(remembered);
        known.put(last, answers.of(last));
        return at(answers.without(last), known);
    }

    /** Whether anything would be lost by leaving. */
    boolean isBegun() {
        return !answers.all().isEmpty() || !typed.isEmpty();
    }

    private Draft saying(String words) {
        return new Draft(answers, remembered, typed, chosen, ticked, Optional.of(words));
    }

    private String answer(DraftQuestion question) {
        if (question.kind() instanceof Kind.One) {
            return question.options().get(chosen).word();
        }
        if (question.kind() instanceof Kind.Several) {
            return String.join(
                    DraftAnswers.COMMA,
                    question.options().stream()
                            .map(Option::word)
                            .filter(ticked::contains)
                            .toList());
        }
        return typed.isBlank() ? question.usual() : typed.strip();
    }

    private Optional<String> refusal(DraftQuestion question, String answer) {
        if (answer.isEmpty() && question.mayStayOpen()) {
            return Optional.empty();
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
        return unfit.isPresent() ? unfit : problem(answers.with(question.id(), answer));
    }

    /** The first thing that would be wrong with the file. */
    private static Optional<String> problem(DraftAnswers tried) {
        Read read = ProtocolReader.read(NAME, DraftText.of(DraftQuestions.completed(tried)));
        return read instanceof Read.Bad bad
                ? bad.problems().stream().findFirst().map(Draft::words)
                : Optional.empty();
    }

    private static String words(Problem problem) {
        return problem.help().isEmpty() ? problem.what() : problem.what() + "; " + problem.help();
    }
}
