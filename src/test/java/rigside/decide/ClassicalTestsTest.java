package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two-condition tests, spread ratios, trends and their published data sets: R 4.2.2 (stats), twelve
 * digits, by the scripts beside the reference files. Sums over values with two or three constant
 * leading digits lose as many of sixteen.
 */
class ClassicalTestsTest {

    private static final double DIGITS = 1e-9;

    static final class Pair {
        private final String name;
        private final double[] a;
        private final double[] b;
        private final JsonNode expected;

        Pair(String name, double[] a, double[] b, JsonNode expected) {
            this.name = name;
            this.a = a;
            this.b = b;
            this.expected = expected;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static double[] log(double[] values) {
        return Arrays.stream(values).map(Math::log).toArray();
    }

    private static void add(List<Pair> to, String name, double[] a, double[] b, JsonNode node) {
        for (String kind : List.of("paired", "pooled", "variance_ratio_F")) {
            if (node.has(kind)) {
                to.add(new Pair(name, a, b, node));
                return;
            }
        }
    }

    /** Every data set with its raw and its log answers. */
    static Stream<Pair> everyPairOfSamples() {
        List<Pair> pairs = new ArrayList<>();
        JsonNode sets = Reference.read("classical.json").at("/data_tests/sets");
        sets.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode set = sets.get(name);
                            double[] a = Reference.doubles(set.get("A"));
                            double[] b = Reference.doubles(set.get("B"));
                            add(pairs, name, a, b, set);
                            if (set.has("two_sample")) {
                                add(pairs, name, a, b, set.get("two_sample"));
                                add(
                                        pairs,
                                        name + ", log",
                                        log(a),
                                        log(b),
                                        set.get("two_sample_log"));
                            } else {
                                pairs.add(logOfPaired(name, a, b, set));
                            }
                        });
        published(pairs);
        onDonningMeans(pairs);
        return pairs.stream();
    }

    private static Pair logOfPaired(String name, double[] a, double[] b, JsonNode set) {
        return new Pair(name + ", log", log(a), log(b), alone("paired", set.get("paired_log")));
    }

    private static JsonNode alone(String name, JsonNode node) {
        return new com.fasterxml.jackson.databind.ObjectMapper().createObjectNode().set(name, node);
    }

    private static void published(List<Pair> pairs) {
        JsonNode sets = Reference.read("datasets.json").get("datasets");
        double[] drug1 = column("sleep", 1, row -> true);
        double[] drug2 = column("sleep", 2, row -> true);
        add(pairs, "sleep", drug1, drug2, sets.at("/sleep/paired"));
        add(pairs, "sleep", drug1, drug2, sets.at("/sleep/as_if_independent"));
        double[] shoeA = column("shoes", 1, row -> true);
        double[] shoeB = column("shoes", 2, row -> true);
        add(pairs, "shoes", shoeA, shoeB, sets.at("/shoes/paired"));
        pairs.add(logOfPaired("shoes", shoeA, shoeB, sets.at("/shoes/paired")));
        add(pairs, "shoes", shoeA, shoeB, sets.at("/shoes/as_if_independent"));
        double[] y1 = column("immer", 2, row -> true);
        double[] y2 = column("immer", 3, row -> true);
        add(pairs, "immer", y1, y2, sets.at("/immer/Y2_minus_Y1"));
        pairs.add(logOfPaired("immer", y1, y2, sets.at("/immer/Y2_minus_Y1")));
        double[] ctrl = column("plant_growth", 1, row -> row[0].equals("ctrl"));
        for (String group : List.of("trt1", "trt2")) {
            double[] trt = column("plant_growth", 1, row -> row[0].equals(group));
            JsonNode node = sets.at("/plant_growth/" + group + "_vs_ctrl");
            add(pairs, group, ctrl, trt, node);
            add(pairs, group + ", log", log(ctrl), log(trt), node.get("log"));
        }
        double[] oj = column("tooth_growth", 2, row -> row[0].equals("OJ"));
        double[] vc = column("tooth_growth", 2, row -> row[0].equals("VC"));
        add(pairs, "tooth growth", oj, vc, sets.at("/tooth_growth/VC_vs_OJ_all"));
        add(
                pairs,
                "tooth growth, log",
                log(oj),
                log(vc),
                sets.at("/tooth_growth/VC_vs_OJ_all/log"));
        double[] ojLow = column("tooth_growth", 2, row -> row[0].equals("OJ") && low(row));
        double[] vcLow = column("tooth_growth", 2, row -> row[0].equals("VC") && low(row));
        add(pairs, "tooth growth, low dose", ojLow, vcLow, sets.at("/tooth_growth/dose_0.5"));
    }

    private static boolean low(String[] row) {
        return Double.parseDouble(row[1]) == 0.5;
    }

    private interface Chosen {
        boolean row(String[] cells);
    }

    private static double[] column(String set, int column, Chosen chosen) {
        return Reference.csv("data/" + set + ".csv").stream()
                .filter(chosen::row)
                .mapToDouble(row -> Double.parseDouble(row[column]))
                .toArray();
    }

    /** Donning means of the nested sets, and rounds of donning means. */
    private static void onDonningMeans(List<Pair> pairs) {
        JsonNode file = Reference.read("nested.json");
        JsonNode nested = file.get("nested");
        nested.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode data = nested.get(name).get("data");
                            List<JsonNode> conditions = Reference.list(data);
                            for (String scale : List.of("raw", "log")) {
                                JsonNode answers = nested.get(name).get(scale);
                                if (answers != null && answers.has("t_on_donning_means")) {
                                    DoubleUnaryOperator of =
                                            scale.equals("log") ? Math::log : x -> x;
                                    add(
                                            pairs,
                                            name + ", donning means, " + scale,
                                            means(conditions.get(0), of),
                                            means(conditions.get(1), of),
                                            answers.get("t_on_donning_means"));
                                }
                            }
                        });
        JsonNode rounds = file.get("paired_rounds");
        rounds.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode set = rounds.get(name);
                            pairs.add(ofRounds(name, set, "arithmetic_means", x -> x));
                            pairs.add(ofRounds(name, set, "log_geometric_means", Math::log));
                        });
    }

    private static double[] means(JsonNode donnings, DoubleUnaryOperator of) {
        return Reference.list(donnings).stream()
                .mapToDouble(donning -> mean(donning, of))
                .toArray();
    }

    private static double mean(JsonNode donning, DoubleUnaryOperator of) {
        return Sample.mean(Arrays.stream(Reference.doubles(donning)).map(of).toArray());
    }

    private static Pair ofRounds(String name, JsonNode set, String kind, DoubleUnaryOperator of) {
        List<double[]> columns =
                List.of(new double[set.get("data").size()], new double[set.get("data").size()]);
        for (int round = 0; round < set.get("data").size(); round++) {
            List<JsonNode> both = Reference.list(set.get("data").get(round));
            columns.get(0)[round] = mean(both.get(0), of);
            columns.get(1)[round] = mean(both.get(1), of);
        }
        return new Pair(
                name + ", rounds, " + kind,
                columns.get(0),
                columns.get(1),
                alone("paired", set.get("answers").get("paired_t_on_" + kind)));
    }

    /** One look with the whole alpha is the classical test. */
    @ParameterizedTest
    @MethodSource("everyPairOfSamples")
    void oneLookIsTheClassicalTest(Pair pair) {
        if (pair.expected.has("paired")) {
            double[] d = new double[pair.a.length];
            Arrays.setAll(d, i -> pair.b[i] - pair.a[i]);
            Rules rules = rules(Schedule.paired(d.length, d.length));
            assertTest(pair.expected.get("paired"), Sequential.paired(rules, d));
        }
        if (pair.expected.has("pooled")) {
            Schedule.Arms arms = new Schedule.Arms(pair.a.length, pair.b.length);
            Rules rules = rules(Schedule.independent(List.of(arms)));
            assertTest(pair.expected.get("pooled"), Sequential.independent(rules, pair.a, pair.b));
        }
        if (pair.expected.has("variance_ratio_F")) {
            JsonNode expected = pair.expected.get("variance_ratio_F");
            SpreadRatio ratio = SpreadRatio.of(pair.a, pair.b);
            assertClose(expected.get("F"), ratio.f());
            assertEquals(expected.get("df1").doubleValue(), ratio.otherDf());
            assertEquals(expected.get("df2").doubleValue(), ratio.referenceDf());
            assertClose(expected.get("p_two_sided"), ratio.p());
        }
    }

    private static Rules rules(Schedule schedule) {
        return new Rules(schedule, 0.05, 2, Band.symmetric(1), Matters.EITHER, 0);
    }

    private static void assertTest(JsonNode expected, Finding finding) {
        Interval interval = finding.interval().orElseThrow();
        TTest test =
                new TTest(
                        interval.estimate(), interval.standardError(), interval.degreesOfFreedom());
        assertClose(expected.get("estimate"), test.estimate());
        assertClose(expected.get("standard_error"), test.standardError());
        assertClose(expected.get("t"), test.t());
        assertEquals(expected.get("df").doubleValue(), test.degreesOfFreedom());
        assertClose(expected.get("p_two_sided"), test.p());
        double size = expected.get("standard_error").doubleValue();
        assertEquals(expected.at("/ci/0").doubleValue(), interval.lower(), DIGITS * 10 * size);
        assertEquals(expected.at("/ci/1").doubleValue(), interval.upper(), DIGITS * 10 * size);
    }

    static Stream<Pair> everyEquivalenceTest() {
        List<Pair> pairs = new ArrayList<>();
        JsonNode sets = Reference.read("classical.json").at("/data_tests/sets");
        sets.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode set = sets.get(name);
                            double[] a = log(Reference.doubles(set.get("A")));
                            double[] b = log(Reference.doubles(set.get("B")));
                            for (String margin : List.of("1.10", "1.25")) {
                                String kind = set.has("two_sample") ? "pooled_" : "";
                                JsonNode tost = set.get("tost_log_" + kind + margin);
                                pairs.add(new Pair(name + " " + margin, a, b, tost));
                            }
                        });
        return pairs.stream();
    }

    /** Two one-sided tests at 5 % each are one look with the 90 % interval inside the band. */
    @ParameterizedTest
    @MethodSource("everyEquivalenceTest")
    void twoOneSidedTestsAreOneLookInsideTheBand(Pair pair) {
        boolean paired = !pair.name.startsWith("independent") && !pair.name.startsWith("two_");
        JsonNode expected = pair.expected;
        int n = pair.a.length;
        Schedule schedule =
                paired
                        ? Schedule.paired(n, n)
                        : Schedule.independent(List.of(new Schedule.Arms(n, pair.b.length)));
        double margin = expected.get("margin").doubleValue();
        Rules rules = new Rules(schedule, 0.1, 2, Band.symmetric(margin), Matters.EITHER, 0);
        double[] d = new double[n];
        Arrays.setAll(d, i -> paired ? pair.b[i] - pair.a[i] : 0);
        Finding finding =
                paired
                        ? Sequential.paired(rules, d)
                        : Sequential.independent(rules, pair.a, pair.b);
        Interval interval = finding.interval().orElseThrow();
        double se = interval.standardError();
        assertEquals(
                expected.at("/ci_1_minus_2alpha/0").doubleValue(),
                interval.lower(),
                DIGITS * 10 * se);
        assertEquals(
                expected.at("/ci_1_minus_2alpha/1").doubleValue(),
                interval.upper(),
                DIGITS * 10 * se);
        assertEquals(
                expected.get("equivalent").booleanValue(),
                finding.verdict() == Verdict.NO_MEANINGFUL_DIFFERENCE);
        double lower = (interval.estimate() + margin) / se;
        double df = interval.degreesOfFreedom();
        assertClose(expected.get("t_lower"), lower);
        assertClose(expected.get("p_lower"), StudentT.upperTail(lower, df));
    }

    @Test
    void fTailsAndQuantilesAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "f_upper_tail")) {
            // Beta functions of Commons Math keep about twelve digits.
            assertEquals(row[3], SpreadRatio.upperTail(row[2], row[0], row[1]), 1e-11);
        }
        for (double[] row : Reference.rows("classical.json", "f_quantile")) {
            assertEquals(1 - row[2], SpreadRatio.upperTail(row[3], row[0], row[1]), 1e-10);
        }
    }

    static Stream<String> everyTrend() {
        List<String> names = new ArrayList<>();
        Reference.read("classical.json")
                .at("/trend/sets")
                .fieldNames()
                .forEachRemaining(names::add);
        return names.stream();
    }

    @ParameterizedTest
    @MethodSource("everyTrend")
    void slopesAreThoseOfTheReference(String name) {
        JsonNode set = Reference.read("classical.json").at("/trend/sets/" + name);
        JsonNode linear = set.get("linear");
        TTest trend = Trend.of(Reference.doubles(set.get("y")));
        assertClose(linear.get("slope"), trend.estimate());
        assertClose(linear.get("standard_error"), trend.standardError());
        assertClose(linear.get("t"), trend.t());
        assertClose(linear.get("p_two_sided"), trend.p());
        assertEquals(linear.get("df").doubleValue(), trend.degreesOfFreedom());
    }

    @Test
    void aTrendNeedsThreeValuesAndSomeSpread() {
        assertThrows(IllegalArgumentException.class, () -> Trend.of(new double[] {1, 2}));
        assertEquals(false, Trend.of(new double[] {3, 3, 3}).flagged(0.05));
        assertEquals(true, Trend.of(new double[] {1, 2, 3}).flagged(0.05));
    }

    /**
     * The rail data without one value at the end and one in the middle; NumPy 2.4.6 linalg.lstsq
     * with a column a rail and one of places 0, 1, 2, SciPy 1.17.1 stats.t.sf.
     */
    @Test
    void aCommonSlopeIsThatOfOneLineThroughCentredGroups() {
        List<double[]> places = new ArrayList<>();
        List<double[]> values = new ArrayList<>();
        for (int rail = 1; rail <= 6; rail++) {
            String name = String.valueOf(rail);
            double[] y = column("rail", 1, row -> row[0].equals(name));
            places.add(rail == 2 ? new double[] {0, 1} : new double[] {0, 1, 2});
            values.add(rail == 2 ? Arrays.copyOf(y, 2) : y);
            if (rail == 3) {
                places.set(2, new double[] {0, 2});
                values.set(2, new double[] {y[0], y[2]});
            }
        }
        TTest trend = Trend.within(places, values, 0);
        assertEquals(1.8571428571428577, trend.estimate(), 1e-14);
        assertEquals(1.0155009239189399, trend.standardError(), 1e-13);
        assertEquals(9, trend.degreesOfFreedom());
        assertEquals(0.1006880972494856, trend.p(), 1e-13);
    }

    @Test
    void aTrendAsFineAsItsRoundingIsNone() {
        // Exactly on a line, one step of 0.1 each: without the floor p is 0.
        List<double[]> places = List.of(new double[] {0, 1, 2, 3});
        List<double[]> values = List.of(new double[] {5.0, 5.1, 5.2, 5.3});
        assertTrue(Trend.within(places, values, 0).p() < 1e-12);
        TTest floored = Trend.within(places, values, 0.1 / Math.sqrt(12));
        // By hand: sum of squared places about their mean is 5.
        assertEquals(0.1 / Math.sqrt(12) / Math.sqrt(5), floored.standardError(), 1e-15);
        assertThrows(
                IllegalArgumentException.class,
                () -> Trend.within(List.of(new double[] {1, 1, 1, 1}), values, 0));
    }

    /** SciPy 1.17.1: stats.pearsonr(b + a, b - a); ratio of NumPy's std with ddof 1. */
    @Test
    void spreadsOfPairsAreComparedByTheirSumsAndDifferences() {
        PairedSpread shoes =
                PairedSpread.of(column("shoes", 1, row -> true), column("shoes", 2, row -> true));
        assertEquals(1.027388835535036, shoes.ratio(), 1e-13);
        assertEquals(0.17392895598219488, shoes.test().estimate(), 1e-13);
        assertEquals(0.6308326965179766, shoes.test().p(), 1e-12);
        PairedSpread immer =
                PairedSpread.of(column("immer", 2, row -> true), column("immer", 3, row -> true));
        assertEquals(0.8465932006715996, immer.ratio(), 1e-13);
        assertEquals(-0.19221826387590019, immer.test().estimate(), 1e-13);
        assertEquals(0.308860441565669, immer.test().p(), 1e-12);
        assertEquals(28, immer.test().degreesOfFreedom());
    }

    @Test
    void pairsWithoutSpreadGiveNoSpreadTest() {
        double[] same = {2, 2, 2};
        assertEquals(false, PairedSpread.of(same, same).test().flagged(0.05));
        assertThrows(
                IllegalArgumentException.class,
                () -> PairedSpread.of(new double[] {1, 2}, new double[] {2, 3}));
    }

    /** The pooled two-sample test of the reference, halved: R's t.test of the two orders. */
    @Test
    void theOrderEffectIsHalfThePooledDifferenceOfTheOrders() {
        double[] otherFirst = column("plant_growth", 1, row -> row[0].equals("ctrl"));
        double[] referenceFirst = column("plant_growth", 1, row -> row[0].equals("trt2"));
        JsonNode pooled =
                Reference.read("datasets.json").at("/datasets/plant_growth/trt2_vs_ctrl/pooled");
        TTest order = OrderEffect.of(referenceFirst, otherFirst, 0);
        assertEquals(pooled.get("estimate").doubleValue() / 2, order.estimate(), 1e-11);
        assertEquals(pooled.get("standard_error").doubleValue() / 2, order.standardError(), 1e-11);
        assertClose(pooled.get("p_two_sided"), order.p());
        assertEquals(18, order.degreesOfFreedom());
    }

    @Test
    void anAddedOrderEffectIsFoundWhateverTheConditionsDiffer() {
        // The second donning always takes 2 more; conditions differ by 5, with the same noise.
        double[] referenceFirst = {5 + 2 + 0.1, 5 + 2 - 0.1};
        double[] otherFirst = {5 - 2 + 0.1, 5 - 2 - 0.1};
        assertEquals(2, OrderEffect.of(referenceFirst, otherFirst, 0).estimate(), 1e-14);
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderEffect.of(new double[] {1, 2, 3}, new double[0], 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderEffect.of(new double[] {1}, new double[] {2}, 0));
    }

    @Test
    void equalValuesHaveNoSpreadRatio() {
        SpreadRatio both = SpreadRatio.of(new double[] {1, 1}, new double[] {2, 2});
        assertEquals(false, both.flagged(0.05));
        SpreadRatio one = SpreadRatio.of(new double[] {1, 1}, new double[] {2, 3});
        assertEquals(Double.POSITIVE_INFINITY, one.f());
        assertEquals(0, one.p());
        assertThrows(
                IllegalArgumentException.class,
                () -> SpreadRatio.of(new double[] {1}, new double[] {2, 3}));
    }

    private static void assertClose(JsonNode expected, double actual) {
        double value = expected.doubleValue();
        assertEquals(value, actual, DIGITS * Math.abs(value));
    }
}
