package rigside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigside.protocol.Exercise;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Stage;

/**
 * When the pressure was followed for one entry. Times are nanoseconds of session time.
 *
 * @param entry the number of the entry
 * @param from when it begins
 * @param to when it ends; after {@code from}
 * @param zero what seconds are counted from: the trigger's first press, or the window's begin
 * @param seconds how long from there to the second press, or to the window's end
 */
public record PressureWindow(int entry, long from, long to, long zero, double seconds) {
    private static final double NANOS = 1e9;

    /** Around a pull that much is looked at, as when its trace was judged at the bench. */
    private static final double BEFORE_SECONDS = 2;

    private static final double AFTER_SECONDS = 1;

    /** Nothing that is followed takes longer: a journal that says so was not written at a bench. */
    private static final double LONGEST_SECONDS = 86_400;

    /** What of a session has to be remembered until an entry is captured. */
    private static final class Met {
        private final Protocol protocol;
        private final Map<Slot.Trial, Long> pressed = new HashMap<>();
        private final Map<Slot.Trial, Double> seconds = new HashMap<>();
        private final Map<Slot.Pressure, Long> begun = new HashMap<>();

        Met(Protocol protocol) {
            this.protocol = protocol;
        }

        Optional<PressureWindow> meets(Recorded recorded) {
            Event event = recorded.event();
            if (event instanceof Event.TrialStarted started) {
                pressed.put(new Slot.Trial(started.place(), started.trial()), recorded.at());
            } else if (event instanceof Event.TrialStopped stopped) {
                seconds.put(new Slot.Trial(stopped.place(), stopped.trial()), stopped.seconds());
            } else if (event instanceof Event.ExerciseStarted started) {
                begun.put(new Slot.Pressure(started.place(), started.exercise()), recorded.at());
            } else if (event instanceof Event.EntryCaptured captured) {
                return window(captured);
            }
            return Optional.empty();
        }

        private Optional<PressureWindow> window(Event.EntryCaptured captured) {
            if (captured.slot() instanceof Slot.Trial slot) {
                return pressed.containsKey(slot) && seconds.containsKey(slot)
                        ? pull(captured.entry(), pressed.remove(slot), seconds.remove(slot))
                        : Optional.empty();
            }
            return captured.slot() instanceof Slot.Pressure slot && begun.containsKey(slot)
                    ? exercise(slot)
                            .flatMap(Exercise::pressure)
                            .flatMap(
                                    window ->
                                            of(
                                                    captured.entry(),
                                                    begun.get(slot) + nanos(window.from()),
                                                    0,
                                                    window.to() - window.from(),
                                                    0))
                    : Optional.empty();
        }

        private static Optional<PressureWindow> pull(int entry, long pressed, double seconds) {
            return of(entry, pressed, BEFORE_SECONDS, seconds, AFTER_SECONDS);
        }

        private Optional<Exercise> exercise(Slot.Pressure slot) {
            Place place = slot.place();
            boolean known =
                    place.stage() == Stage.DONNING && place.step() < protocol.donning().size();
            return known
                            && protocol.donning().get(place.step()) instanceof Step.Exercises step
                            && slot.exercise() < step.exercises().size()
                    ? Optional.of(step.exercises().get(slot.exercise()))
                    : Optional.empty();
        }
    }

    private static Optional<PressureWindow> of(
            int entry, long zero, double before, double seconds, double after) {
        return seconds > 0 && seconds <= LONGEST_SECONDS
                ? Optional.of(
                        new PressureWindow(
                                entry,
                                zero - nanos(before),
                                zero + nanos(seconds + after),
                                zero,
                                seconds))
                : Optional.empty();
    }

    private static long nanos(double seconds) {
        return Math.round(seconds * NANOS);
    }

    /** Those of a session's inhalations and pressure exercises, in the order they begin. */
    public static List<PressureWindow> all(Protocol protocol, List<Recorded> events) {
        Met met = new Met(protocol);
        List<PressureWindow> all = new ArrayList<>();
        events.forEach(each -> met.meets(each).ifPresent(all::add));
        all.sort(Comparator.comparingLong(PressureWindow::from));
        return List.copyOf(all);
    }

    /** A moment in seconds from {@code zero}. */
    double at(long moment) {
        return (moment - zero) / NANOS;
    }

    double begin() {
        return at(from);
    }

    double end() {
        return at(to);
    }
}
