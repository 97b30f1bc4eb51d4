package rigside.desk;

import static rigside.desk.DraftAnswers.BREATHING;
import static rigside.desk.DraftAnswers.NUMBER;
import static rigside.desk.DraftAnswers.PRESSURE;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rigside.desk.DraftQuestion.Kind;
import rigside.desk.DraftQuestion.Option;

/**
 * The questions of a draft, in order. Which there are depends on the answers before them. Figures
 * in them are those of the shipped protocols; where there is no source they say so.
 */
final class DraftQuestions {
    /** More conditions make rounds longer than a day. */
    private static final int MOST_CONDITIONS = 6;

    /** The id of the question what is measured. */
    static final String MEASURES = "measures";

    private DraftQuestions() {}

    /** All that have to be answered, as far as the answers given can tell. */
    static List<DraftQuestion> of(DraftAnswers given) {
        List<DraftQuestion> all = new ArrayList<>(compared(given));
        all.add(measures());
        all.addAll(DraftMeasureQuestions.of(given));
        all.addAll(DraftPlanQuestions.of(given));
        all.add(question(given));
        return List.copyOf(all);
    }

    /** The first without an answer. */
    static Optional<DraftQuestion> next(DraftAnswers given) {
        return of(given).stream().filter(each -> !given.has(each.id())).findFirst();
    }

    /** The answers with good ones in the place of those that are not there yet. */
    static DraftAnswers completed(DraftAnswers given) {
        DraftAnswers whole = given;
        for (Optional<DraftQuestion> open = next(whole); open.isPresent(); open = next(whole)) {
            whole = whole.with(open.get().id(), open.get().standIn());
        }
        return whole;
    }

    private static List<DraftQuestion> compared(DraftAnswers given) {
        List<DraftQuestion> all = new ArrayList<>();
        all.add(
                DraftQuestion.typed(
                        "title",
                        "What is compared? One line, the protocol's title.",
                        "A comparison",
                        "For example: Half mask with and without a pre-filter disc (invented)."));
        all.add(
                DraftQuestion.one(
                        "conditions",
                        "How many ways of wearing are compared?",
                        IntStream.rangeClosed(2, MOST_CONDITIONS)
                                .mapToObj(
                                        count ->
                                                new Option(
                                                        String.valueOf(count),
                                                        count + " conditions"))
                                .toList(),
                        "Two settle soonest. Each further one is compared with the first, makes a"
                                + " round longer, and has to share the confidence."));
        for (int at = 1; at <= given.conditions(); at++) {
            all.addAll(condition(given, at));
        }
        return all;
    }

    private static List<DraftQuestion> condition(DraftAnswers given, int at) {
        String name = given.of("condition-" + at);
        return List.of(
                DraftQuestion.typed(
                        "condition-" + at,
                        "Name of condition " + at + " of " + given.conditions() + "?",
                        "Condition " + at,
                        at == 1
                                ? "This one is the reference: the others are compared with it. For"
                                        + " example: Half mask as it is."
                                : "It is compared with '" + given.of("condition-1") + "'."),
                DraftQuestion.usually(
                        "piece-" + at,
                        "Which piece is worn in '" + name + "'?",
                        name.isEmpty() ? "piece " + at : name,
                        "The physical thing, as marked: one piece cannot speak for all of its"
                                + " make."),
                DraftQuestion.usually(
                        "worn-" + at,
                        "How often was that piece worn before?",
                        "0",
                        "A whole number. Masks change as they are worn, so it is recorded."));
    }

    private static DraftQuestion measures() {
        return new DraftQuestion(
                MEASURES,
                "What is measured? One or more.",
                List.of(
                        "Seal and breathing belong together where a change may alter the fit: a"
                                + " leak is a second path for the air, and makes breathing look"
                                + " easier."),
                new Kind.Several(
                        List.of(
                                new Option(SEAL, "how well it seals: fit factor, particle counter"),
                                new Option(
                                        BREATHING,
                                        "how hard it is to breathe: timed inhalations at a gauge"),
                                new Option(
                                        PRESSURE,
                                        "pressure of ordinary breathing: gauge, during exercises"),
                                new Option(NUMBER, "another number, typed once a donning"))),
                SEAL + DraftAnswers.COMMA + BREATHING,
                SEAL,
                false);
    }

    private static DraftQuestion question(DraftAnswers given) {
        List<String> asked = new ArrayList<>();
        if (given.measures(SEAL)) {
            asked.add("how well the mask seals");
        }
        if (given.measures(BREATHING) || given.measures(PRESSURE)) {
            asked.add("how hard it is to breathe");
        }
        if (given.measures(NUMBER)) {
            asked.add("what is typed");
        }
        return DraftQuestion.usually(
                "question",
                "Which question should the result answer?",
                "Does the change alter " + String.join(", and ", asked) + "?",
                "It is written down before the first donning, so that nobody can fit it to the"
                        + " result afterwards.");
    }
}
