package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.rig.Cue;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Recorded;
import rigside.session.Story;

/**
 * A whole session judged from its cue record alone, as somebody lives it who cannot see the screen:
 * at every moment the journal tells of, the right thing is cued, once, and nothing else is.
 *
 * <p>The times expected here are worked out from the journal's other events and the numbers of
 * small.yaml: lead-in 3 s, rest 30 s, purge 10 s, two exercises of 20 s.
 */
class CueRecordTest {
    private static final double LATEST_SECONDS = 0.02;
    private static final long TICK = 50_000_000L;

    /** A loop that wakes late by up to this much, in nanoseconds of the real clock. */
    private static final int SLOW = 10_000_000;

    private final List<Recorded> kept = new ArrayList<>();

    /** A cue and when it is due or was given, in seconds of session time. */
    private record Cued(double at, String cue) {}

    @ParameterizedTest(name = "{0} times as fast as the clock")
    @ValueSource(doubles = {1, 30, 250})
    void theRightThingIsCuedAtTheRightTimeAndNothingElse(double speed) throws IOException {
        run(speed);
        List<Cued> expected = expected();
        List<Cued> given = given();
        assertTrue(expected.size() > 150, () -> "only " + expected.size() + " cues");
        assertEquals(expected.stream().map(Cued::cue).toList(), words(given));
        assertAll(
                IntStream.range(0, given.size())
                        .mapToObj(
                                i ->
                                        () ->
                                                assertEquals(
                                                        expected.get(i).at(),
                                                        given.get(i).at(),
                                                        LATEST_SECONDS * speed,
                                                        expected.get(i).cue())));
    }

    private static List<String> words(List<Cued> cues) {
        return cues.stream().map(Cued::cue).toList();
    }

    @Test
    void noCueIsKeptMoreThanOnceHoweverOftenTimePasses() throws IOException {
        run(1);
        List<Cued> given = given();
        assertEquals(given.stream().distinct().toList(), given);
    }

    /** What time leads to by itself is seen up to {@link #SLOW} late, as a busy machine would. */
    private void run(double speed) throws IOException {
        Wearer wearer = Wearer.plain(List.of("bare", "disc"));
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        11,
                        "simulated: " + wearer.title(),
                        "",
                        true,
                        speed);
        ZonedDateTime morning = ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(e -> kept.add(new Recorded(kept.size() + 1, wall, at, e)));
        Runner runner = Runner.open(ledger, new SimulatedRig(wearer, 11), () -> morning, opening);
        Random late = new Random(5);
        long now = 0;
        while (!runner.state().course().closed()) {
            Optional<Input> key = Rehearser.key(runner.state(), now);
            OptionalLong next = runner.next();
            long tick = now + (long) (TICK * speed);
            long wakes = key.isPresent() ? tick : Math.min(tick, next.orElse(tick));
            now = Math.max(now, wakes) + (long) (late.nextInt(SLOW) * speed);
            List<Cue> cues = new ArrayList<>(key.isPresent() ? List.of() : runner.timed(now));
            Result result = key.isPresent() ? runner.accept(key.get(), now) : runner.tick(now);
            if (result instanceof Result.Done done) {
                cues.addAll(done.cues());
                runner.cued(cues, "tones", now);
            }
        }
    }

    private List<Cued> given() {
        return kept.stream()
                .filter(each -> each.event() instanceof Event.Cued)
                .map(each -> new Cued(each.at() / 1e9, ((Event.Cued) each.event()).cue()))
                .toList();
    }

    private List<Cued> expected() {
        List<Cued> all = new ArrayList<>();
        double stopped = Double.NaN;
        Event before = null;
        for (Recorded each : kept) {
            double at = each.at() / 1e9;
            Event event = each.event();
            if (event instanceof Event.LeadInStarted) {
                add(all, at, Cue.LEAD_IN, at + 1, Cue.LEAD_IN, at + 2, Cue.LEAD_IN, at + 3, Cue.GO);
            } else if (event instanceof Event.TrialStarted) {
                add(all, at, Cue.START);
            } else if (event instanceof Event.TrialStopped) {
                stopped = at;
                add(all, at, Cue.STOP);
            } else if (event instanceof Event.RestFinished) {
                add(all, stopped + 27, Cue.LAST_SECONDS, at, Cue.NEXT);
            } else if (event instanceof Event.CountdownStarted) {
                add(all, at, Cue.START, at + 5, Cue.HALF_WAY, at + 7, Cue.LAST_SECONDS);
            } else if (event instanceof Event.ExerciseStarted) {
                if (!(before instanceof Event.ExerciseFinished)) {
                    add(all, at, Cue.START);
                }
                add(all, at + 10, Cue.HALF_WAY, at + 17, Cue.LAST_SECONDS);
            } else if (event instanceof Event.CountdownFinished
                    || event instanceof Event.ExerciseFinished) {
                add(all, at, Cue.NEXT);
            } else if (event instanceof Event.VoidOffered) {
                add(all, at, Cue.PROBLEM);
            }
            before = event instanceof Event.Cued ? before : event;
        }
        return all.stream().sorted(Comparator.comparingDouble(Cued::at)).toList();
    }

    private static void add(List<Cued> all, Object... timesAndCues) {
        for (int i = 0; i < timesAndCues.length; i += 2) {
            all.add(new Cued((double) timesAndCues[i], ((Cue) timesAndCues[i + 1]).word()));
        }
    }
}
