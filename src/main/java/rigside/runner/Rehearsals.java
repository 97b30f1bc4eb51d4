package rigside.runner;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Looks;
import rigside.analysis.PlanTable;
import rigside.analysis.PlanTerms;
import rigside.protocol.Protocol;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.State;

/**
 * What many rehearsals of one protocol came to, beside what its plan lets one expect.
 *
 * @param sessions how many were played; at least 1
 * @param comparisons one for each truth
 * @param meanRounds complete rounds of a session, on average
 * @param meanSeconds session time from the opening to the close, on average
 * @param missed faults asked for that did not happen, over all sessions
 */
public record Rehearsals(
        int sessions,
        List<Comparison> comparisons,
        double meanRounds,
        double meanSeconds,
        int missed) {
    private static final double NANOS = 1e9;

    public Rehearsals {
        comparisons = List.copyOf(comparisons);
    }

    /**
     * One comparison over all sessions. The verdict counted is the first that settled.
     *
     * @param meaningful sessions settled on a meaningful difference
     * @param noMeaningful sessions settled on no meaningful difference
     * @param meanRounds rounds until it settled, or all there were, on average
     * @param roundsError the standard error of that; 0 for one session
     * @param expected what the plan lets one expect; empty where values do not spread
     */
    public record Comparison(
            Truth truth,
            int meaningful,
            int noMeaningful,
            double meanRounds,
            double roundsError,
            Optional<PlanTable.Outcome> expected) {}

    /** Makes a session of a seed. */
    public interface Session {
        /**
         * Plays it.
         *
         * @throws IOException if an event cannot be kept
         */
        Played play(long seed) throws IOException;
    }

    /**
     * A session that is over.
     *
     * @param nanos session time at its end
     * @param missed faults that did not happen
     */
    public record Played(State state, long nanos, int missed) {}

    /** Plays a session and keeps nothing of it but how it ended. */
    public static Played forgotten(
            Tester tester, Faults faults, ZonedDateTime start, Event.SessionOpened opening)
            throws IOException {
        long[] last = {0};
        Ledger none = (events, wall, at) -> last[0] = at;
        State state = Rehearsal.run(none, tester, start, opening);
        return new Played(state, last[0], faults.missed().size());
    }

    /**
     * Plays sessions with the seeds from one on.
     *
     * @param truths of the wearer who is invented
     * @throws IOException if an event cannot be kept
     */
    public static Rehearsals play(
            Protocol protocol, List<Truth> truths, long firstSeed, int sessions, Session session)
            throws IOException {
        List<Course> courses = new ArrayList<>();
        truths.forEach(truth -> courses.add(new Course(truth)));
        double rounds = 0;
        double seconds = 0;
        int missed = 0;
        for (int i = 0; i < sessions; i++) {
            Played played = session.play(firstSeed + i);
            List<Look> looks = played.state().captured().looks();
            courses.forEach(course -> course.add(looks));
            rounds += looks.isEmpty() ? 0 : looks.get(looks.size() - 1).round();
            seconds += played.nanos() / NANOS;
            missed += played.missed();
        }
        return new Rehearsals(
                sessions,
                courses.stream().map(course -> course.over(protocol, sessions)).toList(),
                rounds / sessions,
                seconds / sessions,
                missed);
    }

    /** One comparison while sessions are counted. */
    private static final class Course {
        private final Truth truth;
        private int meaningful;
        private int noMeaningful;
        private double sum;
        private double squares;

        Course(Truth truth) {
            this.truth = truth;
        }

        void add(List<Look> looks) {
            double rounds = 0;
            Optional<Look.Line> settled = Optional.empty();
            for (int i = 0; i < looks.size() && settled.isEmpty(); i++) {
                rounds = looks.get(i).round();
                settled = looks.get(i).lines().stream().filter(this::isSettling).findFirst();
            }
            meaningful += settled.filter(Looks::isMeaningful).isPresent() ? 1 : 0;
            noMeaningful += settled.filter(line -> !Looks.isMeaningful(line)).isPresent() ? 1 : 0;
            sum += rounds;
            squares += rounds * rounds;
        }

        private boolean isSettling(Look.Line line) {
            return line.settled()
                    && line.measure().equals(truth.measure().id())
                    && line.condition().equals(truth.condition());
        }

        Comparison over(Protocol protocol, int sessions) {
            double mean = sum / sessions;
            double variance =
                    sessions > 1
                            ? Math.max(0, squares - sessions * mean * mean) / (sessions - 1)
                            : 0;
            return new Comparison(
                    truth,
                    meaningful,
                    noMeaningful,
                    mean,
                    Math.sqrt(variance / sessions),
                    expected(protocol));
        }

        private Optional<PlanTable.Outcome> expected(Protocol protocol) {
            double spread = truth.roundSpread(protocol.plan().design());
            return spread > 0
                    ? PlanTerms.of(protocol, truth.measure(), OptionalDouble.of(spread))
                            .map(terms -> PlanTable.at(terms, truth.change(), 1))
                    : Optional.empty();
        }
    }
}
