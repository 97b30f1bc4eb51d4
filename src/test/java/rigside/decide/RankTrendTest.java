package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Trends by least squares, and beside them by ranks (Mann 1945, Kendall; slope by Theil 1950 and
 * Sen 1968). The program flags by least squares: of four rounds no order whatever is rare enough
 * for ranks, and rounds are few. So ranks stand here only, as a second opinion on the same data.
 */
class RankTrendTest {

    static Stream<Answers> everySet() {
        JsonNode sets = Reference.read("classical.json").at("/trend/sets");
        List<Answers> all = new ArrayList<>();
        sets.fieldNames().forEachRemaining(name -> all.add(new Answers(name, sets.get(name))));
        return all.stream();
    }

    /** R 4.2.2: lm; cor.test with Kendall's method; twelve digits. */
    @ParameterizedTest
    @MethodSource("everySet")
    void everyAnswerOfTheReferenceIsReached(Answers set) {
        double[] y = set.numbers("y");
        lines(set.part("linear"), y);
        ranks(set.part("mann_kendall"), y);
        set.close();
    }

    private static void lines(Answers linear, double[] y) {
        TTest trend = line(y);
        linear.assertClose("slope", trend.estimate());
        linear.assertClose("standard_error", trend.standardError());
        linear.assertClose("t", trend.t());
        linear.assertClose("p_two_sided", trend.p());
        linear.assertClose("df", trend.degreesOfFreedom());
        double square = trend.t() * trend.t();
        linear.assertClose("r_squared", square / (square + trend.degreesOfFreedom()));
    }

    /** Least squares through values one step apart. */
    static TTest line(double... y) {
        double[] places = new double[y.length];
        Arrays.setAll(places, at -> at);
        return Trend.within(List.of(places), List.of(y), 0);
    }

    private static void ranks(Answers ranks, double[] y) {
        int n = y.length;
        int s = concordance(y);
        double variance = n * (n - 1.0) * (2 * n + 5) / 18;
        for (double value : Arrays.stream(y).distinct().toArray()) {
            double ties = Arrays.stream(y).filter(each -> each == value).count();
            variance -= ties * (ties - 1) * (2 * ties + 5) / 18;
        }
        double z = Math.signum(s) * Math.max(0, Math.abs(s) - 1) / Math.sqrt(variance);
        ranks.assertClose("S", s);
        ranks.assertClose("var_S", variance);
        ranks.assertClose("z", z);
        ranks.assertClose("p_normal", 2 * NoncentralT.normalUpper(Math.abs(z)));
        if (ranks.take("p_exact").isNumber()) {
            ranks.assertClose("p_exact", atLeast(n, Math.abs(s)));
        }
        ranks.assertClose("theil_sen_slope", medianSlope(y));
    }

    private static int concordance(double[] y) {
        int s = 0;
        for (int i = 0; i < y.length; i++) {
            for (int j = i + 1; j < y.length; j++) {
                s += (int) Math.signum(y[j] - y[i]);
            }
        }
        return s;
    }

    /** The share of all orders of n values with an S this far from 0, by counting inversions. */
    private static double atLeast(int n, int s) {
        double[] orders = {1};
        for (int size = 2; size <= n; size++) {
            double[] next = new double[orders.length + size - 1];
            for (int i = 0; i < orders.length; i++) {
                for (int more = 0; more < size; more++) {
                    next[i + more] += orders[i];
                }
            }
            orders = next;
        }
        int most = n * (n - 1) / 2;
        double far = 0;
        for (int inversions = 0; inversions < orders.length; inversions++) {
            far += Math.abs(most - 2 * inversions) >= s ? orders[inversions] : 0;
        }
        return far / Arrays.stream(orders).sum();
    }

    private static double medianSlope(double[] y) {
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < y.length; i++) {
            for (int j = i + 1; j < y.length; j++) {
                slopes.add((y[j] - y[i]) / (j - i));
            }
        }
        double[] sorted = slopes.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    @Test
    void ofFourRoundsRanksCannotFlagAnything() {
        double[] rising = {1, 1.4, 1.9, 2.1};
        assertTrue(line(rising).flagged(0.05));
        assertFalse(atLeast(4, 6) < 0.05);
        assertEquals(2.0 / 24, atLeast(4, 6), 1e-15);
        assertEquals(2.0 / 120, atLeast(5, 10), 1e-15);
    }
}
