package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/** What to think over in what is compared and how often. */
final class DesignAdvice {

    /** A plan that settles less often than this is hardly worth its donnings: own judgement. */
    private static final double HARDLY = 0.5;

    private static final long SEED = 1;

    private final Protocol protocol;

    private DesignAdvice(Protocol protocol) {
        this.protocol = protocol;
    }

    /** How often each deciding measure can be expected to settle. */
    static List<String> settling(Protocol protocol) {
        DesignAdvice advice = new DesignAdvice(protocol);
        return protocol.measures().stream()
                .filter(each -> each.compared().filter(Measure.Compared::decides).isPresent())
                .flatMap(each -> advice.settling(each).stream())
                .toList();
    }

    private Optional<String> settling(Measure measure) {
        String name = "'" + measure.title() + "'";
        Optional<PlanTerms> terms = PlanTerms.of(protocol, measure, OptionalDouble.empty());
        if (terms.isEmpty()) {
            return Optional.of(
                    name
                            + " has no expected-spread, so nobody knows whether the plan can settle"
                            + " it; write the one you expect, or try some with 'rigside plan'");
        }
        double least = PlanTable.settledAtLeast(terms.get(), SEED);
        return least >= HARDLY
                ? Optional.empty()
                : Optional.of(
                        name
                                + " is settled by this plan with a chance of only "
                                + Digits.chance(least)
                                + " when nothing differs, or when twice what matters does; see"
                                + " 'rigside plan' for what would be better");
    }

    /** What the plan and its conditions can say. */
    static List<String> of(Protocol protocol) {
        return new DesignAdvice(protocol).design();
    }

    private List<String> design() {
        List<String> all = new ArrayList<>();
        Plan plan = protocol.plan();
        if (protocol.measures().stream().anyMatch(this::isOfOneDonning)) {
            all.add(
                    "one donning of each condition uses the plan up: the result speaks for these"
                            + " donnings only; let each donning be a replicate");
        }
        if (protocol.conditions().stream().map(each -> each.specimen().piece()).distinct().count()
                > 1) {
            all.add(
                    "each condition is one specimen, so the result speaks for these pieces, not for"
                            + " all that are made alike; to say more, repeat the session with other"
                            + " specimens");
        }
        if (plan.order() == Plan.Order.AS_LISTED) {
            all.add(
                    "the conditions always come in the same order, so tiredness and the room count"
                            + " as a difference; write 'order: balanced', unless the question itself is"
                            + " before and after");
        }
        if (plan.order() != Plan.Order.AS_LISTED
                && protocol.conditions().size() > 1
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
        List<String> waiting =
                protocol.measures().stream()
                        .filter(each -> protocol.resultOf(each) != plan.result())
                        .map(each -> "'" + each.title() + "'")
                        .toList();
        if (!waiting.isEmpty()) {
            all.add(
                    "times of trials are concealed longer than results, so what is made of them, "
                            + Phrases.list(waiting)
                            + ", is concealed with them "
                            + Sentences.until(plan.trialClock())
                            + "; to see it earlier, conceal the trial clock no longer than the"
                            + " result");
        }
        return all;
    }

    private boolean isOfOneDonning(Measure measure) {
        return measure.compared().isPresent()
                && Sharing.setting(protocol, measure).isByTrial()
                && Sharing.setting(protocol, measure).lastRound() <= 1;
    }
}
