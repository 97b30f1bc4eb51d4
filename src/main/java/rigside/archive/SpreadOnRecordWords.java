package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.LaterPlan;
import rigside.protocol.Plan;

/** How far a measure spread, in plain words. */
public final class SpreadOnRecordWords {

    /** Below it sessions are said to spread unlike. */
    private static final double UNLIKE = 0.01;

    private static final String DIFFERENCES = "differences";
    private static final String DONNINGS = "donnings";

    private final SpreadOnRecord of;

    private SpreadOnRecordWords(SpreadOnRecord of) {
        this.of = of;
    }

    /** All of it, the most important first. */
    public static List<String> of(SpreadOnRecord of) {
        return new SpreadOnRecordWords(of).all();
    }

    private List<String> all() {
        List<String> all = new ArrayList<>();
        of.differences()
                .ifPresent(
                        each ->
                                all.add(
                                        "By the differences within rounds one value spreads by "
                                                + words(each, DIFFERENCES)
                                                + "."));
        of.donnings()
                .ifPresent(
                        each ->
                                all.add(
                                        "Donnings of one condition spread within a session by "
                                                + words(each, DONNINGS)
                                                + "."));
        Optional<SpreadOnRecord.Found> planned = of.planned(Plan.Design.ROUNDS);
        if (planned.isEmpty()) {
            all.add(
                    "How far it spreads is not known: no session has two values of one condition"
                            + " that differ.");
            return all;
        }
        all.add(expected(planned.get()));
        all.add(later());
        unlike(planned.get()).ifPresent(all::add);
        return all;
    }

    /** That sessions spread unlike, in one sentence; empty where nothing speaks for it. */
    public static Optional<String> unlike(SpreadOnRecord.Found found) {
        return found.unlike() < UNLIKE
                ? Optional.of(
                        "Sessions or conditions spread unlike (Bartlett's test, p "
                                + PooledWords.p(found.unlike())
                                + "): a session to come may spread more than this says.")
                : Optional.empty();
    }

    /**
     * What a plan takes, without a full stop: "3.0 % (95 % limits 2.0 % to 5.7 %; with 80 %
     * confidence at most 4.2 %), from 9 differences in 3 sessions".
     *
     * @return empty where nothing is known for this design
     */
    public static Optional<String> planned(SpreadOnRecord of, Plan.Design design) {
        return of.planned(design)
                .map(
                        found ->
                                new SpreadOnRecordWords(of)
                                        .words(
                                                found,
                                                of.differences().equals(Optional.of(found))
                                                        ? DIFFERENCES
                                                        : DONNINGS));
    }

    private String words(SpreadOnRecord.Found each, String values) {
        return of.scale().spread(each.spread())
                + " (95 % limits "
                + of.scale().spread(each.limits().low())
                + " to "
                + of.scale().spread(each.limits().high())
                + "; with 80 % confidence at most "
                + of.scale().spread(each.upper())
                + "), from "
                + each.values()
                + " "
                + values
                + " in "
                + Names.count(each.sessions(), "session", "sessions");
    }

    private String expected(SpreadOnRecord.Found planned) {
        return "Write into the measure of a new protocol '"
                + line(of, planned.upper())
                + "' to plan with caution, or '"
                + line(of, planned.spread())
                + "' for what was seen: both are the spread of one value, as a plan takes it.";
    }

    /** A line of a protocol file. */
    public static String line(SpreadOnRecord of, double spread) {
        return "expected-spread: " + of.scale().spread(spread);
    }

    private String later() {
        List<String> plans = new ArrayList<>();
        for (LaterPlan plan : of.later()) {
            plans.add(
                    meaningful(plan.meaningful())
                            + " ("
                            + meaningful(plan.cautious())
                            + ") with up to "
                            + plan.most()
                            + " rounds");
        }
        return "With such a spread a comparison by rounds settles, in "
                + Math.round(10 * LaterPlan.SETTLES)
                + " of 10 cases, a meaningful difference of "
                + Names.list(plans)
                + "; in brackets, if the spread is as large as its 80 % limit.";
    }

    private String meaningful(double read) {
        return of.scale().spread(of.scale().inward(read));
    }
}
