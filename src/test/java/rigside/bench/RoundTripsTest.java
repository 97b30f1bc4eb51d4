package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RoundTripsTest {
    @Test
    void quantilesAreAnswersThatWereGiven() {
        List<Double> fifty = IntStream.rangeClosed(1, 50).mapToObj(i -> (51 - i) / 1000.0).toList();
        RoundTrips trips = new RoundTrips(fifty);
        assertEquals(0.025, trips.median());
        assertEquals(0.05, trips.p99());
        assertEquals(0.05, trips.most());
        assertEquals(0.002, new RoundTrips(List.of(0.003, 0.001, 0.002)).median());
    }

    @Test
    void withoutAnswersAllAreZero() {
        RoundTrips none = new RoundTrips(List.of());
        assertEquals(List.of(0.0, 0.0, 0.0), List.of(none.median(), none.p99(), none.most()));
    }
}
