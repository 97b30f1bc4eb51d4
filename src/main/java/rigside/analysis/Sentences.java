package rigside.analysis;

import java.util.Optional;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/** What a session says, in plain English. */
final class Sentences {
    /** Instead of what comes next. */
    static final String DAMAGED = "This session cannot be gone on with: its journal is damaged";

    /** What settings tried while the mask stays on can speak for. */
    static final String WITHIN_ONE_DONNING =
            "The mask stayed on within each round: this speaks for adjusting it while it is worn,"
                    + " not for putting it on anew, and what was set before may act on what comes"
                    + " after.";

    private Sentences() {}

    /** Text from outside as a message can quote it: printable, and not too long. */
    static String clean(String text) {
        String printable = text.replaceAll("\\p{C}", "?");
        return printable.length() <= 60 ? printable : printable.substring(0, 57) + "...";
    }

    /** What the confidence of a measure's intervals covers. */
    static String promise(Protocol protocol, Setting setting) {
        Plan plan = setting.plan();
        int comparisons = protocol.conditions().size() - 1;
        int deciding = Sharing.deciding(protocol);
        long compared =
                protocol.measures().stream().filter(each -> each.compared().isPresent()).count();
        boolean together = plan.sharedOverMeasures() && deciding > 1;
        return covered(setting, comparisons)
                + (together
                        ? " and " + Phrases.all(deciding, "deciding measures") + " together."
                        : compared > 1
                                ? " of this measure; other measures have a promise of their own."
                                : " of this measure.");
    }

    /** The same as far as looks and comparisons go, without a full stop. */
    static String covered(Setting setting, int comparisons) {
        Plan plan = setting.plan();
        return "The "
                + Phrases.confidence(plan.confidence())
                + " covers every look from "
                + plan.fewest()
                + " to "
                + plan.most()
                + (setting.isPaired() ? " rounds" : " values per condition")
                + (comparisons > 1 ? ", " + Phrases.all(comparisons, "comparisons") : "");
    }

    /** What is concealed and until when; empty when nothing is. */
    static String concealed(Protocol protocol, Out out) {
        Plan.Until times = protocol.plan().trialClock();
        Plan.Until results = protocol.firstResult();
        if (out.clock()) {
            return out.result() ? "" : "the running result is concealed " + until(results);
        }
        if (times == results) {
            return "times of trials and the running result are concealed " + until(results);
        }
        if (times.compareTo(results) < 0) {
            return "times of trials are concealed " + until(times) + ", results " + until(results);
        }
        return "times of trials and the results made of them are concealed "
                + until(times)
                + (out.result() ? "" : ", other results " + until(results));
    }

    /** "until the session ends". */
    static String until(Plan.Until until) {
        return switch (until) {
            case SHOWN -> "not at all";
            case DONNING_ENDS -> "until the donning ends";
            case SESSION_ENDS -> "until the session ends";
        };
    }

    /**
     * What to do next, in words that give no result away; of ended repeats, how they ended.
     *
     * @param unlikely whether the plan will hardly settle what is open; false where that is
     *     concealed
     * @param ended why the tester ended them, if that happened
     */
    static String next(
            Plan plan,
            Analysis analysis,
            boolean enough,
            boolean usedUp,
            boolean unlikely,
            Optional<String> ended) {
        int rounds = analysis.completeRounds();
        String done = rounds + (rounds == 1 ? " round" : " rounds") + " complete";
        if (enough) {
            return done + ". Enough repeats: no further round is needed";
        }
        if (usedUp) {
            return done + ". The plan is used up: no further round";
        }
        if (ended.isPresent()) {
            boolean tooFew = plan.design() == Plan.Design.ROUNDS && rounds < plan.fewest();
            return tooFew
                    ? early(ended.get())
                            + ". No verdict: "
                            + rounds
                            + " of at least "
                            + plan.fewest()
                            + " rounds"
                    : done + ". " + early(ended.get());
        }
        if (analysis.readOnly()) {
            return done + ". " + DAMAGED;
        }
        return unlikely
                ? done
                        + ". Another round, or all that are left, will hardly settle what is open;"
                        + " stopping here is a choice"
                : done + ". Go on with " + (rounds == 0 ? "the first" : "another") + " round";
    }

    /** The same where one condition is put on again and again. */
    static String nextOfOne(Plan plan, Analysis analysis, Optional<String> ended) {
        int donnings = analysis.completeRounds();
        String done = donnings + " of " + plan.most() + " donnings complete";
        if (donnings >= plan.most()) {
            return done + ": all that were planned";
        }
        String open =
                analysis.readOnly()
                        ? DAMAGED
                        : "Go on with " + (donnings == 0 ? "the first" : "another");
        return done + ". " + ended.map(Sentences::early).orElse(open);
    }

    private static String early(String reason) {
        return "Ended early by the tester: " + clean(reason);
    }
}
