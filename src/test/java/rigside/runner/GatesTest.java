package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.rig.Cue;
import rigside.rig.Feeds;
import rigside.rig.Rig;
import rigside.rig.RigFile;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Gated;
import rigside.session.Input;
import rigside.session.Source;

/** Gates read by what a rig gives. */
class GatesTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SECOND = 1_000_000_000L;

    @TempDir Path folder;
    private final List<Cue> cues = new ArrayList<>();
    private long now;

    /** One counter on a switched tube: its trace, and three seconds to settle. */
    private Rig counter(String trace) throws IOException {
        return counter(trace, "");
    }

    private Rig counter(String trace, String side) throws IOException {
        Files.writeString(folder.resolve("counter.tsv"), trace);
        RigFile file =
                RigFile.read(
                                "rig.yaml",
                                """
                                format: 1
                                title: one counter (invented)
                                feeds:
                                  - {id: counter, quantity: switched-concentration,
                                     replay: counter.tsv, column: 1, unit: /cm3, rate: 1 /s,
                                     settling: 3 s%s}
                                """
                                        .formatted(side),
                                folder)
                        .value()
                        .orElseThrow();
        return Feeds.open(((RigFile.Attached) file).instruments(), () -> 0L, (f, at, line) -> {});
    }

    /** A reading a second, in the form raw lines are kept in. */
    private static String trace(double... perSecond) {
        StringBuilder lines = new StringBuilder();
        for (int second = 0; second < perSecond.length; second++) {
            lines.append(String.format(Locale.ROOT, "%d.5\t%s%n", second, perSecond[second]));
        }
        return lines.toString();
    }

    private Runner opened(Rig rig) throws IOException {
        Runner runner = Runner.open((events, wall, at) -> {}, rig, () -> MORNING, Gated.opening());
        press(runner, new Input.GoOnPressed());
        press(runner, new Input.Typed("W1"));
        press(runner, new Input.Typed("21"));
        return runner;
    }

    private void press(Runner runner, Input input) {
        cues.addAll(assertInstanceOf(Result.Done.class, runner.accept(input, now)).cues());
    }

    private void pass(Runner runner, int seconds) {
        for (int second = 0; second < seconds; second++) {
            now += SECOND;
            cues.addAll(assertInstanceOf(Result.Done.class, runner.tick(now)).cues());
        }
    }

    private static Entry last(Runner runner) {
        List<Entry> entries = runner.state().captured().entries();
        return entries.get(entries.size() - 1);
    }

    @Test
    void whatTheCounterDrawsAfterItHasSettledIsTheValue() throws IOException {
        double[] perSecond = new double[80];
        // Room air is still in the tube for three seconds; then nothing is counted.
        for (int second = 0; second < 3; second++) {
            perSecond[second] = 4000;
        }
        Runner runner = opened(counter(trace(perSecond)));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        assertEquals("0 /cm3", last(runner).value().toString());
        assertEquals(Source.SIMULATED, last(runner).source(), "a trace is of another time");
        assertEquals(1, ((Activity.Gating) runner.state().activity()).gate());
    }

    @Test
    void aGateNotMetIsCuedAsTrouble() throws IOException {
        double[] perSecond = new double[80];
        java.util.Arrays.fill(perSecond, 0.5);
        Runner runner = opened(counter(trace(perSecond)));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        assertInstanceOf(Activity.GateMissed.class, runner.state().activity());
        assertEquals(List.of(Cue.START, Cue.PROBLEM), cues);
    }

    @Test
    void aSilentCounterLeavesTheValueToTheTester() throws IOException {
        Runner runner = opened(counter(trace(0, 0, 0, 0, 0)));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        assertInstanceOf(Activity.Filling.class, runner.state().activity());
        assertEquals(
                Optional.of(
                        "counter: only 2 of about 57 readings in its window, settling left out;"
                                + " half are needed"),
                runner.live(now).amiss());
        press(runner, new Input.Typed("0.01"));
        assertEquals(Source.TYPED, last(runner).source());
    }

    /** The tube is left on the room for 61 s, then put on the mask. */
    @Test
    void aTubeOnTheWrongSideIsSaidAtOnceAndBesideTheQuestion() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int second = 0; second < 140; second++) {
            lines.append(second < 61 ? second + ".5\t4000;A\n" : second + ".5\t0;M\n");
        }
        String side = ", separator: semicolon, side: {column: 2, ambient: A, mask: M}";
        Runner runner = opened(counter(lines.toString(), side));
        press(runner, new Input.GoOnPressed());
        pass(runner, 1);
        assertEquals(Map.of(), runner.state().feeds().why(), "a hand takes two seconds");
        pass(runner, 1);
        String words = "the counter says it is on the room, not on the mask";
        assertEquals(Map.of("sample tube", "sample tube: " + words), runner.state().feeds().why());
        assertEquals(List.of(Cue.START, Cue.PROBLEM), cues);
        assertEquals(Optional.of("sample tube: " + words), runner.live(now).amiss());
        pass(runner, 58);
        assertInstanceOf(Activity.Filling.class, runner.state().activity());
        assertEquals(
                Optional.of("sample tube: the counter said it was on the room (61 of 61 readings)"),
                runner.live(now).amiss());
        pass(runner, 3);
        assertEquals(Map.of(), runner.state().feeds().why(), "nothing is sampled any more");
        press(runner, new Input.RetakeAsked(""));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        assertEquals("0 /cm3", last(runner).value().toString());
        assertEquals(1, cues.stream().filter(Cue.PROBLEM::equals).count());
    }

    @Test
    void readAgainTheRigIsAskedForTheNewTime() throws IOException {
        double[] perSecond = new double[140];
        java.util.Arrays.fill(perSecond, 0, 60, 0.5);
        Runner runner = opened(counter(trace(perSecond)));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        press(runner, new Input.GoOnPressed());
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        assertEquals("0 /cm3", last(runner).value().toString());
        assertEquals(
                new Activity.Gating(last(runner).slot().place(), 1, java.util.OptionalLong.empty()),
                runner.state().activity());
    }

    @Test
    void theSimulatedRigMeetsBothGates() throws IOException {
        Runner runner = opened(new SimulatedRig(Wearer.plain(List.of("bare", "disc")), 7));
        press(runner, new Input.GoOnPressed());
        pass(runner, 60);
        press(runner, new Input.GoOnPressed());
        pass(runner, 10);
        assertInstanceOf(Activity.Reading.class, runner.state().activity());
    }

    @Test
    void aRehearsalGoesThroughTheGates() throws IOException {
        Event.SessionOpened typed = Gated.opening();
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test", "gated.yaml", typed.protocolText(), 7, "simulated", "", true, 1);
        List<Event> kept = new ArrayList<>();
        Rehearsal.run(
                (events, wall, at) -> kept.addAll(events),
                new SimulatedRig(Wearer.plain(List.of("bare", "disc")), 7),
                MORNING,
                opening);
        assertEquals(2, kept.stream().filter(Event.GateFinished.class::isInstance).count());
    }
}
