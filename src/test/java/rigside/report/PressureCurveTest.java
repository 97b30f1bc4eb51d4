package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The line of a trace, cut where the part that counts begins and ends. */
class PressureCurveTest {
    private static PressureTrace.Point at(double seconds, double pascals) {
        return new PressureTrace.Point(seconds, pascals);
    }

    private static PressureTrace trace(List<List<PressureTrace.Point>> runs) {
        return new PressureTrace(new PressureWindow(1, 0, 1, 0, 1), 1, runs);
    }

    @Test
    void thePartThatCountsBeginsAndEndsOnTheLineBetweenReadings() {
        PressureTrace trace = trace(List.of(List.of(at(0, 0), at(2, 100), at(4, 100), at(6, 0))));
        assertEquals(
                List.of(
                        new PressureCurve.Piece(List.of(at(0, 0), at(1, 50)), false),
                        new PressureCurve.Piece(
                                List.of(at(1, 50), at(2, 100), at(4, 100), at(5, 50)), true),
                        new PressureCurve.Piece(List.of(at(5, 50), at(6, 0)), false)),
                PressureCurve.pieces(trace, new PressureFollowed.Part(1, 5, true), 9));
    }

    @Test
    void noPieceReachesOverASilenceOrBeyondTheAxis() {
        PressureTrace trace =
                trace(
                        List.of(
                                List.of(at(0, 10), at(1, 10)),
                                List.of(at(3, 10), at(5, 30)),
                                List.of(at(7, 10))));
        assertEquals(
                Stream.of(List.of(at(0, 10), at(1, 10)), List.of(at(3, 10), at(4, 20)))
                        .map(points -> new PressureCurve.Piece(points, true))
                        .toList(),
                PressureCurve.pieces(trace, new PressureFollowed.Part(-1, 9, true), 4));
    }
}
