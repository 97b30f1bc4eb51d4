package rigside.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One full inhalation as a pressure trace shows it. Pressures here are sizes of the suction: above
 * 0 while inhaling.
 *
 * <p>Through a linear (Darcy) resistance R the inhaled volume is V = (1/R) times the integral of P
 * dt, so the integral over the target pressure P0 is the time the same inhalation would have taken
 * had P0 been held exactly, however unsteady the pull was. Through dP = a Q^b with b above 1 it is
 * not: at x times the target the pull has x^(1 - 1/b) times the integral (and takes x^(-1/b) times
 * as long), so that with b = 2 a pull at half the target looks 29 % too easy and one at 1.6 times
 * the target 26 % too hard; one that wavers evenly between them, 6 % too hard. Pressure-time
 * product: ATS/ERS statement on respiratory muscle testing, 2002 (from memory).
 *
 * <p>The pull begins and ends where the suction passes {@link #LEAVES} of the target, the last time
 * before and the first time after it was above {@link #COUNTS}: noise neither begins nor ends it
 * (hysteresis). Without breathing out in between, a pull that is back above that within {@link
 * #FALTER_SECONDS} is still the same. The gauge's zero is trusted: an offset e shifts the
 * equivalent time by e over the target.
 *
 * @param startSeconds when it began, on the trace's clock
 * @param endSeconds when it ended
 * @param integral of the suction from start to end in Pa s, gaps bridged by straight lines
 * @param meanPa the mean suction over that time
 * @param spreadPa the standard deviation of the suction over that time
 * @param withinShare the share of that time for which the suction was inside the tolerance, from 0
 *     to 1; its rise and fall are not
 * @param unseenSeconds how much of it lay in gaps
 * @param whole whether the trace shows it from its beginning to its end
 * @param pulls how many inhalations there were between the trigger's presses; more than 1 where the
 *     wearer breathed out in between
 */
public record TracedInhalation(
        double startSeconds,
        double endSeconds,
        double integral,
        double meanPa,
        double spreadPa,
        double withinShare,
        double unseenSeconds,
        boolean whole,
        int pulls) {

    /** Share of the target suction at which a pull begins and ends; ours, no source. */
    static final double LEAVES = 0.05;

    /** Share of the target suction that a pull has to reach to be one; ours, no source. */
    static final double COUNTS = 0.2;

    /** A pull may falter for so long; ours, no source. */
    static final double FALTER_SECONDS = 0.3;

    /** The time from start to end, in seconds. */
    public double seconds() {
        return endSeconds - startSeconds;
    }

    /**
     * The time the inhalation would have taken at the target suction, in seconds.
     *
     * @throws IllegalArgumentException if the target is not a finite number above 0
     */
    public double equivalentSeconds(double targetPa) {
        return integral / Check.positive("target pressure", targetPa);
    }

    /**
     * The inhalation that shares most time with the trigger's two presses.
     *
     * @param trace with some time around the presses: the pull may begin before the first one
     * @param targetPa the suction to hold, above 0
     * @param tolerance how far from the target still counts as held, as a share of it, 0 or above
     * @param pressedSeconds when the first press came, on the trace's clock
     * @param releasedSeconds when the second came, or now while the pull goes on
     * @return empty if the trace shows none in that time
     * @throws IllegalArgumentException if target or tolerance is out of its range, NaN or infinite
     */
    public static Optional<TracedInhalation> find(
            TimedTrace trace,
            double targetPa,
            double tolerance,
            double pressedSeconds,
            double releasedSeconds) {
        Check.positive("target pressure", targetPa);
        Check.notNegative("tolerance", tolerance);
        List<Pull> shared =
                Finder.pulls(trace, targetPa * LEAVES, targetPa * COUNTS).stream()
                        .filter(pull -> pull.shared(pressedSeconds, releasedSeconds) > 0)
                        .toList();
        return shared.stream()
                .max(Comparator.comparingDouble(p -> p.shared(pressedSeconds, releasedSeconds)))
                .map(
                        pull ->
                                of(
                                        trace.between(pull.start(), pull.end()),
                                        targetPa,
                                        tolerance,
                                        pull.whole(),
                                        shared.size()));
    }

    private static TracedInhalation of(
            TimedTrace part, double targetPa, double tolerance, boolean whole, int pulls) {
        double seconds = part.seconds();
        double integral = -part.integral();
        double mean = integral / seconds;
        return new TracedInhalation(
                part.readings().get(0).seconds(),
                part.last().seconds(),
                integral,
                mean,
                Math.sqrt(part.integralOfSquares(-mean) / seconds),
                part.secondsWithin(-targetPa * (1 + tolerance), -targetPa * (1 - tolerance))
                        / seconds,
                part.gaps(),
                whole,
                pulls);
    }

    /** A stretch of suction, and whether both its ends were seen. */
    private record Pull(double start, double end, boolean whole) {
        double shared(double from, double to) {
            return Math.min(end, to) - Math.max(start, from);
        }
    }

    /** Goes through a trace once. */
    private static final class Finder {
        private final double leaves;
        private final double counts;
        private final double gapSeconds;
        private final List<Pull> found = new ArrayList<>();
        private Optional<Edge> start = Optional.empty();
        private Optional<Edge> falter = Optional.empty();
        private boolean counted;

        /** A passing of the lower threshold, and whether it was seen. */
        private record Edge(double seconds, boolean seen) {}

        private Finder(double leaves, double counts, double gapSeconds) {
            this.leaves = leaves;
            this.counts = counts;
            this.gapSeconds = gapSeconds;
        }

        static List<Pull> pulls(TimedTrace trace, double leaves, double counts) {
            Finder finder = new Finder(leaves, counts, trace.gapSeconds());
            Optional<TimedTrace.Reading> before = Optional.empty();
            for (TimedTrace.Reading reading : trace.readings()) {
                finder.read(reading, before);
                before = Optional.of(reading);
            }
            before.ifPresent(last -> finder.end(new Edge(last.seconds(), false)));
            return List.copyOf(finder.found);
        }

        private void read(TimedTrace.Reading reading, Optional<TimedTrace.Reading> before) {
            double suction = -reading.pascals();
            if (start.isEmpty() && suction >= leaves) {
                start = Optional.of(edge(reading, before));
            } else if (start.isPresent() && falter.isEmpty() && suction < leaves) {
                falter = Optional.of(edge(reading, before));
            }
            if (start.isPresent() && suction >= counts) {
                counted = true;
                falter = Optional.empty();
            }
            if (falter.isPresent()) {
                double faltered = reading.seconds() - falter.get().seconds();
                if (!counted || suction <= -leaves || faltered >= FALTER_SECONDS) {
                    end(falter.get());
                }
            }
        }

        /** At the trace's end the suction may last, or have fallen too lately to be sure. */
        private void end(Edge otherwise) {
            Edge end = falter.orElse(otherwise);
            if (start.isPresent() && counted && end.seconds() > start.get().seconds()) {
                boolean whole = start.get().seen() && end.seen();
                found.add(new Pull(start.get().seconds(), end.seconds(), whole));
            }
            start = Optional.empty();
            falter = Optional.empty();
            counted = false;
        }

        private Edge edge(TimedTrace.Reading reading, Optional<TimedTrace.Reading> before) {
            return before.map(
                            a -> {
                                double seconds = reading.seconds() - a.seconds();
                                double share =
                                        (-leaves - a.pascals()) / (reading.pascals() - a.pascals());
                                return new Edge(
                                        a.seconds() + share * seconds, seconds <= gapSeconds);
                            })
                    .orElseGet(() -> new Edge(reading.seconds(), false));
        }
    }
}
