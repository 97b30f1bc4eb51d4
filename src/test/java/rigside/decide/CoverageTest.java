package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The promise itself, from raw normal values through the whole of {@link Sequential}. */
class CoverageTest {

    private static final int CAMPAIGNS = 20_000;

    static Stream<Arguments> designs() {
        return Stream.of(
                Arguments.of("pairs 3 to 10", Schedule.paired(3, 10), 0.05, 2.0),
                Arguments.of("pairs 2 to 6", Schedule.paired(2, 6), 0.1, 1.0),
                Arguments.of("arms 3 to 8", Schedule.independent(3, 8), 0.05, 2.0),
                Arguments.of(
                        "one arm first",
                        Schedule.independent(
                                List.of(
                                        new Schedule.Arms(6, 2),
                                        new Schedule.Arms(6, 3),
                                        new Schedule.Arms(6, 6))),
                        0.2,
                        2.0),
                Arguments.of(
                        "jumps, uneven",
                        Schedule.independent(
                                List.of(
                                        new Schedule.Arms(2, 3),
                                        new Schedule.Arms(4, 3),
                                        new Schedule.Arms(5, 9))),
                        0.1,
                        1.0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("designs")
    void theTruthIsMissedAtSomeLookAsOftenAsPromised(
            String name, Schedule schedule, double alpha, double exponent) {
        Rules rules = new Rules(schedule, alpha, exponent, Bands.symmetric(1), Matters.EITHER, 0);
        RandomGenerator random = new SplittableRandom(17);
        double truth = 0.7;
        int missed = 0;
        for (int i = 0; i < CAMPAIGNS; i++) {
            Schedule.Arms last = schedule.last().arms();
            double[] reference = normal(last.reference(), 5, 0.8, random);
            double[] other = normal(last.other(), 5 + truth, 0.8, random);
            Course course =
                    schedule.design() == Schedule.Design.PAIRED
                            ? Sequential.pairedCourse(rules, minus(other, reference))
                            : Sequential.independentCourse(rules, reference, other);
            boolean some =
                    course.looks().stream()
                            .map(look -> look.interval().orElseThrow())
                            .anyMatch(in -> truth < in.lower() || truth > in.upper());
            missed += some ? 1 : 0;
        }
        // Four binomial standard errors.
        double tolerance = 4 * Math.sqrt(alpha * (1 - alpha) / CAMPAIGNS);
        assertEquals(alpha, (double) missed / CAMPAIGNS, tolerance, name);
    }

    /** On the band's edge the wrong claim "meaningful" has half of alpha at most. */
    @Test
    void atTheEdgeOfTheBandTheWrongClaimIsRare() {
        RandomGenerator random = new SplittableRandom(18);
        for (Matters matters : Matters.values()) {
            Rules rules = new Rules(Schedule.paired(3, 10), 0.1, 2, Bands.symmetric(1), matters, 0);
            double edge = matters == Matters.DECREASE ? -1 : 1;
            int claims = 0;
            for (int i = 0; i < CAMPAIGNS; i++) {
                Course course = Sequential.pairedCourse(rules, normal(10, edge, 0.4, random));
                claims += course.standing() == Verdict.MEANINGFUL_DIFFERENCE ? 1 : 0;
            }
            double share = (double) claims / CAMPAIGNS;
            double error = Math.sqrt(0.05 * 0.95 / CAMPAIGNS);
            assertTrue(share < 0.05 + 4 * error, matters + ": " + share);
            assertTrue(share > 0.03, "the limit is nearly reached: " + share);
        }
    }

    private static double[] normal(int n, double mean, double sd, RandomGenerator random) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> mean + sd * random.nextGaussian());
        return values;
    }

    private static double[] minus(double[] b, double[] a) {
        double[] d = new double[a.length];
        Arrays.setAll(d, i -> b[i] - a[i]);
        return d;
    }
}
