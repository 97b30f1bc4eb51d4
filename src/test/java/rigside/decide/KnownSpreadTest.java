package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The classical group-sequential constants, as the limit of many degrees of freedom of the very
 * code that makes the critical values.
 */
class KnownSpreadTest {

    /** The file has six decimals; the limit itself is 6e-8 off at the farthest z, of 6.2. */
    private static final double SIX_DECIMALS = 5.6e-7;

    private static JsonNode file() {
        return Reference.read("group_sequential_known_sigma.json");
    }

    static Stream<Answers> everyPlan() {
        return Reference.list(file().get("entries")).stream()
                .map(
                        entry ->
                                new Answers(
                                        entry.get("K") + " looks, alpha " + entry.get("alpha"),
                                        entry));
    }

    /** Recursive integration of normal densities (NumPy 1.24.2), checked there by mvtnorm. */
    @ParameterizedTest
    @MethodSource("everyPlan")
    void everyConstantOfTheReferenceIsReached(Answers plan) {
        int looks = plan.take("K").intValue();
        double alpha = plan.number("alpha");
        Schedule schedule = equallySpaced(looks);
        try (plan) {
            boundary(plan.part("power_rho_1"), schedule, t -> alpha * t);
            boundary(plan.part("power_rho_2"), schedule, t -> alpha * t * t);
            boundary(plan.part("power_rho_3"), schedule, t -> alpha * t * t * t);
            boundary(plan.part("lan_demets_obf_type_per_side"), schedule, likeOBrienFleming(alpha));
            boundary(
                    plan.part("lan_demets_obf_type_total"),
                    schedule,
                    t -> likeOBrienFleming(2 * alpha).applyAsDouble(t) / 2);
            boundary(plan.part("lan_demets_pocock_type"), schedule, likePocock(alpha));
            double pocock = constant(schedule, alpha, k -> 1);
            assertEquals(plan.number("pocock_constant"), pocock, SIX_DECIMALS);
            double brien = constant(schedule, alpha, k -> Math.sqrt(looks / k));
            assertEquals(plan.number("obrien_fleming_constant"), brien, SIX_DECIMALS);
            assertArrayEquals(
                    plan.numbers("obrien_fleming_z"),
                    shaped(looks, brien, k -> Math.sqrt(looks / k)),
                    SIX_DECIMALS * Math.sqrt(looks));
        }
    }

    private static void boundary(
            Answers expected, Schedule schedule, DoubleUnaryOperator spending) {
        double[] spent = spent(schedule, spending);
        double[] z = CriticalValues.spending(schedule, spent);
        double[] p = CriticalValues.nominal(schedule, z);
        double[] cumulative = expected.numbers("cumulative_alpha");
        double[] nominal = expected.numbers("nominal_two_sided_p");
        assertArrayEquals(expected.numbers("z"), z, SIX_DECIMALS);
        for (int i = 0; i < z.length; i++) {
            // Six digits.
            assertEquals(cumulative[i], spent[i], 5.1e-6 * cumulative[i]);
            assertEquals(nominal[i], p[i], 5.1e-6 * nominal[i]);
        }
    }

    /** The number whose boundary of this shape (of look 1, 2, ...) spends alpha in all. */
    private static double constant(Schedule schedule, double alpha, DoubleUnaryOperator shape) {
        int looks = schedule.looks().size();
        double low = 1;
        double high = 6;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            double[] crossed = Crossings.of(schedule, shaped(looks, middle, shape));
            if (crossed[looks - 1] > alpha) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double[] shaped(int looks, double constant, DoubleUnaryOperator shape) {
        return IntStream.rangeClosed(1, looks)
                .mapToDouble(k -> constant * shape.applyAsDouble(k))
                .toArray();
    }

    /** Lan and DeMets 1983: each side spends 2 - 2 Phi(z / sqrt t), z the quantile of alpha/4. */
    private static DoubleUnaryOperator likeOBrienFleming(double alpha) {
        double z = StudentT.upperQuantile(alpha / 4, Crossings.KNOWN);
        return t -> 4 * NoncentralT.normalUpper(z / Math.sqrt(t));
    }

    private static DoubleUnaryOperator likePocock(double alpha) {
        return t -> alpha * Math.log1p((Math.E - 1) * t);
    }

    private static double[] spent(Schedule schedule, DoubleUnaryOperator spending) {
        double all = schedule.last().information();
        return schedule.looks().stream()
                .mapToDouble(look -> spending.applyAsDouble(look.information() / all))
                .toArray();
    }

    static Stream<Named<JsonNode>> everyBenchDesign() {
        return Reference.list(file().at("/bench_designs/entries")).stream()
                .map(
                        entry ->
                                Named.of(
                                        entry.get("n_min")
                                                + " to "
                                                + entry.get("n_max")
                                                + ", alpha "
                                                + entry.get("alpha")
                                                + ", exponent "
                                                + entry.get("rho"),
                                        entry));
    }

    /** All that has accrued up to the first look is spent there. */
    @ParameterizedTest
    @MethodSource("everyBenchDesign")
    void plansAtTheBenchHaveTheBoundaryOfTheReference(JsonNode entry) {
        Schedule schedule =
                Crossings.knownSpread(
                        IntStream.rangeClosed(
                                        entry.get("n_min").intValue(),
                                        entry.get("n_max").intValue())
                                .asDoubleStream()
                                .boxed()
                                .toList());
        assertArrayEquals(
                Reference.doubles(entry.get("z")),
                CriticalValues.of(
                        schedule, entry.get("alpha").doubleValue(), entry.get("rho").doubleValue()),
                SIX_DECIMALS);
    }

    /** Jennison and Turnbull 2000, tables 2.1 and 2.3 (from memory): three decimals. */
    @ParameterizedTest
    @CsvSource({"pocock, 0", "obrien_fleming, 0.5"})
    void constantsAreThoseOfThePublishedTables(String kind, double power) {
        JsonNode published =
                file().at("/remembered_published_values/" + kind + "_alpha_0.05/values");
        assertEquals(10, published.size());
        for (int looks = 1; looks <= 10; looks++) {
            double all = looks;
            assertEquals(
                    published.get(String.valueOf(looks)).doubleValue(),
                    constant(equallySpaced(looks), 0.05, k -> Math.pow(all / k, power)),
                    5.1e-4,
                    looks + " looks");
        }
    }

    /** Four decimals, of the same tables recomputed with a normal integration. */
    @ParameterizedTest
    @CsvSource({
        "2, 2.1783, 1.9774",
        "3, 2.2895, 2.0040",
        "4, 2.3613, 2.0243",
        "5, 2.4132, 2.0401",
        "6, 2.4532, 2.0528",
        "8, 2.5123, 2.0722",
        "10, 2.5550, 2.0865"
    })
    void constantsHaveFourPublishedDecimals(int looks, double pocock, double brienFleming) {
        Schedule schedule = equallySpaced(looks);
        assertEquals(pocock, constant(schedule, 0.05, k -> 1), 5.1e-5);
        assertEquals(brienFleming, constant(schedule, 0.05, k -> Math.sqrt(looks / k)), 5.1e-5);
    }

    /** Pocock 1977: with two looks each tests at a nominal 0.0294. */
    @Test
    void thePublishedNominalLevelOfTwoLooksIsReached() {
        Schedule two = equallySpaced(2);
        double c = constant(two, 0.05, k -> 1);
        for (double p : CriticalValues.nominal(two, new double[] {c, c})) {
            assertEquals(0.0294, p, 5.1e-5);
        }
    }

    /**
     * Armitage, McPherson and Rowe 1969, table 2 (from memory, recomputed with R mvtnorm): tests at
     * 5 % with the spread known.
     */
    @Test
    void repeatedSignificanceTestsErrAsOftenAsPublished() {
        double[] z = new double[20];
        Arrays.fill(z, StudentT.upperQuantile(0.025, Crossings.KNOWN));
        double[] crossed = Crossings.of(equallySpaced(20), z);
        double[] printed = {.050, .083, .107, .126, .142, .155, .166, .176, .185, .193};
        for (int i = 0; i < printed.length; i++) {
            assertEquals(printed[i], crossed[i], 5.1e-4, i + 1 + " looks");
        }
        int[] looks = {1, 2, 3, 4, 5, 10, 20};
        double[] digits = {0.05, 0.08312, 0.10726, 0.12617, 0.14169, 0.19336, 0.24791};
        for (int i = 0; i < looks.length; i++) {
            assertEquals(digits[i], crossed[looks[i] - 1], 5.1e-6, looks[i] + " looks");
        }
    }

    /** Spending functions at alpha 0.05, two-sided: boundaries of four decimals. */
    @Test
    void publishedBoundariesOfSpendingFunctionsAreReached() {
        assertBoundary(likeOBrienFleming(0.05), 3.7103, 2.5114, 1.9930);
        assertBoundary(likeOBrienFleming(0.05), 4.8769, 3.3570, 2.6803, 2.2898, 2.0310);
        assertBoundary(likePocock(0.05), 2.2794, 2.2949, 2.2959);
        assertBoundary(likePocock(0.05), 2.4380, 2.4268, 2.4102, 2.3966, 2.3860);
        // Kim and DeMets 1987.
        assertBoundary(t -> 0.05 * t, 2.5758, 2.4920, 2.4108, 2.3391, 2.2755);
        assertBoundary(t -> 0.05 * t * t, 3.0902, 2.7141, 2.4728, 2.2799, 2.1140);
        assertBoundary(t -> 0.05 * t * t * t, 3.5401, 2.9743, 2.6045, 2.3064, 2.0455);
        assertBoundary(t -> 0.05 * t * t, 2.9552, 2.5594, 2.3009, 2.0920);
        assertBoundary(
                t -> 0.05 * t * t,
                3.4808,
                3.1523,
                2.9508,
                2.7935,
                2.6611,
                2.5450,
                2.4406,
                2.3451,
                2.2566,
                2.1737);
    }

    private static void assertBoundary(DoubleUnaryOperator spending, double... published) {
        Schedule schedule = equallySpaced(published.length);
        assertArrayEquals(
                published, CriticalValues.spending(schedule, spent(schedule, spending)), 5.1e-5);
    }

    /** One side of the O'Brien-Fleming type at alpha 0.025 (read in a public test of another). */
    @Test
    void theSpendingFunctionOfEachSideIsThatPublished() {
        DoubleUnaryOperator both = likeOBrienFleming(0.05);
        assertEquals(0.001525323, both.applyAsDouble(0.5) / 2, 5.1e-10);
        assertEquals(0.009649325, both.applyAsDouble(0.75) / 2, 5.1e-10);
    }

    /** More values behind the same looks: the t statistic's values fall to the normal ones. */
    @Test
    void withMoreValuesALookCriticalValuesTendToTheKnownSpread() {
        double[] known = CriticalValues.of(equallySpaced(5), 0.05, 2);
        double before = Double.POSITIVE_INFINITY;
        for (int pairs : List.of(3, 10, 100, 1000)) {
            Schedule schedule =
                    Schedule.paired(
                            IntStream.rangeClosed(1, 5).map(k -> k * pairs).boxed().toList());
            double[] c = CriticalValues.of(schedule, 0.05, 2);
            double off =
                    IntStream.range(0, 5).mapToDouble(i -> c[i] / known[i] - 1).max().orElseThrow();
            assertTrue(off > 0 && off < before, pairs + ": " + off);
            before = off;
        }
        // A t quantile exceeds the normal z by (z^2 + 1) / (4 df) of itself, about.
        assertEquals(0, before, 3.0 / 1000);
        assertTrue(DoubleStream.of(known).allMatch(z -> z > 1.9));
    }

    private static Schedule equallySpaced(int looks) {
        return Crossings.knownSpread(
                IntStream.rangeClosed(1, looks).asDoubleStream().boxed().toList());
    }
}
