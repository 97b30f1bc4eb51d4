package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.measure.PenetrationTest.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.measure.TimedTrace.Reading;

class TimedTraceTest {
    private static final TimedTrace UNEVEN =
            new TimedTrace(
                    List.of(
                            new Reading(0, 0),
                            new Reading(1, -10),
                            new Reading(1.5, -10),
                            new Reading(4.5, 20)),
                    2);

    /** By hand: -5, -5, +15. */
    @Test
    void trapezoidsWeighUnevenIntervals() {
        assertEquals(5, UNEVEN.integral(), 1e-12);
    }

    /** By hand: 100/3, 50, and 3 (100 - 200 + 400) / 3. */
    @Test
    void squaresAreExactForStraightPieces() {
        assertEquals(100 / 3.0 + 50 + 300, UNEVEN.integralOfSquares(0), 1e-12);
    }

    /** By hand: half of the first second, none of the second piece, 10 of 30 Pa of the third. */
    @Test
    void timeWithinABandCountsPartsOfIntervals() {
        assertEquals(0.5 + 1, UNEVEN.secondsWithin(-5, 5), 1e-12);
        assertEquals(0.5, UNEVEN.secondsWithin(-10, -10), 1e-12);
    }

    @Test
    void gapsPartTheTraceAndAreSummed() {
        assertEquals(2, UNEVEN.runs().size());
        assertEquals(3, UNEVEN.gaps(), 1e-12);
        assertEquals(List.of(), new TimedTrace(List.of(), 1).runs());
    }

    @Test
    void aPartIsCutBetweenReadings() {
        assertEquals(
                List.of(new Reading(0.5, -5), new Reading(1, -10), new Reading(1.25, -10)),
                UNEVEN.between(0.5, 1.25).readings());
    }

    @Test
    void timeMustNotRunBackwards() {
        assertEquals(
                "time of a reading 1, must not be before the one ahead of it 2",
                refused(() -> new TimedTrace(List.of(new Reading(2, 0), new Reading(1, 0)), 1)));
    }
}
