package rigside.analysis;

import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What to think over in a protocol that can be run: no errors, since there may be reasons for each.
 */
public final class ProtocolAdvice {

    /** A plan that settles less often than this is hardly worth its donnings: own judgement. */
    private static final double HARDLY = 0.5;

    /** Full breaths closer together than this wash out carbon dioxide: own judgement. */
    private static final double SHORTEST_REST_SECONDS = 30;

    private static final long SEED = 1;

    private final Protocol protocol;

    private ProtocolAdvice(Protocol protocol) {
        this.protocol = protocol;
    }

    /** Each piece a sentence without its stop: what is so, what follows, what would be better. */
    public static List<String> of(Protocol protocol) {
        ProtocolAdvice advice = new ProtocolAdvice(protocol);
        if (protocol.purpose() == Protocol.Purpose.INSTRUMENT_CHECK) {
            return advice.cautions();
        }
        List<String> all = new ArrayList<>();
        all.addAll(advice.plan());
        all.addAll(advice.design());
        all.addAll(advice.procedure());
        return List.copyOf(all);
    }

    /** How often each deciding measure can be expected to settle. */
    private List<String> plan() {
        return protocol.measures().stream()
                .filter(each -> each.compared().filter(Measure.Compared::decides).isPresent())
                .flatMap(each -> settling(each).stream())
                .toList();
    }

    private Optional<String> settling(Measure measure) {
        String name = "'" + measure.title() + "'";
        Optional<PlanTerms> terms =
                PlanTerms.of(protocol, measure, measure.compared().orElseThrow().expectedSpread());
        if (terms.isEmpty()) {
            return Optional.of(
                    name
                            + " has no expected-spread, so nobody knows whether the plan can settle"
                            + " it; write the one you expect, or try some with 'rigside plan'");
        }
        PlanTable table = PlanTable.of(terms.get(), HARDLY, SEED);
        double least =
                table.outcomes().stream()
                        .filter(each -> each.multiple() == 0 || Math.abs(each.multiple()) == 2)
                        .mapToDouble(each -> 1 - each.unsettled())
                        .min()
                        .orElse(1);
        return least >= HARDLY
                ? Optional.empty()
                : Optional.of(
                        name
                                + " is settled by this plan with a chance of only "
                                + Digits.chance(least)
                                + " when nothing differs, or when twice what matters does; see"
                                + " 'rigside plan' for what would be better");
    }

    private List<String> design() {
        List<String> all = new ArrayList<>();
        Plan plan = protocol.plan();
        if (protocol.measures().stream().anyMatch(this::isOfOneDonning)) {
            all.add(
                    "one donning of each condition uses the plan up: the result speaks for these"
                            + " donnings only; let each donning be a replicate");
        }
        if (plan.order() == Plan.Order.AS_LISTED) {
            all.add(
                    "the conditions always come in the same order, so tiredness and the room count"
                            + " as a difference; write 'order: balanced'");
        }
        if (plan.order() != Plan.Order.AS_LISTED
                && plan.most() % protocol.conditions().size() != 0
                && plan.design() == Plan.Design.ROUNDS) {
            all.add(
                    plan.most()
                            + " rounds cannot let each of "
                            + protocol.conditions().size()
                            + " conditions come first equally often; a multiple of "
                            + protocol.conditions().size()
                            + " can");
        }
        if (plan.trialClock() == Plan.Until.SHOWN && plan.result() == Plan.Until.SHOWN) {
            all.add(
                    "nothing is concealed, and what is seen changes the next breath; conceal the"
                            + " trial clock and the result until the donning ends");
        }
        return all;
    }

    private boolean isOfOneDonning(Measure measure) {
        return measure.compared().isPresent()
                && Sharing.setting(protocol, measure).isByTrial()
                && Sharing.setting(protocol, measure).lastRound() <= 1;
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
        all.addAll(cautions());
        return all;
    }

    private List<String> cautions() {
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
