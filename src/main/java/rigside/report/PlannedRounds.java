package rigside.report;

import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * How many rounds a plan means: where each trial is a value of its own, a round brings several.
 *
 * @param fewest rounds before the first look
 * @param most rounds until the plan is used up
 */
record PlannedRounds(int fewest, int most) {

    static PlannedRounds of(Protocol protocol) {
        Plan plan = protocol.plan();
        if (protocol.purpose() == Protocol.Purpose.REPEATABILITY) {
            return new PlannedRounds(plan.most(), plan.most());
        }
        int values = plan.design() == Plan.Design.INDEPENDENT_TRIALS ? perRound(protocol) : 1;
        int fewest = -Math.floorDiv(-plan.fewest(), values);
        return new PlannedRounds(fewest, Math.max(fewest, plan.most() / values));
    }

    private static int perRound(Protocol protocol) {
        return protocol.measures().stream()
                .filter(measure -> measure.kind() instanceof Measure.TimedInhalation)
                .mapToInt(measure -> protocol.trials(measure.id()))
                .filter(trials -> trials > 0)
                .min()
                .orElse(1);
    }

    /** {@code 3 to 8 rounds}. */
    String words() {
        return fewest == most ? fewest + " rounds" : fewest + " to " + most + " rounds";
    }
}
