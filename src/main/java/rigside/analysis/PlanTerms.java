package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
     * @throws IllegalArgumentException unless the spread is above 0 and finite
     */
    public PlanTerms {
        if (!(spread > 0 && spread < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("spread " + spread + ", must be above 0");
        }
    }

    /**
     * Of a plan without a protocol: one comparison, each donning one value.
     *
     * @param roundSpread standard deviation of what one round gives, on the analysis scale: of the
     *     difference within a round, or of one value when independent; above 0
     */
    public static PlanTerms of(
            Measure.Compared compared, Plan plan, double roundSpread, Optional<Costs> costs) {
        Setting setting = new Setting(Measure.bare(0, compared), plan, 1, 1);
        return new PlanTerms(setting, ofOne(setting, roundSpread), costs, Optional.empty());
    }

    /**
     * Of a protocol.
     *
     * @param measure one of its measures, or that with another band
     * @param roundSpread as above; where it is empty the expected spread of the measure, which is
     *     that of one value
     * @return empty when no spread is given anywhere
     */
    public static Optional<PlanTerms> of(
            Protocol protocol, Measure measure, OptionalDouble roundSpread) {
        Setting setting = Sharing.setting(protocol, measure);
        OptionalDouble spread =
                roundSpread.isPresent()
                        ? OptionalDouble.of(ofOne(setting, roundSpread.getAsDouble()))
                        : setting.compared().expectedSpread();
        if (spread.isEmpty()) {
            return Optional.empty();
        }
        int perDonning = protocol.trials(measure.id());
        // A trial not declared costs is left within the donning, where it cannot be traded.
        double trial =
                perDonning == 0
                        ? 0
                        : protocol.plan().trialSeconds().orElse(0) * protocol.conditions().size();
        Costs costs = new Costs(BenchTime.round(protocol) - perDonning * trial, trial, perDonning);
        return Optional.of(
                new PlanTerms(setting, spread.getAsDouble(), Optional.of(costs), Optional.empty()));
    }

    /** Whether a value is the mean of trials whose time is known, so that they can be traded. */
    public boolean canWeighTrials() {
        return !setting.isByTrial()
                && costs.filter(each -> each.trials() > 0 && each.perDonning() > 0).isPresent();
    }

    /**
     * The same with the spread of one trial known, so that more trials a donning can be weighed
     * against more donnings.
     *
     * @param trialSpread standard deviation of one trial within its donning, on the analysis scale
     * @return empty when the trials alone would explain more than the whole spread
     * @throws IllegalArgumentException unless {@link #canWeighTrials}
     */
    public Optional<PlanTerms> weighingTrials(double trialSpread) {
        if (!canWeighTrials()) {
            throw new IllegalArgumentException("trials of this plan cannot be weighed");
        }
        Trials known = new Trials(trialSpread, costs.orElseThrow().perDonning());
        return known.spreadWith(Integer.MAX_VALUE, spread) > 0
                ? Optional.of(new PlanTerms(setting, spread, costs, Optional.of(known)))
                : Optional.empty();
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
        return setting.rules(setting.scale().isRatio() ? 0 : setting.measure().resolution());
    }

    /**
     * Whether a decrease is to an increase as its mirror image, so that one sign speaks for both.
     */
    boolean isMirrored() {
        Measure.Compared compared = setting.compared();
        return compared.matters() == Measure.Compared.Matters.EITHER
                && Math.abs(compared.bandLow() + compared.bandHigh()) < 1e-9 * compared.bandHigh();
    }

    /** The signs of a difference that matters; of mirror images only the increase. */
    List<Integer> signs() {
        return switch (setting.compared().matters()) {
            case EITHER -> isMirrored() ? List.of(1) : List.of(-1, 1);
            case INCREASE -> List.of(1);
            case DECREASE -> List.of(-1);
        };
    }

    /** The same with other numbers of rounds. */
    PlanTerms withRounds(int fewest, int most) {
        Plan plan = setting.plan();
        Plan other = plan.with(fewest, most, plan.confidence(), plan.exponent());
        return new PlanTerms(
                new Setting(setting.measure(), other, setting.sharing(), setting.perRound()),
                spread,
                costs,
                trials);
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
