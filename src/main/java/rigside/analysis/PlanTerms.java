package rigside.analysis;

import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.Band;
import rigside.decide.Matters;
import rigside.decide.Rules;
import rigside.protocol.BenchTime;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * What is fixed before the first donning of one comparison, and what is believed of its spread.
 *
 * @param setting measure, plan and how the error is shared
 * @param spread standard deviation of one value on the analysis scale; above 0
 * @param costs what a round costs, if anything is declared
 * @param trials the trials of a donning, if their spread is known
 */
public record PlanTerms(
        Setting setting, double spread, Optional<Costs> costs, Optional<Trials> trials) {

    /**
     * What a round costs at the bench.
     *
     * @param donnings all its donnings without their trials, in seconds; at least 0
     * @param trials one trial in each of its donnings, in seconds; at least 0
     * @param perDonning trials of a donning as planned; at least 0
     */
    public record Costs(double donnings, double trials, int perDonning) {

        /** Time at the bench for a round with this many trials a donning, in seconds. */
        double round(int trialsPerDonning) {
            return donnings + trialsPerDonning * trials;
        }
    }

    /**
     * The trials a donning's value is the mean of.
     *
     * @param spread standard deviation of one trial within its donning, on the analysis scale
     * @param perDonning how many are planned; at least 1
     */
    public record Trials(double spread, int perDonning) {

        /**
         * The standard deviation of a donning's value with another number of trials.
         *
         * @param planned that with the planned number
         * @return NaN when trials alone explain more than was planned
         */
        double spreadWith(int count, double planned) {
            double trial = spread * spread;
            return Math.sqrt(planned * planned - trial / perDonning + trial / count);
        }
    }

    /**
     * @throws IllegalArgumentException unless the spread is above 0 and larger than its trials
     *     alone explain
     */
    public PlanTerms {
        if (!(spread > 0 && spread < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("spread " + spread + ", must be above 0");
        }
        double planned = spread;
        if (trials.filter(each -> !(each.spreadWith(1_000_000, planned) > 0)).isPresent()) {
            throw new IllegalArgumentException("trials explain more than the whole spread");
        }
    }

    /**
     * Of a plan without a protocol: one comparison, each donning one value.
     *
     * @param roundSpread standard deviation of what one round gives, on the analysis scale: of the
     *     difference within a round, or of one value when independent; above 0
     */
    public static PlanTerms of(
            Measure measure,
            Plan plan,
            double roundSpread,
            Optional<Costs> costs,
            Optional<Trials> trials) {
        Setting setting = new Setting(measure, plan, 1, 1);
        return new PlanTerms(setting, ofOne(setting, roundSpread), costs, trials);
    }

    /**
     * Of a protocol.
     *
     * @param measure one of its measures, or that with another band
     * @param roundSpread as above; where it is empty the expected spread of the measure, which is
     *     that of one value
     * @param trialSpread standard deviation of one trial within its donning, on the analysis scale
     * @return empty when no spread is given anywhere
     */
    public static Optional<PlanTerms> of(
            Protocol protocol,
            Measure measure,
            OptionalDouble roundSpread,
            OptionalDouble trialSpread) {
        Setting setting = Sharing.setting(protocol, measure);
        OptionalDouble spread =
                roundSpread.isPresent()
                        ? OptionalDouble.of(ofOne(setting, roundSpread.getAsDouble()))
                        : setting.compared().expectedSpread();
        if (spread.isEmpty()) {
            return Optional.empty();
        }
        int perDonning = Sharing.trials(protocol, measure);
        Plan plan = protocol.plan();
        double round = BenchTime.round(protocol);
        // A trial not declared costs is left within the donning, where it cannot be traded.
        double trial = plan.trialSeconds().orElse(0) * protocol.conditions().size();
        Costs costs = new Costs(round - perDonning * trial, trial, perDonning);
        Optional<Trials> trials =
                trialSpread.isPresent() && !setting.isByTrial()
                        ? Optional.of(new Trials(trialSpread.getAsDouble(), perDonning))
                        : Optional.empty();
        return Optional.of(
                new PlanTerms(setting, spread.getAsDouble(), Optional.of(costs), trials));
    }

    private static double ofOne(Setting setting, double roundSpread) {
        return setting.isPaired() ? roundSpread / Math.sqrt(2) : roundSpread;
    }

    /** Standard deviation of what one round gives, on the analysis scale. */
    double roundSpread() {
        return setting.isPaired() ? spread * Math.sqrt(2) : spread;
    }

    /** The rules before any value: how finely values are read plays a part for differences only. */
    Rules rules() {
        return new Rules(
                setting.schedule(),
                setting.alpha(),
                setting.plan().exponent(),
                new Band(setting.compared().bandLow(), setting.compared().bandHigh()),
                Matters.valueOf(setting.compared().matters().name()),
                setting.scale().isRatio() ? 0 : setting.measure().resolution());
    }

    /** The same with another number of rounds at most. */
    PlanTerms withMost(int most) {
        Plan plan = setting.plan();
        Plan other =
                new Plan(
                        plan.fewest(),
                        most,
                        plan.confidence(),
                        plan.exponent(),
                        plan.design(),
                        plan.order(),
                        plan.trialClock(),
                        plan.result(),
                        plan.sharedOverMeasures(),
                        plan.donningSeconds(),
                        plan.trialSeconds());
        Setting longer =
                new Setting(setting.measure(), other, setting.sharing(), setting.perRound());
        return new PlanTerms(longer, spread, costs, trials);
    }

    /** The same with another number of trials a donning. */
    PlanTerms withTrials(int count) {
        Trials now = trials.orElseThrow();
        return new PlanTerms(
                setting,
                now.spreadWith(count, spread),
                costs.map(each -> new Costs(each.donnings(), each.trials(), count)),
                Optional.of(new Trials(now.spread(), count)));
    }

    /** Time at the bench for one round, in seconds; empty when no cost is known. */
    OptionalDouble roundSeconds() {
        return costs.isPresent()
                ? OptionalDouble.of(costs.get().round(costs.get().perDonning()))
                : OptionalDouble.empty();
    }
}
