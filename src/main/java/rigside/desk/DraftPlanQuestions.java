package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.desk.DraftQuestion.Option;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.BenchTime;
import rigside.protocol.Plan;

/** What is asked about how often, and about what is seen meanwhile. */
final class DraftPlanQuestions {
    /** Rounds that settle ordinary questions, see the figures at what would matter. */
    private static final int USUAL_MOST = 10;

    private static final Pattern TIME = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,3})?) *(s|min|h)");

    private DraftPlanQuestions() {}

    static List<DraftQuestion> of(DraftAnswers given) {
        return List.of(
                DraftQuestion.usually(
                        "fewest",
                        "After how many rounds may it be looked at first?",
                        "3",
                        "A round is one donning of each condition. From then on it is looked at"
                                + " after each, at no higher chance of a wrong claim. Before 3 there is"
                                + " hardly any spread to judge by."),
                DraftQuestion.open(
                        "bench-time",
                        "How much time at the bench can you spend in all?",
                        "Such as '8 h', also over several days; a session can be left and resumed."
                                + " Leave it empty to say rounds instead."),
                most(given),
                DraftQuestion.one(
                        "conceal",
                        "Until when are times and results concealed from you?",
                        List.of(
                                new Option("donning", "until each donning ends (usual)"),
                                new Option("session", "until the session ends (strictest)"),
                                new Option("shown", "not at all")),
                        "Breathing effort adapts to what was seen without one's knowing, so that"
                                + " what is shown changes the next trial."));
    }

    /**
     * The same question with what is known of bench time.
     *
     * @param roundSeconds how long a round takes by the answers so far
     */
    static DraftQuestion timed(DraftQuestion asked, DraftAnswers given, double roundSeconds) {
        String round = "By your answers a round takes about " + BenchTime.words(roundSeconds) + ".";
        List<String> why = new ArrayList<>(asked.why());
        if (!asked.id().equals("most")) {
            why.add(round);
            return asked.with(asked.usual(), why);
        }
        OptionalDouble seconds = seconds(given.of("bench-time"));
        int fewest = given.number("fewest", 3);
        String usual = asked.usual();
        if (seconds.isPresent()) {
            int holds = (int) Math.min(Plan.MOST_ROUNDS, seconds.getAsDouble() / roundSeconds);
            round += " " + given.of("bench-time") + " hold " + holds + ".";
            if (holds < fewest) {
                round += " That is fewer than the " + fewest + " before the first look.";
            }
            usual = String.valueOf(Math.max(fewest, even(holds, fewest, given.conditions())));
        }
        why.add(round);
        return asked.with(usual, why);
    }

    /** Why a bench time cannot be one; empty when it can, or is left open. */
    static Optional<String> refusal(String benchTime) {
        return benchTime.isEmpty() || seconds(benchTime).isPresent()
                ? Optional.empty()
                : Optional.of("it is no time: write a number and min or h, such as '8 h'");
    }

    private static DraftQuestion most(DraftAnswers given) {
        int fewest = given.number("fewest", 3);
        int conditions = given.conditions();
        int most = Math.max(fewest, even(USUAL_MOST, fewest, conditions));
        return DraftQuestion.usually(
                "most",
                "How many rounds at most?",
                String.valueOf(Math.min(Plan.MOST_ROUNDS, most)),
                "After them the plan is used up, whatever came out; it often ends earlier. A"
                        + " multiple of "
                        + conditions
                        + " lets each condition come first equally often.");
    }

    /** The most rounds in which each condition comes first equally often, if there are enough. */
    private static int even(int rounds, int fewest, int conditions) {
        int even = rounds - rounds % conditions;
        return even >= fewest ? even : rounds;
    }

    private static OptionalDouble seconds(String text) {
        Matcher time = TIME.matcher(text);
        return time.matches()
                ? OptionalDouble.of(
                        Unit.of(time.group(2))
                                .filter(unit -> unit.dimension() == Dimension.TIME)
                                .orElseThrow()
                                .toSi(Double.parseDouble(time.group(1))))
                : OptionalDouble.empty();
    }
}
