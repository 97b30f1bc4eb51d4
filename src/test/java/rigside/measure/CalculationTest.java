package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CalculationTest {
    /** Of 2, 8 and 4, by hand from the definitions. */
    @ParameterizedTest
    @CsvSource({
        "MEAN, 4.666666666666667",
        "MEDIAN, 4",
        "GEOMETRIC_MEAN, 4",
        "SMALLEST, 2",
        "LARGEST, 8",
        "RANGE, 6",
        "SUM, 14",
        "PRODUCT, 64"
    })
    void calculatesAllOf(Calculation how, double result) {
        assertEquals(result, how.of(List.of(2.0, 8.0, 4.0)).orElseThrow(), 1e-14);
    }

    @Test
    void theOrderOfTwoMatters() {
        assertEquals(OptionalDouble.of(6), Calculation.DIFFERENCE.of(List.of(8.0, 2.0)));
        assertEquals(OptionalDouble.of(0.25), Calculation.RATIO.of(List.of(2.0, 8.0)));
    }

    @Test
    void whatCannotBeCalculatedIsEmpty() {
        assertEquals(OptionalDouble.empty(), Calculation.RATIO.of(List.of(1.0, 0.0)));
        assertEquals(OptionalDouble.empty(), Calculation.GEOMETRIC_MEAN.of(List.of(1.0, 0.0)));
        assertEquals(OptionalDouble.empty(), Calculation.PRODUCT.of(List.of(1e200, 1e200)));
    }

    @ParameterizedTest
    @EnumSource
    void ofNothingNothingIsCalculated(Calculation how) {
        assertThrows(IllegalArgumentException.class, () -> how.of(List.of()));
    }

    /** From the SI Brochure, 9th edition (2019), table 4: the pascal; the others follow from it. */
    @ParameterizedTest
    @CsvSource({
        "PRESSURE, kg m^-1 s^-2",
        "FLOW, m^3 s^-1",
        "RESISTANCE, kg m^-4 s^-1",
        "CONCENTRATION, m^-3",
        "NUMBER, 1"
    })
    void dimensionsAreMadeOfBaseUnits(Dimension dimension, String powers) {
        assertEquals(powers, dimension.powers().toString());
    }

    @Test
    void noTwoDimensionsAreMadeOfTheSame() {
        assertEquals(
                Dimension.values().length,
                Arrays.stream(Dimension.values()).map(Dimension::powers).distinct().count());
    }

    @Test
    void aPressureOverAFlowIsAFlowResistance() {
        Powers made =
                Calculation.RATIO.powers(
                        List.of(Dimension.PRESSURE.powers(), Dimension.FLOW.powers()));
        assertEquals(Optional.of(Dimension.RESISTANCE), Dimension.of(made));
        Powers work =
                Calculation.PRODUCT.powers(
                        List.of(Dimension.PRESSURE.powers(), Dimension.VOLUME.powers()));
        assertEquals(Optional.empty(), Dimension.of(work));
    }
}
