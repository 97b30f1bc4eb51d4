package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigside.protocol.Protocol;
import rigside.rig.Wearer;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Source;
import rigside.session.State;
import rigside.session.Value;

/** Faults asked for happen, where they were asked for, and the journal shows them. */
class FaultsTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final int DONNING = 3;

    /** What the journal shows of each. */
    private static final Map<Fault, Predicate<Event>> SHOWN =
            Map.of(
                    Fault.FAILED_SEAL_CHECK,
                    event -> event instanceof Event.ItemFailed,
                    Fault.FEED_LOST,
                    event ->
                            event instanceof Event.EntryCaptured entry
                                    && entry.source() == Source.TYPED
                                    && entry.slot().place().step() == 2,
                    Fault.NOT_HELD,
                    event ->
                            event instanceof Event.EntryVoided struck
                                    && struck.reason().contains("not held"),
                    Fault.LEFT_OUT,
                    event -> event instanceof Event.SlotLeftOut,
                    Fault.STOPPED,
                    event -> event instanceof Event.Halted,
                    Fault.DONE_AGAIN,
                    event -> event instanceof Event.ExerciseReopened,
                    Fault.ABANDONED,
                    event -> event instanceof Event.DonningAbandoned,
                    Fault.STRUCK_OUT,
                    event -> event instanceof Event.DonningStruck,
                    Fault.ENDED_EARLY,
                    event ->
                            event instanceof Event.RepeatsEnded ended
                                    && ended.reason().contains("no more time"));

    /** A session that is over, its events and its faults. */
    private record Played(State state, List<Recorded> events, Faults faults) {
        long count(Predicate<Event> shown) {
            return events.stream().filter(each -> shown.test(each.event())).count();
        }
    }

    @ParameterizedTest
    @EnumSource
    void eachHappensInItsDonningAndTheSessionComesToItsClose(Fault fault) throws IOException {
        Played played = played(List.of(at(fault, DONNING)), 5);
        assertTrue(played.state().course().closed());
        assertEquals(List.of(), played.faults().missed());
        Played careful = played(List.of(), 5);
        assertNotEquals(texts(careful), texts(played));
        if (SHOWN.containsKey(fault)) {
            assertEquals(0, careful.count(SHOWN.get(fault)));
            assertTrue(played.count(SHOWN.get(fault)) > 0);
        }
        assertEquals(upTo(careful, DONNING), upTo(played, DONNING));
    }

    @Test
    void anOddValueIsFiveTimesTooLarge() throws IOException {
        List<Double> right = values(played(List.of(), 5));
        List<Double> odd = values(played(List.of(at(Fault.ODD_VALUE, DONNING)), 5));
        List<Double> off = new ArrayList<>();
        for (int i = 0; i < right.size(); i++) {
            double times = odd.get(i) / right.get(i);
            if (Math.abs(times - 1) > 1e-9) {
                off.add(times);
            }
        }
        assertEquals(1, off.size(), off.toString());
        assertEquals(5, off.get(0), 0.02);
    }

    @Test
    void aFeedThatFallsSilentIsSaidAndItsReturnToo() throws IOException {
        Played played = played(List.of(at(Fault.FEED_LOST, DONNING)), 5);
        assertEquals(1, played.count(event -> event instanceof Event.FeedFailed));
        assertEquals(1, played.count(event -> event instanceof Event.FeedBack));
        assertEquals(
                values(played(List.of(), 5)), values(played), "typed is what would have been read");
    }

    @Test
    void anAbandonedDonningIsDoneAgain() throws IOException {
        List<Donning> donnings =
                played(List.of(at(Fault.ABANDONED, DONNING)), 5).state().course().donnings();
        assertEquals(25, donnings.size());
        assertEquals(donnings.get(2).condition(), donnings.get(3).condition());
        assertEquals(donnings.get(2).round(), donnings.get(3).round());
    }

    @Test
    void theSameSeedPutsThemInTheSamePlace() throws IOException {
        List<Faults.Asked> asked = List.of(new Faults.Asked(Fault.ODD_VALUE, OptionalInt.empty()));
        Faults first = Faults.of(AssumedTest.protocol(), asked, 8);
        assertEquals(first.asked(), Faults.of(AssumedTest.protocol(), asked, 8).asked());
        int donning = first.asked().get(0).donning();
        assertTrue(donning >= 1 && donning <= 24, () -> "donning " + donning);
    }

    @Test
    void oneThatNeverComesIsTold() throws IOException {
        Played played = played(List.of(at(Fault.NOT_HELD, 99)), 5);
        assertEquals("[not-held:99]", played.faults().missed().toString());
    }

    /** Both strike the same donning, as they may where the seed says which. */
    @Test
    void aDonningThatWasBrokenOffIsNotStruckOut() throws IOException {
        Played played =
                played(List.of(at(Fault.ABANDONED, DONNING), at(Fault.STRUCK_OUT, DONNING)), 5);
        assertTrue(played.state().course().closed());
        assertEquals("[struck-out:" + DONNING + "]", played.faults().missed().toString());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "odd-vlaue|no fault is called 'odd-vlaue'|did you mean 'odd-value'?",
                "odd-value:|names no donning|such as 'odd-value:3'",
                "odd-value:0|names no donning|such as 'odd-value:3'",
                "odd-value:third|names no donning|such as 'odd-value:3'",
            })
    void mistakesAreToldWithTheirCure(String text, String told, String cure) throws IOException {
        List<String> problems = new ArrayList<>();
        assertEquals(Optional.empty(), Faults.read(AssumedTest.protocol(), text, problems));
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).contains(told), problems.get(0));
        assertTrue(problems.get(0).contains(cure), problems.get(0));
    }

    private static Faults.Asked at(Fault fault, int donning) {
        return new Faults.Asked(fault, OptionalInt.of(donning));
    }

    private static Played played(List<Faults.Asked> asked, long seed) throws IOException {
        Protocol protocol = AssumedTest.protocol();
        Wearer wearer = AssumedWearer.of(protocol, Optional.empty(), Assumed.NOTHING);
        Event.SessionOpened opening = AssumedTest.opening(wearer, seed);
        Faults faults = Faults.of(protocol, asked, seed);
        List<Recorded> kept = new ArrayList<>();
        State state =
                Rehearsal.run(
                        (events, wall, at) ->
                                events.forEach(
                                        event ->
                                                kept.add(
                                                        new Recorded(
                                                                kept.size() + 1, wall, at, event))),
                        new Tester(Rigs.of(opening, protocol), faults),
                        MORNING,
                        opening);
        return new Played(state, kept, faults);
    }

    private static List<Double> values(Played played) {
        return played.state().captured().entries().stream()
                .map(Entry::value)
                .filter(Value.Measured.class::isInstance)
                .map(value -> ((Value.Measured) value).quantity().si())
                .toList();
    }

    private static List<String> texts(Played played) {
        return played.events().stream().map(each -> each.event().toString()).toList();
    }

    /** Everything before a donning begins. */
    private static List<String> upTo(Played played, int donning) {
        return played.events().stream()
                .map(Recorded::event)
                .takeWhile(
                        event ->
                                !(event instanceof Event.DonningStarted begun
                                        && begun.donning() == donning))
                .map(Event::toString)
                .toList();
    }
}
