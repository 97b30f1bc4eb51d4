package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Readings put where they belong and thinned. */
class PressureTracesTest {
    private static final long SECOND = 1_000_000_000L;

    private static PressureWindow window(int entry, long from, long to) {
        return new PressureWindow(
                entry, from * SECOND, to * SECOND, from * SECOND, (double) (to - from));
    }

    private static PressureTraces.Gathering gathering(PressureWindow... windows) {
        return new PressureTraces.Gathering(List.of(windows), List.of());
    }

    private static PressureTrace trace(PressureTraces.Gathering gathering, int entry) {
        return gathering.traces().of(entry).orElseThrow();
    }

    /** Ten readings a second, from one second to another. */
    private static void read(
            PressureTraces.Gathering gathering, long from, long to, double pascals) {
        for (long tenth = 10 * from; tenth < 10 * to; tenth++) {
            gathering.reading(tenth * SECOND / 10, pascals);
        }
    }

    @Test
    void aSilenceOfTheGaugeIsAGapInTheTrace() {
        PressureTraces.Gathering gathering = gathering(window(1, 0, 10));
        for (int tenth = 0; tenth < 100; tenth++) {
            if (tenth < 40 || tenth >= 60) {
                gathering.reading(tenth * SECOND / 10, tenth == 20 ? -300 : -100);
            }
        }
        PressureTrace trace = trace(gathering, 1);
        assertEquals(2, trace.runs().size());
        assertEquals(80, trace.readings());
        assertEquals(300, trace.highest(), 0);
        assertEquals(
                6,
                trace.runs().get(1).get(0).seconds(),
                1e-9,
                "after the silence it begins with the first reading");
    }

    /** Few readings, and a torn feed: their mean interval would be two seconds. */
    @Test
    void aSilenceLongerThanAllThatWasReadIsAGapToo() {
        PressureTraces.Gathering gathering = gathering(window(1, 0, 10));
        for (double seconds : new double[] {0, 0.05, 0.1, 9.8, 9.85, 9.9}) {
            gathering.reading(Math.round(seconds * SECOND), -100);
        }
        assertEquals(2, trace(gathering, 1).runs().size());
    }

    /** One reading a second, as slow gauges give: its usual interval is no silence. */
    @Test
    void aSlowGaugeIsNotSilent() {
        PressureTraces.Gathering gathering = gathering(window(1, 0, 10));
        for (long second = 0; second < 10; second++) {
            gathering.reading(second * SECOND, -100);
        }
        assertEquals(1, trace(gathering, 1).runs().size());
    }

    @Test
    void theLineReachesToTheLastReadingBeforeASilenceAndFromTheFirstAfterIt() {
        PressureTraces.Gathering gathering = gathering(window(1, 0, 8));
        // Columns are a tenth of a second wide: each holds a low, a high and a last reading.
        for (int at = 0; at < 400; at++) {
            if (at < 203 || at >= 302) {
                gathering.reading(at * SECOND / 50, at % 5 == 2 ? -70 : at % 5 == 0 ? 90 : -9);
            }
        }
        List<List<PressureTrace.Point>> runs = trace(gathering, 1).runs();
        assertEquals(2, runs.size());
        assertEquals(4.04, runs.get(0).get(runs.get(0).size() - 1).seconds(), 1e-9);
        assertEquals(6.04, runs.get(1).get(0).seconds(), 1e-9);
    }

    @Test
    void thousandsOfReadingsASecondKeepTheirPeaksAndFewPoints() {
        PressureTraces.Gathering gathering = gathering(window(1, 0, 10));
        for (int at = 0; at < 50_000; at++) {
            double pascals = at == 31_111 ? -777 : at == 40_004 ? 555 : -(at % 7);
            gathering.reading(at * SECOND / 5000, pascals);
        }
        PressureTrace trace = trace(gathering, 1);
        assertEquals(50_000, trace.readings());
        assertEquals(777, trace.highest(), 0);
        assertEquals(-555, trace.lowest(), 0);
        assertTrue(trace.all().size() <= 2 * PressureTrace.FEWEST + 2);
        assertEquals(1, trace.runs().size());
    }

    /** A damaged line of the file that says it is of a later time. */
    @Test
    void oneLineOfAnotherTimeLosesNothing() {
        PressureTraces.Gathering gathering = gathering(window(1, 10, 20), window(2, 30, 40));
        read(gathering, 0, 15, -50);
        gathering.reading(999_999 * SECOND, -1);
        gathering.reading(1 * SECOND, -1);
        read(gathering, 15, 45, -50);
        assertEquals(101, trace(gathering, 1).readings(), "both ends are of a window");
        assertEquals(101, trace(gathering, 2).readings());
    }

    /**
     * The gauge was still read for a minute after the last event, and the computer's clock was put
     * back before the session was gone on with: session time goes on from the last event.
     */
    @Test
    void whatWasReadOfATimeThatCameAgainIsOfNoPull() {
        PressureTraces.Gathering gathering =
                new PressureTraces.Gathering(
                        List.of(window(1, 10, 20), window(2, 120, 130)), List.of(100 * SECOND));
        read(gathering, 0, 160, 20);
        read(gathering, 100, 140, -50);
        assertEquals(101, trace(gathering, 1).readings());
        assertEquals(-20, trace(gathering, 1).highest(), 0);
        assertEquals(101, trace(gathering, 2).readings());
        assertEquals(50, trace(gathering, 2).lowest(), 0, "none of those before");
    }

    @Test
    void aWindowWithoutReadingsHasNoTrace() {
        PressureTraces.Gathering gathering = gathering(window(1, 10, 20));
        read(gathering, 0, 9, -50);
        assertEquals(Optional.empty(), gathering.traces().of(1));
    }
}
