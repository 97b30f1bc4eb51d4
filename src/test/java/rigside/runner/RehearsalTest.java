package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Story;
import rigside.session.Trace;
import rigside.session.Value;

class RehearsalTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    @Test
    void aRehearsalGoesFromTheOpeningToTheClose() throws IOException {
        List<Recorded> kept = new ArrayList<>();
        State end = rehearse(11, MORNING, kept);
        assertTrue(end.course().closed());
        assertTrue(end.captured().lastLook().orElseThrow().round() >= 2);
    }

    @Test
    void theSameSeedGivesTheSameEventsWheneverItIsRun() throws IOException {
        List<Recorded> first = new ArrayList<>();
        List<Recorded> second = new ArrayList<>();
        rehearse(11, MORNING, first);
        rehearse(11, MORNING.plusDays(3), second);
        assertEquals(withoutWall(first), withoutWall(second));
    }

    @Test
    void anotherSeedGivesAnotherSession() throws IOException {
        List<Recorded> first = new ArrayList<>();
        List<Recorded> second = new ArrayList<>();
        rehearse(11, MORNING, first);
        rehearse(12, MORNING, second);
        assertNotEquals(withoutWall(first), withoutWall(second));
    }

    @Test
    void everyRoundIsLookedAtInTheSameWriteThatCompletesIt() throws IOException {
        List<Recorded> kept = new ArrayList<>();
        State end = rehearse(11, MORNING, kept);
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).event() instanceof Event.LookTaken) {
                assertTrue(kept.get(i - 1).event() instanceof Event.DonningCompleted);
                assertEquals(kept.get(i - 1).at(), kept.get(i).at());
            }
        }
        assertEquals(
                end.captured().lastLook().orElseThrow().round(), end.captured().looks().size());
    }

    /** The trace is read ten times a second; the held pressure wavers by 8 % of the target. */
    @Test
    void aWearerWithAGaugeIsTracedInEveryTrialAndAskedNothing() throws IOException {
        List<Recorded> kept = new ArrayList<>();
        Wearer plain = Wearer.plain(List.of("bare", "disc"));
        SimulatedRig rig =
                new SimulatedRig(
                        new Wearer(
                                plain.title(),
                                plain.ambient(),
                                plain.ambientSpread(),
                                plain.conditions(),
                                plain.otherwise(),
                                true),
                        11);
        State end = rehearse(rig, 11, MORNING, kept);
        List<Entry> trials =
                end.captured().entries().stream()
                        .filter(each -> each.slot() instanceof Slot.Trial)
                        .toList();
        assertTrue(trials.size() >= 8, () -> trials.toString());
        for (Entry trial : trials) {
            Trace.Pull pull = trial.pull().orElseThrow();
            double seconds = ((Value.Measured) trial.value()).quantity().si();
            assertEquals(pull.pressedSeconds(), seconds, 0.01 * seconds, "answered and traced");
            assertEquals(1, pull.inhalation().pulls());
        }
        assertTrue(kept.stream().noneMatch(each -> each.event() instanceof Event.TraceMissing));
        assertEquals(end, Evolve.fold(kept));
    }

    private static State rehearse(long seed, ZonedDateTime start, List<Recorded> kept)
            throws IOException {
        Wearer wearer = Wearer.plain(List.of("bare", "disc"));
        return rehearse(new SimulatedRig(wearer, seed), seed, start, kept);
    }

    private static State rehearse(
            SimulatedRig rig, long seed, ZonedDateTime start, List<Recorded> kept)
            throws IOException {
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(
                                event -> kept.add(new Recorded(kept.size() + 1, wall, at, event)));
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        seed,
                        rig.words(),
                        "",
                        true,
                        1);
        return Rehearsal.run(ledger, rig, start, opening);
    }

    private static List<String> withoutWall(List<Recorded> kept) {
        return kept.stream()
                .map(each -> each.number() + " " + each.at() + " " + each.event())
                .toList();
    }
}
