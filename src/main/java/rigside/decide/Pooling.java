package rigside.decide;

import java.util.List;
import java.util.Optional;

/**
 * Differences of several sessions of one protocol and wearer put together, each session a block of
 * its own. What one round varies by within its session is taken as one number for all of them: of
 * three rounds no session knows its own well enough to be weighed by it.
 *
 * @param sessions one a session, in the order given
 * @param within the spread of one difference within its session, never below what rounding explains
 * @param isRounding whether it is what rounding explains, the rounds spreading by less
 * @param freedom its degrees of freedom
 * @param unlike the chance of spreads within sessions as unlike as these if they were one; NaN
 *     where it cannot be said
 * @param effects how sessions differ; empty with a single session
 */
public record Pooling(
        List<Summary> sessions,
        double within,
        boolean isRounding,
        double freedom,
        double unlike,
        Optional<RandomEffects> effects) {

    public Pooling {
        sessions = List.copyOf(sessions);
    }

    /**
     * These sessions put together.
     *
     * @param sessions the differences of each, at least two, finite
     * @param leastSpread what rounding alone gives the spread of a difference, at least 0
     * @throws IllegalArgumentException if there is no session, one has fewer than two differences,
     *     or nothing varies
     */
    public static Pooling of(List<double[]> sessions, double leastSpread) {
        if (sessions.isEmpty() || sessions.stream().anyMatch(each -> each.length < 2)) {
            throw new IllegalArgumentException("each session needs two differences");
        }
        PooledSpread spread = PooledSpread.of(sessions);
        double within = Math.max(spread.sd(), leastSpread);
        if (!(within > 0)) {
            throw new IllegalArgumentException("nothing varies within a session");
        }
        List<Summary> summaries = sessions.stream().map(Summary::of).toList();
        return new Pooling(
                summaries,
                within,
                leastSpread > spread.sd(),
                spread.freedom(),
                spread.unlike(),
                summaries.size() < 2
                        ? Optional.empty()
                        : Optional.of(
                                RandomEffects.of(
                                        summaries.stream()
                                                .map(
                                                        each ->
                                                                new RandomEffects.Estimate(
                                                                        each.mean(),
                                                                        within * within / each.n()))
                                                .toList(),
                                        spread.freedom())));
    }

    /** The pooled difference. */
    public double mean() {
        return effects.map(RandomEffects::mean).orElseGet(() -> sessions.get(0).mean());
    }

    /**
     * An ordinary interval for the mean over sessions; with one session that of its own rounds.
     *
     * @param confidence in (0, 1)
     */
    public Interval interval(double confidence) {
        return effects.map(each -> each.interval(confidence))
                .orElseGet(
                        () ->
                                new Interval(
                                        mean(),
                                        within / Math.sqrt(sessions.get(0).n()),
                                        freedom,
                                        StudentT.upperQuantile((1 - confidence) / 2, freedom)));
    }
}
