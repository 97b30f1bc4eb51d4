package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** For how much of a window readings stand. */
class SamplingTest {
    private static final long SECOND = 1_000_000_000L;
    private final Readings readings = new Readings();

    /** A switched counter that counts as lost after two seconds. */
    private static Feed feed(String more) {
        RigFile file =
                RigFile.read(
                                "rig.yaml",
                                """
                                format: 1
                                title: bench (invented)
                                feeds:
                                  - {id: counter, quantity: switched-concentration, file: a,
                                     column: 1, unit: /cm3, settling: 3 s%s}
                                """
                                        .formatted(more),
                                Path.of(""))
                        .value()
                        .orElseThrow();
        return ((RigFile.Attached) file).instruments().feeds().get(0);
    }

    private void heard(int from, int to) {
        for (int second = from; second <= to; second++) {
            readings.add(new Reading(second * SECOND, 40e6, Optional.empty()));
        }
    }

    private Sample sample(String feed, int from, int to, boolean switched) {
        Span span = new Span(from * SECOND, to * SECOND, switched);
        return new Sampling(feed(feed), readings).of(Signal.MASK, span);
    }

    @Test
    void aWholeWindowWasSampledAsLongAsItIsLessSettling() {
        heard(0, 30);
        assertEquals(20, sample("", 10, 30, false).seconds(), 1e-9);
        assertEquals(17, sample("", 10, 30, true).seconds(), 1e-9);
    }

    /** Heard to 15 s and from 22 s on: seven of twenty seconds are missing. */
    @Test
    void silenceIsNoSamplingTime() {
        heard(0, 15);
        heard(22, 40);
        Sample sample = sample("", 10, 30, false);
        assertTrue(sample.isUsable());
        assertEquals(13, sample.seconds(), 1e-9);
    }

    @Test
    void aWindowThatWasMostlySilentIsNotUsedEvenWithoutADeclaredRate() {
        heard(0, 15);
        assertFalse(sample("", 10, 30, false).isUsable(), "silent for 15 of 20 s");
        assertEquals(5, sample("", 10, 30, false).seconds(), 1e-9);
        assertTrue(sample("", 10, 16, false).isUsable());
    }

    @Test
    void oneReadingInNothingButSilenceStandsForNothing() {
        heard(20, 20);
        assertFalse(sample("", 10, 30, false).isUsable());
        assertEquals(0, sample("", 10, 30, false).seconds(), 1e-9);
    }

    /** A rate is declared roughly: a feed a little slower samples all the time all the same. */
    @Test
    void aDeclaredRateSaysWhetherAWindowIsUsedNotHowLongItWasSampled() {
        heard(0, 40);
        assertEquals(20, sample(", rate: 1.2 /s", 10, 30, false).seconds(), 1e-9);
        assertTrue(sample(", rate: 1.2 /s", 10, 30, false).isUsable());
        assertFalse(sample(", rate: 3 /s", 10, 30, false).isUsable());
    }

    private static final String SIDED =
            ", separator: comma, side: {column: 2, ambient: room, mask: mask}";

    /** Readings on one side of the tube, one a second, both ends included. */
    private void heard(Signal side, int from, int to) {
        for (int second = from; second <= to; second++) {
            readings.add(new Reading(second * SECOND, 40e6, Optional.of(side)));
        }
    }

    @Test
    void whatWasReadOnTheOtherSideIsMissingFromTheWindow() {
        heard(Signal.AMBIENT, 0, 17);
        heard(Signal.MASK, 18, 30);
        for (String rate : new String[] {"", ", rate: 1 /s"}) {
            Sample sample = sample(SIDED + rate, 10, 22, false);
            assertEquals(2, sample.count(), "21 s and 22 s");
            assertFalse(sample.isUsable(), "2 of 9 s: " + sample);
        }
    }

    @Test
    void theDeclaredRateIsExpectedOnTheSideAskedForLessOneSettlingTime() {
        heard(Signal.AMBIENT, 0, 10);
        heard(Signal.MASK, 11, 40);
        assertEquals(17, sample(SIDED + ", rate: 1 /s", 10, 30, true).expected(), 1e-9);
        assertEquals(51, sample(SIDED + ", rate: 3 /s", 10, 30, true).expected(), 1e-9);
        assertEquals(20, sample(SIDED + ", rate: 1 /s", 20, 40, false).expected(), 1e-9);
        assertTrue(sample(SIDED + ", rate: 1 /s", 10, 30, true).isUsable());
        assertFalse(sample(SIDED + ", rate: 3 /s", 10, 30, true).isUsable());
    }

    @Test
    void aTubeSwitchedToAndFroDoesNotMakeTheWindowShorter() {
        for (int second = 0; second < 20; second += 5) {
            heard(Signal.AMBIENT, second, second);
            heard(Signal.MASK, second + 1, second + 4);
        }
        Sample sample = sample(SIDED + ", rate: 1 /s", 0, 19, false);
        assertEquals(4, sample.count());
        assertEquals(16, sample.expected(), 1e-9);
        assertFalse(sample.isUsable());
    }
}
