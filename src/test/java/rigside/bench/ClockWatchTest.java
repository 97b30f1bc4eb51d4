package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ClockWatchTest {

    private static final long SECOND = 1_000_000_000L;

    @Test
    void clocksThatGoTogetherSayNothing() {
        ClockWatch watch = new ClockWatch(0, 1_000);
        assertEquals(Optional.empty(), watch.read(20 * SECOND, 21_000));
        assertEquals(Optional.empty(), watch.read(21 * SECOND, 22_400));
    }

    /** Both clocks stand still, or go on, together when only the program waits. */
    @Test
    void aProgramThatWaitedSaysNothing() {
        assertEquals(Optional.empty(), new ClockWatch(0, 0).read(3600 * SECOND, 3_600_000));
    }

    @Test
    void aComputerThatSleptIsNoticedOnce() {
        ClockWatch watch = new ClockWatch(0, 1_000);
        assertEquals(
                "the computer's clock jumped ahead by 40.0 s: it slept, or its clock was set",
                watch.read(SECOND, 42_000).orElseThrow());
        assertEquals(Optional.empty(), watch.read(2 * SECOND, 43_000));
    }

    @Test
    void aClockSetBackIsNoticed() {
        assertEquals(
                "the computer's clock jumped back by 3.5 s: it was set",
                new ClockWatch(0, 10_000).read(SECOND, 7_500).orElseThrow());
    }
}
