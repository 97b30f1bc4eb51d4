package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScheduleTest {

    @Test
    void pairsKnowAsMuchAsTheirNumber() {
        Schedule.Look last = Schedule.paired(3, 10).last();
        assertEquals(new Schedule.Look(new Schedule.Arms(10, 10), 10, 9), last);
        assertEquals(8, Schedule.paired(3, 10).looks().size());
    }

    @Test
    void armsKnowTheHarmonicPartOfTheirCounts() {
        Schedule.Look last = Schedule.independent(List.of(new Schedule.Arms(6, 3))).last();
        assertEquals(2, last.information());
        assertEquals(7, last.degreesOfFreedom());
    }

    @ParameterizedTest(name = "{0} and {1} values reach look {2}")
    @CsvSource({"1, 9, -1", "2, 2, 0", "2, 3, 0", "3, 2, 0", "3, 3, 1", "9, 9, 3", "4, 3, 1"})
    void aLookWaitsForBothArms(int reference, int other, int look) {
        assertEquals(look, Schedule.independent(2, 5).reached(reference, other));
    }

    @ParameterizedTest
    @CsvSource({"1, 5", "0, 5", "-3, 5", "4, 3"})
    void impossiblePlansAreRefused(int fewest, int most) {
        assertThrows(IllegalArgumentException.class, () -> Schedule.paired(fewest, most));
        assertThrows(IllegalArgumentException.class, () -> Schedule.independent(fewest, most));
    }

    @Test
    void aLookMustAddSomething() {
        assertThrows(IllegalArgumentException.class, () -> Schedule.paired(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Schedule.paired(List.of(3, 3)));
        assertThrows(IllegalArgumentException.class, () -> Schedule.paired(List.of(5, 4)));
        assertThrows(IllegalArgumentException.class, () -> Schedule.paired(List.of(1, 4)));
        assertRefused(new Schedule.Arms(1, 1));
        assertRefused(new Schedule.Arms(0, 5));
        assertRefused(new Schedule.Arms(4, 4), new Schedule.Arms(4, 4));
        assertRefused(new Schedule.Arms(4, 4), new Schedule.Arms(3, 9));
        assertThrows(
                IllegalArgumentException.class, () -> Crossings.knownSpread(List.of(0.0, 1.0)));
        assertThrows(
                IllegalArgumentException.class, () -> Crossings.knownSpread(List.of(1.0, 1.0)));
    }

    private static void assertRefused(Schedule.Arms... arms) {
        assertThrows(IllegalArgumentException.class, () -> Schedule.independent(List.of(arms)));
    }
}
