package rigside.archive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import rigside.analysis.LaterPlan;
import rigside.decide.Limits;
import rigside.decide.PooledSpread;
import rigside.protocol.Plan;

/**
 * How far one measure spread in the sessions of the archive, as a new plan takes it: standard
 * deviations of one donning's value, on the scale of the analysis.
 *
 * @param measure the measure, as the latest session has it
 * @param scale of its numbers
 * @param differences of rounds, condition by condition against those before it, over the square
 *     root of two; what a plan that compares within rounds meets. Empty where no session has two
 *     rounds
 * @param donnings of donnings of one condition within a session; what a plan of independent values
 *     meets. Empty where no session has two
 * @param remarks what has to be known of them; may be empty
 */
public record SpreadOnRecord(
        Archived.Measured measure,
        Scaled scale,
        Optional<Found> differences,
        Optional<Found> donnings,
        List<String> remarks) {

    /** The confidence of the limits on both sides. */
    public static final double CONFIDENCE = 0.95;

    /** The confidence of the upper limit alone, to plan by: common practice, no source. */
    public static final double CAUTION = 0.8;

    public SpreadOnRecord {
        remarks = List.copyOf(remarks);
    }

    /**
     * A spread of one value.
     *
     * @param spread the standard deviation
     * @param limits of it, exact for values that spread normally
     * @param upper what it is at most, with {@link #CAUTION}
     * @param freedom its degrees of freedom
     * @param sessions sessions behind it
     * @param values differences or donnings behind it
     * @param unlike the chance of spreads as unlike from session to session if they were one
     */
    public record Found(
            double spread,
            Limits limits,
            double upper,
            double freedom,
            int sessions,
            int values,
            double unlike) {

        private static Optional<Found> of(List<List<double[]>> bySession, double divisor) {
            List<double[]> groups = bySession.stream().flatMap(List::stream).toList();
            if (groups.stream().noneMatch(each -> each.length > 1)) {
                return Optional.empty();
            }
            PooledSpread pooled = PooledSpread.of(groups);
            if (!(pooled.sd() > 0)) {
                return Optional.empty();
            }
            Limits limits = pooled.limits(CONFIDENCE);
            return Optional.of(
                    new Found(
                            pooled.sd() / divisor,
                            new Limits(limits.low() / divisor, limits.high() / divisor),
                            pooled.upper(CAUTION) / divisor,
                            pooled.freedom(),
                            (int)
                                    bySession.stream()
                                            .filter(
                                                    each ->
                                                            each.stream()
                                                                    .anyMatch(g -> g.length > 1))
                                            .count(),
                            groups.stream()
                                    .filter(each -> each.length > 1)
                                    .mapToInt(each -> each.length)
                                    .sum(),
                            pooled.unlike()));
        }
    }

    /** The one a plan of this design takes; empty where there is none. */
    public Optional<Found> planned(Plan.Design design) {
        return design == Plan.Design.ROUNDS ? differences.or(() -> donnings) : donnings;
    }

    /** What later comparisons can settle with it; empty where nothing is known. */
    public List<LaterPlan> later() {
        return planned(Plan.Design.ROUNDS)
                .map(each -> LaterPlan.all(scale.ratio(), each.spread(), each.upper()))
                .orElse(List.of());
    }

    /**
     * Why nothing can be said.
     *
     * @param sessions those meant
     * @param measure its id or title
     * @param condition its id or title; any where empty
     */
    public static Optional<Refusal> refusal(
            List<WithValues> sessions, String measure, Optional<String> condition) {
        return Named.unknownMeasure(sessions, measure)
                .or(() -> condition.flatMap(each -> Named.unknownCondition(sessions, each)));
    }

    /**
     * Takes it.
     *
     * @param sessions those meant, the latest first; {@link #refusal} has to be empty
     */
    public static SpreadOnRecord of(
            List<WithValues> sessions, String measure, Optional<String> condition) {
        Archived.Measured latest =
                sessions.stream()
                        .flatMap(each -> Named.measured(each.session(), measure).stream())
                        .findFirst()
                        .orElseThrow();
        return of(
                sessions,
                latest,
                session ->
                        Named.measured(session, measure)
                                .filter(own -> DaysApart.isSame(own, latest)),
                condition);
    }

    /**
     * The same of all conditions together, whatever the sessions call the measure.
     *
     * @param sessions those meant; may be empty
     * @param measure as it is to be told
     * @param counterpart the measure of a session that is this one; empty where it has none
     */
    static SpreadOnRecord of(
            List<WithValues> sessions,
            Archived.Measured measure,
            Function<Archived, Optional<Archived.Measured>> counterpart) {
        return of(sessions, measure, counterpart, Optional.empty());
    }

    private static SpreadOnRecord of(
            List<WithValues> sessions,
            Archived.Measured measure,
            Function<Archived, Optional<Archived.Measured>> counterpart,
            Optional<String> condition) {
        Scaled scale = Scaled.of(measure);
        List<List<double[]>> differences = new ArrayList<>();
        List<List<double[]>> donnings = new ArrayList<>();
        int bounded = 0;
        int other = 0;
        for (WithValues each : sessions) {
            Optional<Archived.Measured> own = counterpart.apply(each.session());
            if (own.isEmpty()) {
                other++;
            } else if (isBounded(each, own.get())) {
                bounded++;
            } else {
                differences.add(differences(each, own.get(), scale, condition));
                donnings.add(donnings(each, own.get(), scale, condition));
            }
        }
        return new SpreadOnRecord(
                measure,
                scale,
                Found.of(differences, Math.sqrt(2)),
                Found.of(donnings, 1),
                remarks(sessions, bounded, other));
    }

    private static boolean isBounded(WithValues session, Archived.Measured measure) {
        return session.values().stream()
                .anyMatch(
                        each ->
                                each.measure().equals(measure.id())
                                        && each.counts()
                                        && each.bounded());
    }

    /**
     * Of each condition against the mean of those before it, in units of a difference of two: with
     * one condition the difference from the reference itself. Differences from one reference would
     * share its values and count for more than they are; these do not (Helmert's contrasts, from
     * memory), and the sum of their squares is what rounds and conditions leave. Those with the
     * most rounds come first: one that was hardly or never measured takes no rounds from others.
     */
    private static List<double[]> differences(
            WithValues session,
            Archived.Measured measure,
            Scaled scale,
            Optional<String> condition) {
        List<Archived.Worn> conditions = session.session().conditions();
        List<Map<Integer, Double>> before = new ArrayList<>();
        List<double[]> groups = new ArrayList<>();
        conditions.subList(1, conditions.size()).stream()
                .filter(each -> isWanted(session, condition, each))
                .map(each -> fromReference(session, measure, scale, each))
                .sorted(Comparator.comparing(Map::size, Comparator.reverseOrder()))
                .forEach(
                        now -> {
                            groups.add(contrasts(now, before));
                            before.add(now);
                        });
        return groups;
    }

    /** The differences of one condition from the reference, by round. */
    private static Map<Integer, Double> fromReference(
            WithValues session, Archived.Measured measure, Scaled scale, Archived.Worn condition) {
        String reference = session.session().conditions().get(0).id();
        Map<Integer, Double> differences = new TreeMap<>();
        Taken.pairs(session, measure.id(), reference, condition.id())
                .forEach(
                        pair ->
                                differences.put(
                                        pair.reference().round(),
                                        pair.difference(scale, Taken.Bounded.STATED)));
        return differences;
    }

    /** The reference, less itself 0, is the first of those before. */
    private static double[] contrasts(Map<Integer, Double> now, List<Map<Integer, Double>> before) {
        int size = before.size() + 1;
        double unit = Math.sqrt(2.0 * size / (size + 1));
        return now.keySet().stream()
                .filter(round -> before.stream().allMatch(each -> each.containsKey(round)))
                .mapToDouble(
                        round ->
                                unit
                                        * (now.get(round)
                                                - before.stream()
                                                                .mapToDouble(
                                                                        each -> each.get(round))
                                                                .sum()
                                                        / size))
                .toArray();
    }

    private static List<double[]> donnings(
            WithValues session,
            Archived.Measured measure,
            Scaled scale,
            Optional<String> condition) {
        return session.session().conditions().stream()
                .filter(each -> isWanted(session, condition, each))
                .map(
                        each ->
                                Taken.numbers(
                                        Taken.counting(session, measure.id(), each.id()),
                                        scale,
                                        Taken.Bounded.STATED))
                .toList();
    }

    private static boolean isWanted(
            WithValues session, Optional<String> condition, Archived.Worn worn) {
        return condition.isEmpty()
                || Named.worn(session.session(), condition.get()).filter(worn::equals).isPresent();
    }

    private static List<String> remarks(List<WithValues> sessions, int bounded, int other) {
        List<String> remarks = new ArrayList<>();
        if (sessions.stream().anyMatch(each -> each.session().simulated())) {
            remarks.add("Simulated: every value of these sessions is invented.");
        }
        if (bounded > 0) {
            remarks.add(
                    Names.count(bounded, "session is", "sessions are")
                            + " left out: some values are only known as \"at least\", so how far"
                            + " they spread is not known.");
        }
        if (other > 0) {
            remarks.add(
                    Names.count(other, "session does", "sessions do")
                            + " not measure it, or in another way.");
        }
        return List.copyOf(remarks);
    }
}
