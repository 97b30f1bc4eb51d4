package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Captured;
import rigside.session.Donning;
import rigside.session.State;

/** What has to be known to read one comparison rightly. */
record ComparisonRemarks(
        State state, Setting setting, Condition condition, Gathered gathered, Judged judged) {

    List<String> all() {
        List<String> remarks = new ArrayList<>();
        ChangedWords changed = new ChangedWords(judged, setting.compared().matters());
        if (judged.dependsOnChanged()) {
            remarks.add(changed.dependsOnIt());
        }
        remarks.addAll(changed.amended(gathered.entries()));
        if (!judged.boundedAgrees()) {
            boolean same =
                    setting.course(gathered.halved())
                            .conclusion()
                            .equals(judged.course().conclusion());
            remarks.add(
                    same
                            ? "Not settled: in both conditions some fit factors are only known as"
                                    + " \"at least\", so their ratio is open."
                            : "Not settled: it depends on " + bounded() + "the verdict differs.");
        } else if (!gathered.stated().equals(gathered.halved())) {
            remarks.add("It rests on " + bounded() + "the verdict is the same.");
        }
        if (!gathered.lacking().isEmpty()) {
            remarks.add(
                    "Left out, for lack of a value: "
                            + (gathered.lacking().size() == 1 ? "round " : "rounds ")
                            + Phrases.list(gathered.lacking())
                            + ".");
        }
        if (setting.isByTrial()) {
            remarks.add(KindOfRepeat.ofReplicates(setting, values()));
        }
        if (setting.measure().kind() instanceof Measure.TimedInhalation
                && !judged.verdict().settled()) {
            KindOfRepeat.of(setting, values())
                    .flatMap(each -> each.advice(gathered.stated(), judged.isOpen()))
                    .ifPresent(remarks::add);
        }
        remarks.addAll(outcomes(state, List.of(condition, state.protocol().reference())));
        if (setting.plan().maskStaysOn()) {
            remarks.add(Sentences.WITHIN_ONE_DONNING);
        }
        remarks.add(
                "One piece was worn in each condition: this speaks for these pieces, not for"
                        + " their make.");
        return List.copyOf(remarks);
    }

    private List<DonningValue> values() {
        return Values.of(Evidence.of(state), setting.measure());
    }

    private static String bounded() {
        return "fit factors that are only known as \"at least\". With the bounded penetration"
                + " taken as stated and at half (a convention), ";
    }

    /** Failed checks and broken-off donnings are outcomes: a condition that fails often says so. */
    static List<String> outcomes(State state, List<Condition> worn) {
        List<String> outcomes = new ArrayList<>();
        for (Condition each : worn) {
            long failed =
                    state.captured().failedChecks().stream()
                            .filter(check -> wornIn(state, check, each))
                            .count();
            List<String> counts = new ArrayList<>();
            add(counts, failed, "failed check", "failed checks");
            add(
                    counts,
                    ended(state, each, Donning.Outcome.ABANDONED),
                    "donning broken off",
                    "donnings broken off");
            add(
                    counts,
                    ended(state, each, Donning.Outcome.STRUCK),
                    "donning struck out",
                    "donnings struck out");
            if (!counts.isEmpty()) {
                outcomes.add(Phrases.sentence(each.title()) + ": " + Phrases.list(counts) + ".");
            }
        }
        return List.copyOf(outcomes);
    }

    private static void add(List<String> counts, long number, String one, String more) {
        if (number > 0) {
            counts.add(Phrases.count((int) number, one, more));
        }
    }

    private static boolean wornIn(State state, Captured.FailedCheck check, Condition worn) {
        return state.course()
                .donning(check.place().donning())
                .filter(donning -> donning.condition().equals(worn.id()))
                .isPresent();
    }

    private static long ended(State state, Condition worn, Donning.Outcome outcome) {
        return state.course().donnings().stream()
                .filter(
                        donning ->
                                donning.outcome() == outcome
                                        && donning.condition().equals(worn.id()))
                .count();
    }
}
