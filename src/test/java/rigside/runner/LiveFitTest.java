package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.analysis.Live;
import rigside.measure.Counted;
import rigside.rig.Feeds;
import rigside.rig.Rig;
import rigside.rig.RigFile;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Slot;
import rigside.session.Story;

/**
 * One counter on a switched tube, followed through two exercises: 20 s with the room at 0 to 5 s
 * and the mask at 8 to 20 s, then 20 s with the mask at 0 to 12 s and the room at 15 to 20 s. For
 * three seconds after each switch it reads what was in the tube before, which must not be seen
 * anywhere.
 */
class LiveFitTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SECOND = 1_000_000_000L;

    /** When the first exercise begins; the second follows at once. */
    private static final int BEGUN = 100;

    /** 0.1 L/min. */
    private static final double FLOW = 0.1e-3 / 60;

    private static final String FED =
            Story.text("/session/small.yaml")
                    .replace(
                            "    kind: fit-factor\n",
                            "    kind: fit-factor\n    sample-flow: 0.1 L/min\n");

    @TempDir Path folder;
    private long now;

    /** What the counter shows at a second of the session, in /cm3, and what its tube is on. */
    private static String line(int second, double laterAmbient) {
        int since = second - BEGUN;
        boolean mask = since < 0 || (since >= 8 && since < 35);
        boolean settling =
                (since >= 0 && since < 3)
                        || (since >= 8 && since < 11)
                        || (since >= 35 && since < 38);
        double value =
                settling
                        ? 99_999
                        : mask ? (since < 20 ? 40 : 20) : since < 20 ? 4000 : laterAmbient;
        return String.format(Locale.ROOT, "%d.5\t%s;%s%n", second, value, mask ? "M" : "A");
    }

    private Runner opened(String protocol, String side, double laterAmbient) throws IOException {
        StringBuilder trace = new StringBuilder("0.0\t4000;A\n");
        for (int second = 0; second < 200; second++) {
            trace.append(line(second, laterAmbient));
        }
        Files.writeString(folder.resolve("counter.tsv"), trace);
        RigFile file =
                RigFile.read(
                                "rig.yaml",
                                """
                                format: 1
                                title: one counter (invented)
                                feeds:
                                  - {id: counter, quantity: switched-concentration,
                                     replay: counter.tsv, column: 1, separator: semicolon,
                                     unit: /cm3, rate: 1 /s, settling: 3 s%s}
                                """
                                        .formatted(side),
                                folder)
                        .value()
                        .orElseThrow();
        Rig rig = Feeds.open(((RigFile.Attached) file).instruments(), () -> 0L, (f, a, l) -> {});
        Runner runner =
                Runner.open(
                        (events, wall, at) -> {},
                        rig,
                        () -> MORNING,
                        new Event.SessionOpened(
                                "test", "small.yaml", protocol, 7, "instruments", "", false, 1));
        while (!(runner.state().activity() instanceof Activity.Exercising)) {
            Input key = Rehearser.key(runner.state(), now).orElse(null);
            if (key != null) {
                runner.accept(key, now);
            } else {
                to(runner, now / SECOND + 1);
            }
        }
        to(runner, BEGUN);
        runner.accept(new Input.GoOnPressed(), now);
        return runner;
    }

    private void to(Runner runner, long second) {
        while (now < second * SECOND) {
            now += SECOND;
            assertInstanceOf(Result.Done.class, runner.tick(now));
        }
    }

    private Live.Fit fit(Runner runner, int exercise) {
        return runner.live(now).fit(exercise).orElseThrow();
    }

    private static List<Entry> concentrations(Runner runner) {
        return runner.state().captured().entries().stream()
                .filter(
                        entry ->
                                entry.slot() instanceof Slot.Ambient
                                        || entry.slot() instanceof Slot.Mask)
                .toList();
    }

    /** Whether the lines say what the tube is on, or only the windows do. */
    @ParameterizedTest
    @ValueSource(strings = {"", ", side: {column: 2, ambient: A, mask: M}"})
    void whatIsReadWhileTheTubeSettlesIsInNoReading(String side) throws IOException {
        Runner runner = opened(FED, side, 4000);
        to(runner, BEGUN + 20);
        runner.accept(new Input.GoOnPressed(), now);
        to(runner, BEGUN + 40);
        assertEquals(
                List.of("4000 /cm3", "40 /cm3", "20 /cm3", "4000 /cm3"),
                concentrations(runner).stream().map(entry -> entry.value().toString()).toList());
        assertEquals(
                List.of(2.0, 9.0, 0.0, 2.0),
                concentrations(runner).stream().map(Entry::seconds).toList(),
                "windows of 5, 12, 12 and 5 s less 3 s after a switch; 0 for a whole one");
    }

    @Test
    void theFitFactorRunsWithTheExerciseOnceTheMaskIsSampled() throws IOException {
        Runner runner = opened(FED, "", 4000);
        to(runner, BEGUN + 4);
        assertEquals(4e9, runner.live(now).concentration().orElseThrow(), 1);
        to(runner, BEGUN + 10);
        assertEquals(Optional.empty(), runner.live(now).fit(0), "the tube settles");
        to(runner, BEGUN + 15);
        assertEquals(100, fit(runner, 0).value(), 1e-9);
        to(runner, BEGUN + 20);
        runner.accept(new Input.GoOnPressed(), now);
        to(runner, BEGUN + 25);
        assertEquals(200, fit(runner, 1).value(), 1e-9);
        assertEquals(100, fit(runner, 0).value(), 1e-9, "and what the one before gave stays");
    }

    @Test
    void countingLeavesOpenWhatTheVolumeDrawnSoFarLeavesOpen() throws IOException {
        Runner runner = opened(FED, "", 4000);
        to(runner, BEGUN + 15);
        // Four seconds of the mask at 40 /cm3, two of the room at 4000 /cm3.
        Counted counted = new Counted(40e6 * FLOW * 4, FLOW * 4, 4e9 * FLOW * 2, FLOW * 2);
        Counted.Limits expected = Counted.limits(List.of(counted), 0.95);
        Counted.Limits live = fit(runner, 0).counting().orElseThrow();
        assertEquals(expected.low(), live.low(), 1e-6 * expected.low());
        assertEquals(expected.high().orElseThrow(), live.high().orElseThrow(), 1e-6 * live.low());
        // 267 particles: 1/sqrt(267) is 6 %, so some 12 % either way.
        assertEquals(0.12, 1 - live.low() / 100, 0.015);
    }

    @Test
    void withoutTheFlowNothingIsSaidOfCounting() throws IOException {
        Runner runner = opened(Story.text("/session/small.yaml"), "", 4000);
        to(runner, BEGUN + 15);
        assertEquals(Optional.empty(), fit(runner, 0).counting());
    }

    @Test
    void airThatMovesIsSaidWhileItDoes() throws IOException {
        Runner runner = opened(FED, "", 6000);
        to(runner, BEGUN + 20);
        runner.accept(new Input.GoOnPressed(), now);
        to(runner, BEGUN + 30);
        assertTrue(!runner.live(now).ambientMoved());
        to(runner, BEGUN + 39);
        assertTrue(runner.live(now).ambientMoved());
        // From 4000 to 6000 /cm3, of their mean 5000.
        assertEquals(0.4, runner.live(now).ambientChange().orElseThrow(), 1e-9);
    }

    @Test
    void whatIsConcealedUntilTheSessionEndsIsNotLiveEither() throws IOException {
        Runner runner =
                opened(
                        FED.replace(
                                "  most: 4\n",
                                "  most: 4\n  conceal: {result: until-session-ends}\n"),
                        "",
                        6000);
        to(runner, BEGUN + 15);
        assertEquals(Live.NONE, runner.live(now));
        to(runner, BEGUN + 20);
        runner.accept(new Input.GoOnPressed(), now);
        to(runner, BEGUN + 39);
        assertTrue(runner.live(now).ambientMoved(), "that the air moved gives nothing away");
        assertEquals(Live.NONE.fits(), runner.live(now).fits());
        assertTrue(runner.live(now).ambientChange().isEmpty());
        assertTrue(runner.live(now).concentration().isEmpty());
    }
}
