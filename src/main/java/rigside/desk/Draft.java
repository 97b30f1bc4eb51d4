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
 * @param record the sessions on record; empty while they are read
 * @param offer what they have to say to the question
 */
record Draft(
        DraftAnswers answers,
        Map<String, String> remembered,
        String typed,
        int chosen,
        Set<String> ticked,
        Optional<String> message,
        Optional<DraftRecord> record,
        DraftOffer offer) {
    /** The name problems would call the file by. */
    static final String NAME = "draft.yaml";

    Draft {
        remembered = Map.copyOf(remembered);
        ticked = Set.copyOf(ticked);
    }

    static Draft begin() {
        return at(DraftAnswers.NONE, Map.of(), Optional.empty());
    }

    /** At the first question without an answer, as it was left when it was answered before. */
    private static Draft at(
            DraftAnswers answers, Map<String, String> remembered, Optional<DraftRecord> record) {
        Optional<DraftQuestion> next = next(answers, record);
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
        return new Draft(
                answers,
                remembered,
                text ? known : "",
                chosen,
                ticked,
                Optional.empty(),
                record,
                offer(next, answers, record));
    }

    /**
     * The first question without an answer. Whose sessions count is asked right after what is
     * measured or not at all, so that sessions read late move no question.
     */
    private static Optional<DraftQuestion> next(
            DraftAnswers answers, Optional<DraftRecord> record) {
        return record.filter(read -> read.wearers().size() > 1)
                .filter(read -> answers.last().equals(DraftQuestions.MEASURES))
                .map(DraftOffer::wearer)
                .or(() -> DraftQuestions.next(answers));
    }

    private static DraftOffer offer(
            Optional<DraftQuestion> next, DraftAnswers answers, Optional<DraftRecord> record) {
        if (next.filter(each -> each.id().equals(DraftOffer.WEARER)).isPresent()) {
            return new DraftOffer(List.of(), record.orElseThrow().wearers());
        }
        return next.filter(DraftOffer::isForSpread)
                .map(each -> DraftOffer.of(each, answers, record, protocol(answers)))
                .orElse(DraftOffer.NONE);
    }

    /**
     * The same once the sessions on record are read; as it was where another question would be
     * asked for them.
     */
    Draft with(DraftRecord read) {
        Optional<DraftRecord> known = Optional.of(read);
        Optional<DraftQuestion> next = next(answers, known);
        boolean stays =
                next.map(DraftQuestion::id).equals(next(answers, record).map(DraftQuestion::id));
        return stays
                ? new Draft(
                        answers,
                        remembered,
                        typed,
                        chosen,
                        ticked,
                        message,
                        known,
                        offer(next, answers, known))
                : this;
    }

    private Draft with(String line, int option, Set<String> ticks, Optional<String> words) {
        return new Draft(answers, remembered, line, option, ticks, words, record, offer);
    }

    /** The question asked now; empty when all are answered. */
    Optional<DraftQuestion> question() {
        return next(answers, record)
                .map(offer::beside)
                .map(
                        next ->
                                next.id().equals("most") || next.id().equals("bench-time")
                                        ? DraftPlanQuestions.timed(next, answers, roundSeconds())
                                        : next);
    }

    /** Where it stands: how many are answered, and of how many as far as can be told. */
    int total() {
        boolean more = answers.has(DraftOffer.WEARER) || isAsking(DraftOffer.WEARER);
        return DraftQuestions.of(answers).size() + (more ? 1 : 0);
    }

    private boolean isAsking(String id) {
        return next(answers, record).filter(each -> each.id().equals(id)).isPresent();
    }

    /** The whole file, with good answers in the place of missing ones. */
    String text() {
        return text(answers);
    }

    /** The whole file of these answers, with good ones in the place of missing ones. */
    static String text(DraftAnswers given) {
        return DraftText.of(DraftQuestions.completed(given));
    }

    /** What the file says. */
    Protocol protocol() {
        return protocol(answers);
    }

    private static Protocol protocol(DraftAnswers given) {
        if (ProtocolReader.read(NAME, text(given)) instanceof Read.Good good) {
            return good.protocol();
        }
        throw new IllegalStateException("the answers taken give a file with problems");
    }

    private double roundSeconds() {
        return BenchTime.round(protocol());
    }

    Draft typing(String text) {
        return with(text, chosen, ticked, Optional.empty());
    }

    /**
     * With the cursor some options further down, no further than there are any; where a line is
     * typed, with what is offered in it.
     */
    Draft choosing(int by) {
        if (!offer.answers().isEmpty()) {
            return typing(offer.next(typed, by));
        }
        int last = question().map(each -> each.options().size() - 1).orElse(0);
        int to = Math.max(0, Math.min(chosen + by, last));
        return with(typed, to, ticked, Optional.empty());
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
        return with(typed, chosen, other, Optional.empty());
    }

    /** Takes the answer, or says why it cannot be one. */
    Draft take() {
        Optional<DraftQuestion> asked = question();
        if (asked.isEmpty()) {
            return this;
        }
        DraftQuestion question = asked.get();
        String answer = answer(question);
        return DraftRefusal.of(question, answer, answers, record)
                .map(this::saying)
                .orElseGet(() -> at(answers.with(question.id(), answer), remembered, record));
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
        return at(answers.without(last), known, record);
    }

    /** Whether anything would be lost by leaving. */
    boolean isBegun() {
        return !answers.all().isEmpty() || !typed.isEmpty();
    }

    private Draft saying(String words) {
        return with(typed, chosen, ticked, Optional.of(words));
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
}
