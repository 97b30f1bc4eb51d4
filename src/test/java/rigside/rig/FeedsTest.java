package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import rigside.rig.Asked.Kind;

class FeedsTest {
    private static final long SECOND = 1_000_000_000L;
    private static final String BENCH =
            """
            format: 1
            title: bench (invented)
            feeds:
              - {id: gauge, quantity: mask-pressure, file: a, column: 1, unit: Pa, scale: -1,
                 rate: 10 /s}
              - {id: counter, quantity: switched-concentration, file: b, column: 1, unit: /cm3,
                 rate: 1 /s, settling: 3 s}
            """;

    private final Map<String, List<Arrival>> waiting = new HashMap<>();
    private final List<String> closed = new ArrayList<>();
    private final Feeds feeds = new Feeds(bench(), 0, feed -> new Memory(feed.id()));

    /** A source in memory. */
    private final class Memory implements Source {
        private final String id;

        private Memory(String id) {
            this.id = id;
            waiting.put(id, new ArrayList<>());
        }

        @Override
        public void drain(long now, Consumer<Arrival> to) {
            waiting.get(id).forEach(to);
            waiting.get(id).clear();
        }

        @Override
        public void close() {
            closed.add(id);
        }
    }

    @Test
    void aWindowOfTheCounterIsAnsweredByItsMeanInSi() {
        for (int second = 1; second <= 30; second++) {
            send("counter", second, "" + (1000 + second));
        }
        feeds.pass(30 * SECOND);
        assertEquals(OptionalDouble.of(1.0215e9), answer(Kind.MASK, 10, 30, true));
        assertEquals(OptionalDouble.of(1.003e9), answer(Kind.AMBIENT, 1, 5, false));
    }

    @Test
    void aPressureIsFollowedAndNotAskedFor() {
        for (int tenth = 1; tenth <= 100; tenth++) {
            send("gauge", tenth / 10.0, tenth <= 97 ? "-200" : "-100");
        }
        feeds.pass(10 * SECOND);
        assertEquals(OptionalDouble.empty(), answer(Kind.PRESSURE, 0, 10, false));
        assertEquals(Now.SILENT, feeds.now(Signal.MASK).orElseThrow());
        assertEquals(
                OptionalDouble.of(100),
                feeds.now(Signal.PRESSURE).orElseThrow().si(),
                "the last three of ten a second; this gauge shows suction as negative");
    }

    @Test
    void withoutReadingsWithTooFewOrWithoutAWindowTheTesterTypes() {
        assertEquals(OptionalDouble.empty(), answer(Kind.MASK, 0, 10, false));
        for (int second = 1; second <= 4; second++) {
            send("counter", second, "5");
        }
        feeds.pass(10 * SECOND);
        assertEquals(OptionalDouble.empty(), answer(Kind.MASK, 0, 10, false));
        assertEquals(
                OptionalDouble.empty(), feeds.answer(new Asked(Kind.MASK, 1, "a", 0, 0, 0, 0)));
        assertEquals(OptionalDouble.empty(), answer(Kind.INHALATION, 0, 10, false));
    }

    @Test
    void oneFeedFailingLeavesTheOtherAsItIs() {
        for (int tenth = 1; tenth <= 80; tenth++) {
            send("gauge", tenth / 10.0, "1");
        }
        assertEquals(
                List.of("counter: nothing from file bench/b for 5 s"),
                feeds.pass(8 * SECOND).stream().map(FeedTrouble::words).toList());
        assertTrue(feeds.states().get(0).well());
        assertFalse(feeds.states().get(1).well());
        assertEquals(OptionalDouble.of(-1), feeds.states().get(0).value());
        assertEquals(10, feeds.states().get(0).perSecond(), 0.2);
        assertEquals(Optional.empty(), feeds.latest(Signal.MASK));
        assertEquals(-1, feeds.latest(Signal.PRESSURE).orElseThrow().si());
        assertEquals(
                11, feeds.readings(Signal.PRESSURE, 2 * SECOND, 3 * SECOND).size(), "both ends");
    }

    @Test
    void anOnlookerSeesEveryLineAndWhatBecameOfIt() {
        send("gauge", 1, "12.5");
        send("gauge", 1.1, "abc");
        List<String> seen = new ArrayList<>();
        feeds.pass(2 * SECOND, each -> seen.add(each.text() + " " + each.value() + each.why()));
        assertEquals(
                List.of("12.5 OptionalDouble[-12.5]", "abc OptionalDouble.empty'abc' is no number"),
                seen);
    }

    @Test
    void closingClosesEveryFeed() {
        feeds.close();
        assertEquals(List.of("gauge", "counter"), closed);
    }

    @Test
    void readingsOfAnotherTimeMakeTheRigSimulated() {
        assertFalse(feeds.simulated());
        String replayed = BENCH.replace("file: a", "replay: a");
        assertTrue(
                ((RigFile.Attached)
                                RigFile.read("b", replayed, Path.of("bench")).value().orElseThrow())
                        .instruments()
                        .isReplayed());
    }

    private void send(String feed, double seconds, String line) {
        waiting.get(feed).add(new Arrival.Line(Math.round(seconds * SECOND), line, true));
    }

    private OptionalDouble answer(Kind kind, long from, long to, boolean switched) {
        return feeds.answer(
                new Asked(
                        kind,
                        1,
                        "plain",
                        2,
                        0,
                        0,
                        0,
                        Optional.of(new Span(from * SECOND, to * SECOND, switched))));
    }

    private static Instruments bench() {
        RigFile file = RigFile.read("b", BENCH, Path.of("bench")).value().orElseThrow();
        return ((RigFile.Attached) file).instruments();
    }
}
