package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.measure.PenetrationTest.refused;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PressureTraceTest {
    @Test
    void medianIsTheMiddleOneOrTheMeanOfTheMiddleTwo() {
        assertEquals(OptionalDouble.of(210), PressureTrace.median(List.of(300.0, 190.0, 210.0)));
        assertEquals(
                OptionalDouble.of(-215),
                PressureTrace.median(List.of(-300.0, -190.0, -210.0, -220.0)));
        assertEquals(OptionalDouble.of(210), PressureTrace.median(List.of(210.0)));
        assertEquals(OptionalDouble.empty(), PressureTrace.median(List.of()));
    }

    @Test
    void refusesWhatIsNoPressure() {
        assertEquals(
                "peak pressure NaN, must be a finite number",
                refused(() -> PressureTrace.median(List.of(1.0, Double.NaN))));
        assertEquals(
                "peak pressure -Infinity, must be a finite number",
                refused(() -> PressureTrace.median(List.of(Double.NEGATIVE_INFINITY))));
    }
}
