package rigside.analysis;

import static java.util.stream.Collectors.toList;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rigside.decide.ExactLimits;
import rigside.decide.Limits;
import rigside.decide.Summary;
import rigside.decide.VarianceParts;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * Whether more inhalations within a donning, or more donnings, would sharpen a comparison.
 *
 * <p>With within-donning variance w (of one trial, pooled over donnings, on the analysis scale),
 * trials explain w times the mean of 1 / k, k the trials of each donning, of the variance of a
 * donning's value. The share of that in the variance seen between donnings (within rounds when
 * paired) says how much more trials could help at best. Both are estimates that share nothing, so
 * the share has the limits of a ratio of variances; from a few rounds they are wide, and advice is
 * given only where they clear what it says.
 *
 * @param setting what was fixed beforehand
 * @param parts the nested analysis of variance of all trials that count
 * @param perDonning trials a donning, on average
 * @param ofTrials what trials explain of the variance of a donning's value
 */
record KindOfRepeat(Setting setting, VarianceParts parts, double perDonning, double ofTrials) {

    /** Up to this share more trials are not worth it, from the second on they are: convention. */
    private static final double LITTLE = 0.25;

    private static final double MUCH = 0.5;

    /**
     * Confidence of the limits that a share must keep to be told as a fact, two-sided and for one
     * look: nothing is decided by it, so a hint wrong in one of ten cases each way is worth giving.
     * A convention.
     */
    static final double LEVEL = 0.8;

    /** Donnings (rounds when paired) below which a spread between them says too little. */
    private static final int FEWEST = 3;

    /**
     * How long a donning takes, in trials, where the plan does not say: an example, said as one.
     */
    private static final int FOR_EXAMPLE = 10;

    /** Empty while no donning has two trials, or no condition two donnings. */
    static Optional<KindOfRepeat> of(Setting setting, List<DonningValue> values) {
        List<List<double[]>> trials = trials(setting.measure(), values);
        if (!canBeParted(trials)) {
            return Optional.empty();
        }
        VarianceParts parts = VarianceParts.of(trials);
        List<double[]> donnings = filled(trials);
        double perDonning = donnings.stream().mapToInt(each -> each.length).average().orElseThrow();
        double ofOne =
                donnings.stream().mapToDouble(each -> 1.0 / each.length).average().orElseThrow();
        return Optional.of(new KindOfRepeat(setting, parts, perDonning, parts.trial() * ofOne));
    }

    /** The two parts by themselves; empty where they cannot be told apart. */
    static Optional<VarianceParts> parts(Measure measure, List<DonningValue> values) {
        List<List<double[]>> trials = trials(measure, values);
        return canBeParted(trials) ? Optional.of(VarianceParts.of(trials)) : Optional.empty();
    }

    /** The average over donnings with a trial; 0 without one. */
    static double trialsPerDonning(Measure measure, List<DonningValue> values) {
        return filled(trials(measure, values)).stream()
                .mapToInt(each -> each.length)
                .average()
                .orElse(0);
    }

    private static List<double[]> filled(List<List<double[]>> trials) {
        return trials.stream().flatMap(List::stream).filter(each -> each.length > 0).toList();
    }

    private static boolean canBeParted(List<List<double[]>> trials) {
        boolean several = filled(trials).stream().anyMatch(each -> each.length > 1);
        boolean again =
                trials.stream()
                        .anyMatch(of -> of.stream().filter(each -> each.length > 0).count() > 1);
        return several && again;
    }

    /**
     * Which repeat helps, in words; empty when it is too early, or trials are values themselves.
     *
     * @param open whether the plan has a repeat left; else only what a new plan can make use of
     */
    Optional<String> advice(Rows rows, boolean open) {
        if (setting.isByTrial() || rows.other().size() < FEWEST) {
            return Optional.empty();
        }
        double all = ofDonning(rows);
        double share = ofTrials / all;
        // NaN, of values that do not spread at all, fails.
        if (!(share >= 0)) {
            return Optional.empty();
        }
        Limits limits =
                ExactLimits.varianceRatio(share, parts.trialDf(), degreesOfFreedom(rows), LEVEL);
        String best = best(Math.max(0, all - ofTrials));
        if (limits.high() <= LITTLE) {
            return Optional.of(
                    (open
                                    ? "More inhalations in this donning will not help"
                                    : "More inhalations in each donning would not have helped")
                            + ": they explain "
                            + (limits.high() > 0
                                    ? "at most about " + Digits.percent(limits.high())
                                    : "nothing that can be seen")
                            + " of the spread. "
                            + (open
                                    ? "Take the mask off and put it on again"
                                    : "More donnings in a new plan would")
                            + (isCosted() ? best : "")
                            + ".");
        }
        if (limits.low() >= MUCH) {
            return Optional.of(
                    atLeast(limits)
                            + ": a plan with more of them in each donning would settle sooner"
                            + best
                            + ".");
        }
        if (limits.low() > LITTLE) {
            return Optional.of(
                    atLeast(limits)
                            + (open
                                    ? ": more of them helps, as more donnings do"
                                    : ": more of them would help, as more donnings would")
                            + best
                            + ".");
        }
        return open ? Optional.of(undecided(limits)) : Optional.empty();
    }

    private static String undecided(Limits limits) {
        return "It cannot be told yet which kind of repeat helps more: the inhalations"
                + " within a donning explain "
                + (limits.high() < 1
                        ? percent(limits.low()) + " to " + Digits.percent(limits.high())
                        : percent(limits.low()) + " to all")
                + " of the spread ("
                + Phrases.confidence(LEVEL)
                + " limits).";
    }

    private static String atLeast(Limits limits) {
        return (limits.low() < 1 ? "At least about " + percent(limits.low()) : "All")
                + " of the spread comes from the inhalations within a donning";
    }

    private static String percent(double share) {
        return share < 0.005 ? "0 %" : Digits.percent(share);
    }

    /** Behind {@link #ofDonning}. */
    private double degreesOfFreedom(Rows rows) {
        return rows.other().size() - 1.0 + (setting.isPaired() ? 0 : rows.reference().size() - 1.0);
    }

    /**
     * The variance of one donning's value; where rounds are paired, what remains within a round.
     */
    private double ofDonning(Rows rows) {
        if (setting.isPaired()) {
            double sd = Summary.of(rows.differences(setting.scale())).sd();
            return sd * sd / 2;
        }
        double reference = Summary.of(rows.reference(setting.scale())).sd();
        double other = Summary.of(rows.other(setting.scale())).sd();
        return (reference * reference + other * other) / 2;
    }

    private boolean isCosted() {
        Plan plan = setting.plan();
        return plan.donningSeconds().isPresent() && plan.trialSeconds().orElse(0) > 0;
    }

    /**
     * @param between variance between donnings beyond what trials explain
     */
    private String best(double between) {
        Plan plan = setting.plan();
        int best =
                VarianceParts.bestTrials(
                        between,
                        parts.trial(),
                        isCosted() ? plan.donningSeconds().getAsDouble() : FOR_EXAMPLE,
                        isCosted() ? plan.trialSeconds().getAsDouble() : 1,
                        PlanSearch.MOST_TRIALS);
        return (isCosted()
                        ? "; for the time they take, "
                        : "; if a donning takes as long as ten inhalations, ")
                + (best < PlanSearch.MOST_TRIALS
                        ? Phrases.count(best, "trial", "trials") + " a donning would tell most"
                        : "as many trials a donning as do not tire, up to "
                                + PlanSearch.MOST_TRIALS
                                + ", would tell most")
                + " (now "
                + Digits.two(perDonning).replaceAll("\\.0$", "")
                + ")";
    }

    /** What it means that each trial stands for itself, in words. */
    static String ofReplicates(Setting setting, List<DonningValue> values) {
        return "Each trial stands for itself, though those of one donning go together: so this"
                + " speaks for these donnings only, not for putting the mask on again."
                + of(setting, values)
                        .map(KindOfRepeat::widening)
                        .orElse(" How much donnings differ cannot be seen from one of each.");
    }

    /**
     * The variance of a mean of trials that share a donning, against that of as many that do not: 1
     * + (k - 1) times the share of the donning (Kish 1965, Survey sampling; from memory).
     */
    private String widening() {
        double factor = Math.sqrt(1 + (parts.trialsPerDonning() - 1) * parts.donningShare());
        return factor > 1.05
                ? " With donnings as different as seen here, an interval that speaks for new ones"
                        + " would be about "
                        + Digits.two(factor)
                        + " times as wide."
                : "";
    }

    /** The two parts of the spread with their limits, for the page on the method. */
    String components() {
        double confidence = setting.plan().confidence();
        Limits within = parts.trialLimits(confidence);
        Limits between = parts.donningLimits(confidence);
        return "One inhalation varies within its donning by about "
                + sizes(parts.trial(), within, "")
                + "; "
                + (parts.donning() > 0
                        ? "donnings of one condition differ beyond that by about "
                                + sizes(parts.donning(), between, ", after Satterthwaite")
                        : "between donnings of one condition nothing beyond that is seen (at most "
                                + size(between.high())
                                + ")")
                + (setting.isPaired() && parts.donning() > 0
                        ? ", part of which comparing within rounds takes out."
                        : ".");
    }

    private String sizes(double variance, Limits limits, String how) {
        return size(variance)
                + " ("
                + Phrases.confidence(setting.plan().confidence())
                + " limits "
                + size(limits.low())
                + " to "
                + size(limits.high())
                + how
                + ")";
    }

    /** A variance as what it spreads; ratios in per cent, and no more of them than means much. */
    private String size(double variance) {
        if (setting.scale().isRatio()) {
            double share = Math.sqrt(Math.expm1(variance));
            return share > 1 ? "over 100 %" : Digits.two(100 * share) + " %";
        }
        return (Digits.two(Math.sqrt(variance)) + " " + setting.measure().unit().symbol()).strip();
    }

    /** Trial times on the analysis scale, by condition and donning, of the donnings that count. */
    private static List<List<double[]>> trials(Measure measure, List<DonningValue> values) {
        return values.stream()
                .filter(DonningValue::counts)
                .collect(Collectors.groupingBy(DonningValue::condition, TreeMap::new, toList()))
                .values()
                .stream()
                .map(donnings -> donnings.stream().map(each -> times(measure, each)).toList())
                .toList();
    }

    private static double[] times(Measure measure, DonningValue value) {
        return value.parts().stream()
                .filter(part -> part.value().isPresent())
                .mapToDouble(part -> Scale.of(measure).inward(part.value().getAsDouble()))
                .toArray();
    }
}
