package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static rigside.measure.PenetrationTest.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    @Test
    void isTurnedIntoUnitsOfItsDimension() {
        Quantity inch = new Quantity(1, Unit.INCH_OF_WATER);
        Quantity mm = inch.in(Unit.MILLIMETRE_OF_WATER);
        assertEquals(25.4, mm.value(), 25.4e-14, "exact by definition, rounding of doubles");
        assertEquals(Unit.MILLIMETRE_OF_WATER, mm.unit());
        assertSame(inch, inch.in(Unit.INCH_OF_WATER));
        assertEquals(
                "unit L/min, must measure a pressure",
                refused(() -> inch.in(Unit.LITRE_PER_MINUTE)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotFinite(double value) {
        assertEquals(
                "value " + value + ", must be a finite number",
                refused(() -> new Quantity(value, Unit.ONE)));
    }

    @ParameterizedTest
    @CsvSource({
        "12.4, 12.4",
        "0, 0",
        "-0.0, 0",
        "100, 100",
        "4200000, 4200000",
        "83453.26, 83453.3",
        "0.00952380952, 0.00952381",
        "-2.50, -2.5",
        "4.2e9, 4.2E+9",
        "NaN, NaN",
    })
    void isWrittenAsPeopleReadIt(double value, String words) {
        assertEquals(words, Numbers.plain(value));
    }

    @Test
    void isWrittenWithItsUnit() {
        assertEquals("12.4 s", new Quantity(12.4, Unit.SECOND).toString());
        assertEquals("3", new Quantity(3, Unit.ONE).toString());
    }
}
