package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** What to think over in the steps of a donning and what is said before it. */
final class ProcedureAdvice {

    /** Full breaths closer together than this wash out carbon dioxide: own judgement. */
    private static final double SHORTEST_REST_SECONDS = 30;

    private final Protocol protocol;

    private ProcedureAdvice(Protocol protocol) {
        this.protocol = protocol;
    }

    static List<String> of(Protocol protocol) {
        return new ProcedureAdvice(protocol).procedure();
    }

    private List<String> procedure() {
        List<String> all = new ArrayList<>();
        if (mixes()) {
            all.add(
                    "a particle reading holds what passes the seal and what passes the filter, so a"
                            + " fit factor mixes both; filters good enough would make it"
                            + " 'seal-only'");
        }
        all.addAll(new AirAdvice(protocol).sentences());
        if (beginsExercisesWithout(Step.Countdown.class)) {
            all.add(
                    "no countdown comes before the exercises: particles caught in the mask at"
                            + " donning are then counted as a leak; put a purge before them");
        }
        if (!mentions("seal")) {
            all.add(
                    "no check of a donning mentions the seal: a mask that was put on badly is then"
                            + " measured; add a user seal check with 'if-not: abandon'");
        }
        protocol.donning().stream()
                .filter(step -> step instanceof Step.Trials trials && isHurried(trials))
                .map(
                        step ->
                                "'"
                                        + step.title()
                                        + "' rests less than "
                                        + Math.round(SHORTEST_REST_SECONDS)
                                        + " s between full breaths, which makes dizzy and tired;"
                                        + " write a longer 'rest'")
                .forEach(all::add);
        if (protocol.plan().maskStaysOn()
                && protocol.donning().stream()
                        .noneMatch(step -> step.head().applies().onlyAfterPuttingOn())) {
            all.add(
                    "the mask stays on, but every step is done at every setting, putting it on"
                            + " among them; write 'only-after: putting-on' in those that are not");
        }
        all.addAll(cautions(protocol));
        return all;
    }

    /** What is missing among the cautions. */
    static List<String> cautions(Protocol protocol) {
        return protocol.cautions().stream()
                        .anyMatch(each -> each.toLowerCase(Locale.ROOT).contains("stop"))
                ? List.of()
                : List.of(
                        "no caution says when to stop; write one that names dizziness and what to"
                                + " do then");
    }

    private boolean mixes() {
        boolean measured =
                protocol.measures().stream()
                        .anyMatch(each -> each.kind() instanceof Measure.FitFactor);
        return measured
                && protocol.conditions().stream()
                        .anyMatch(
                                each ->
                                        each.reading()
                                                == Condition.ParticleReading.SEAL_AND_FILTER);
    }

    private static boolean isHurried(Step.Trials trials) {
        return trials.count() > 1 && trials.restSeconds() < SHORTEST_REST_SECONDS;
    }

    /** Whether a condition's exercises come without a step of this kind before them. */
    private boolean beginsExercisesWithout(Class<? extends Step> kind) {
        return protocol.conditions().stream()
                .map(condition -> protocol.donningOf(condition.id()))
                .anyMatch(
                        steps -> {
                            Stream<Step> until =
                                    steps.stream()
                                            .takeWhile(each -> !(each instanceof Step.Exercises));
                            return steps.stream().anyMatch(Step.Exercises.class::isInstance)
                                    && until.noneMatch(kind::isInstance);
                        });
    }

    /** Whether a check of a donning has this word. */
    private boolean mentions(String word) {
        return protocol.donning().stream()
                .filter(Step.Checklist.class::isInstance)
                .flatMap(each -> ((Step.Checklist) each).items().stream())
                .anyMatch(item -> item.text().toLowerCase(Locale.ROOT).contains(word));
    }
}
