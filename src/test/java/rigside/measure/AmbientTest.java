package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.measure.PenetrationTest.refused;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmbientTest {
    private static final double ROUNDING = 1e-14;

    @ParameterizedTest(name = "{0} then {1}")
    @CsvSource({"4000, 4400, 0.0952380952380952", "4400, 4000, -0.0952380952380952", "5, 5, 0"})
    void changeIsAShareOfTheMean(double before, double after, double change) {
        assertEquals(change, Ambient.change(before, after), ROUNDING);
    }

    /** By hand: mean 4200, sum of squared distances 80 000, over 2. */
    @Test
    void spreadIsAShareOfTheMean() {
        assertEquals(
                200 / 4200.0,
                Ambient.spread(List.of(4000.0, 4400.0, 4200.0)).orElseThrow(),
                ROUNDING);
        assertEquals(OptionalDouble.empty(), Ambient.spread(List.of(4000.0)));
        assertEquals(OptionalDouble.empty(), Ambient.spread(List.of(0.0, 0.0)));
    }

    /** Derived from at least 10 counts at the level: C = 10 FF / V, with V = 50 cm3. */
    @ParameterizedTest(name = "fit factor {0}")
    @CsvSource({"100, 20", "500, 100", "2000, 400"})
    void theLevelNeedsAnAmbientConcentration(double level, double perCubicCentimetre) {
        double si = Ambient.fewestFor(level, Unit.CUBIC_CENTIMETRE.toSi(50));
        assertEquals(
                perCubicCentimetre,
                Unit.PER_CUBIC_CENTIMETRE.fromSi(si),
                perCubicCentimetre * ROUNDING);
    }

    @ParameterizedTest(name = "{0} in {1} s: {2}")
    @CsvSource({
        "0, 60, true",
        "1, 60, true",
        "2, 60, false",
        "0, 59.9, false",
        "2, 599, false",
        "2, 600, true",
        "3, 600, false"
    })
    void theZeroCheckAllowsNextToNothing(double count, double seconds, boolean passes) {
        assertEquals(passes, Ambient.isZero(count, seconds));
    }

    @Test
    void noAmbientAirAtAllHasNoChange() {
        assertEquals(
                "mean ambient concentration 0, must be a finite number above 0",
                refused(() -> Ambient.change(0, 0)));
    }

    @Test
    void whatFilteredAirMayShowIsTheConcentrationOfTheCountsAllowed() {
        // One particle in a minute at 0.1 L/min is one in 100 cm3; two in ten minutes at that flow
        // are two in 1000 cm3.
        assertEquals(0.01e6, Ambient.mostForZero(60, 0.1e-3 / 60), 1e-6);
        assertEquals(0.002e6, Ambient.mostForZero(600, 0.1e-3 / 60), 1e-6);
    }
}
