package rigside.runner;

import java.util.List;
import java.util.Optional;
import rigside.measure.Breath;
import rigside.measure.FreeBreathing;
import rigside.measure.FreeBreathing.Zero;
import rigside.measure.TimedTrace;
import rigside.measure.TracedInhalation;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.rig.Reading;
import rigside.rig.Rig;
import rigside.rig.Sample;
import rigside.rig.Signal;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Input;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Trace;

/** What the rig's pressure readings say about pulls and breaths. */
record Traces(Rig rig) {
    private static final double NANOS = 1e9;

    /** A pull may begin so long before the trigger's first press. */
    private static final double BEFORE_SECONDS = 2;

    /** Suction is gone, and the last line of an instrument in, so soon after the second press. */
    private static final double AFTER_SECONDS = 1;

    /** A pull of which a larger share was not seen is not judged by its trace; ours, no source. */
    private static final double MOST_UNSEEN = 0.1;

    /** Where no tolerance is declared nothing is judged by it. */
    private static final double NO_TOLERANCE = 0;

    /** Whether an instrument is there to follow the pressure, silent or not. */
    boolean isAttached() {
        return rig.now(Signal.PRESSURE).isPresent();
    }

    /** Whether an instrument follows the pressure now. */
    boolean isFollowed() {
        return rig.now(Signal.PRESSURE).filter(now -> now.si().isPresent()).isPresent();
    }

    /** When the trace of a pull can be read, in nanoseconds of session time. */
    static long due(Activity.Tracing tracing) {
        return tracing.since() + Math.round(AFTER_SECONDS * NANOS);
    }

    /** What the trace shows of a pull that has ended; empty while more of it may come. */
    Optional<Input> pull(State state, Activity.Tracing tracing, long now) {
        return now < due(tracing) ? Optional.empty() : Optional.of(judged(state, tracing));
    }

    private Input judged(State state, Activity.Tracing tracing) {
        long zero = tracing.pressedAt();
        List<Reading> readings =
                rig.readings(
                        Signal.PRESSURE,
                        zero - Math.round(BEFORE_SECONDS * NANOS),
                        tracing.since() + Math.round(AFTER_SECONDS * NANOS));
        Step.Trials step = (Step.Trials) Procedure.step(state, tracing.place());
        Optional<TracedInhalation> found =
                trace(readings, zero)
                        .flatMap(
                                trace ->
                                        TracedInhalation.find(
                                                trace,
                                                step.target().si(),
                                                step.tolerance().orElse(NO_TOLERANCE),
                                                0,
                                                (tracing.since() - zero) / NANOS));
        if (found.isEmpty()) {
            return new Input.PullNotTraced("the gauge shows no pull between the two presses");
        }
        if (!found.get().whole()) {
            return new Input.PullNotTraced("the gauge does not show the whole pull");
        }
        double unseen = found.get().unseenSeconds();
        return unseen > MOST_UNSEEN * found.get().seconds()
                ? new Input.PullNotTraced("the gauge was silent for too much of the pull")
                : new Input.PullTraced(rounded(found.get()));
    }

    /** The breaths in the window of an exercise; empty where it has to be typed. */
    Optional<Input> breaths(State state, Slot.Pressure slot) {
        Optional<Span> window = Windows.pressure(state, slot);
        boolean usable =
                window.flatMap(span -> rig.sample(Signal.PRESSURE, span))
                        .filter(Sample::isUsable)
                        .isPresent();
        if (!usable) {
            return Optional.empty();
        }
        Span span = window.get();
        return trace(rig.readings(Signal.PRESSURE, span.from(), span.to()), span.from())
                .map(trace -> FreeBreathing.of(trace, zero(state, slot)))
                .flatMap(
                        all ->
                                all.medians()
                                        .map(
                                                medians ->
                                                        new Input.BreathsFound(
                                                                slot,
                                                                new Trace.Breaths(
                                                                        all.breaths().size(),
                                                                        all.broken(),
                                                                        rounded(medians)))));
    }

    private static Zero zero(State state, Slot.Pressure slot) {
        Step.Exercises step = (Step.Exercises) Procedure.step(state, slot.place());
        return state.protocol().measures().stream()
                .filter(measure -> step.pressureTrace().equals(Optional.of(measure.id())))
                .map(Measure::kind)
                .filter(Measure.PressureTrace.class::isInstance)
                .map(kind -> ((Measure.PressureTrace) kind).zero())
                .findFirst()
                .orElse(Zero.GAUGE);
    }

    /** A trace of readings, with seconds from a moment on; empty with fewer than two moments. */
    private static Optional<TimedTrace> trace(List<Reading> readings, long zero) {
        List<TimedTrace.Reading> timed =
                readings.stream()
                        .map(each -> new TimedTrace.Reading((each.at() - zero) / NANOS, each.si()))
                        .toList();
        if (timed.isEmpty()) {
            return Optional.empty();
        }
        double seconds = timed.get(timed.size() - 1).seconds() - timed.get(0).seconds();
        return seconds > 0
                ? Optional.of(TimedTrace.of(timed, (timed.size() - 1) / seconds))
                : Optional.empty();
    }

    /** Milliseconds and hundredths of a Pa: more digits would only pretend. */
    private static TracedInhalation rounded(TracedInhalation all) {
        return new TracedInhalation(
                seconds(all.startSeconds()),
                seconds(all.endSeconds()),
                pascals(all.integral()),
                pascals(all.meanPa()),
                pascals(all.spreadPa()),
                seconds(all.withinShare()),
                seconds(all.unseenSeconds()),
                all.whole(),
                all.pulls());
    }

    private static Breath rounded(Breath all) {
        return new Breath(
                0,
                seconds(all.seconds()),
                seconds(all.inhalationSeconds()),
                pascals(all.peakInhalationPa()),
                pascals(all.peakExhalationPa()),
                pascals(all.inhalationIntegral()),
                pascals(all.exhalationIntegral()));
    }

    private static double seconds(double exact) {
        return Math.rint(exact * 1000) / 1000;
    }

    private static double pascals(double exact) {
        return Math.rint(exact * 100) / 100;
    }
}
