package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/measure/units.csv", useHeadersInDisplayName = true)
    void turnsIntoSi(String id, double value, String symbol, double si, double tolerance) {
        Unit unit = Unit.of(symbol).orElseThrow();
        assertEquals(si, unit.toSi(value), si * tolerance, id);
    }

    /** U2: the column at 4 degC is 249.082 Pa; ours is the conventional one, 28 ppm above. */
    @Test
    void theInchOfWaterIsTheConventionalOne() {
        assertEquals(28e-6, Unit.INCH_OF_WATER.toSi(1) / 249.082 - 1, 1e-6);
    }

    @ParameterizedTest
    @EnumSource
    void comesBackFromSi(Unit unit) {
        assertEquals(12.4, unit.fromSi(unit.toSi(12.4)), 1e-12, "offset 273.15 costs 3 digits");
    }

    @ParameterizedTest
    @EnumSource
    void isFoundByItsOwnSymbolOnly(Unit unit) {
        assertEquals(Optional.of(unit), Unit.of(unit.symbol()));
        assertTrue(Unit.of(unit.symbol() + "x").isEmpty());
    }
}
