package rigside.report;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import rigside.analysis.Shown;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * What a data package may tell of a session: all of it once nothing is concealed any more. Before
 * that {@link Shown} says which values are out, and neither times nor events are told, since how
 * long a trial took stands between two of them.
 *
 * @param state the session
 * @param shown what concealment lets out
 * @param events all events, in order
 */
record Told(State state, Shown shown, List<Recorded> events) {
    Told {
        events = List.copyOf(events);
    }

    /** Whether nothing is concealed, so that times and events are told. */
    boolean isWhole() {
        return shown.trialClock() && shown.result();
    }

    /** Whether nothing can be entered any more, so that the order drawn is no secret. */
    boolean isOver() {
        Activity now = state.activity();
        return now instanceof Activity.Closing || now instanceof Activity.Closed;
    }

    Optional<Donning> donning(int number) {
        return state.course().donning(number);
    }

    /** The title of a step; empty where the protocol has none there. */
    String title(Place place) {
        List<Step> steps = Procedure.steps(state.protocol(), place.stage());
        return place.step() < steps.size() ? steps.get(place.step()).title() : "";
    }

    /** Whether an entry is part of a value that counts. */
    boolean counts(Entry entry) {
        return entry.stands()
                && shown.measures().stream()
                        .flatMap(measure -> measure.values().stream())
                        .anyMatch(
                                value ->
                                        value.counts() && value.entries().contains(entry.number()));
    }

    Optional<Entry> entry(int number) {
        return state.captured().entry(number);
    }

    /** When an event happened that is the last of its like, if times are told. */
    Optional<ZonedDateTime> time(Predicate<Event> event) {
        return isWhole()
                ? events.stream()
                        .filter(each -> event.test(each.event()))
                        .reduce((first, last) -> last)
                        .map(Recorded::wall)
                : Optional.empty();
    }

    /** When an entry was captured. */
    Optional<ZonedDateTime> captured(Entry entry) {
        return time(
                event ->
                        event instanceof Event.EntryCaptured captured
                                && captured.entry() == entry.number());
    }

    /** Session time in seconds, exact in its decimals, if times are told. */
    OptionalDouble seconds(long nanos) {
        return isWhole() ? OptionalDouble.of(nanos / 1e9) : OptionalDouble.empty();
    }

    /** A number, from 1, of something that may be there. */
    static OptionalInt any(int number) {
        return number > 0 ? OptionalInt.of(number) : OptionalInt.empty();
    }
}
