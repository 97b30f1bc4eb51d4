package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power, sample sizes and published data sets, through what the program computes them with. */
class PublishedPlansTest {

    private static JsonNode rows(String section) {
        return Reference.read("classical.json").at("/" + section + "/rows");
    }

    private static double nonCentrality(String type, double n, double shift) {
        return shift * Math.sqrt(type.equals("paired") ? n : n / 2);
    }

    private static double degrees(String type, double n) {
        return type.equals("paired") ? n - 1 : 2 * n - 2;
    }

    /** R 4.2.2 power.t.test. R's own noncentral t is good to about 1e-9 here. */
    @Test
    void powersOfTTestsAreThoseOfTheReference() {
        for (JsonNode row : rows("power_t_test")) {
            String type = row.get(0).textValue();
            double n = row.get(1).doubleValue();
            double df = degrees(type, n);
            double critical = StudentT.upperQuantile(row.get(3).doubleValue() / 2, df);
            NoncentralT t = new NoncentralT(df, nonCentrality(type, n, row.get(2).doubleValue()));
            assertEquals(row.get(4).doubleValue(), t.upperTail(critical), 1e-8, row.toString());
            assertEquals(
                    row.get(5).doubleValue(),
                    t.upperTail(critical) + t.lowerTail(-critical),
                    1e-8,
                    row.toString());
        }
    }

    /** R 4.2.2 power.t.test; its n is found to about 6 digits. */
    @Test
    void sampleSizesOfTTestsAreThoseOfTheReference() {
        for (JsonNode row : rows("sample_size_t_test")) {
            String type = row.get(0).textValue();
            double shift = row.get(1).doubleValue();
            int needed = row.get(4).intValue();
            assertTrue(power(type, needed, shift) >= row.get(2).doubleValue(), row.toString());
            assertTrue(power(type, needed - 1, shift) < row.get(2).doubleValue(), row.toString());
            assertEquals(
                    row.get(2).doubleValue(),
                    power(type, row.get(3).doubleValue(), shift),
                    2e-6,
                    row.toString());
        }
    }

    private static double power(String type, double n, double shift) {
        double df = degrees(type, n);
        double critical = StudentT.upperQuantile(0.025, df);
        return new NoncentralT(df, nonCentrality(type, n, shift)).upperTail(critical);
    }

    /** R 4.2.2 poisson.test: exact conditional limits, ten digits. */
    @Test
    void rateRatiosAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "poisson_rate_ratio")) {
            Limits limits =
                    ExactLimits.rateRatio((int) row[0], row[1], (int) row[2], row[3], row[4]);
            assertEquals(row[6], limits.low(), 1e-8 * Math.max(1e-9, row[6]));
            if (Double.isNaN(row[7])) {
                assertEquals(Double.POSITIVE_INFINITY, limits.high());
            } else {
                assertEquals(row[7], limits.high(), 1e-8 * row[7]);
            }
        }
    }

    /** R 4.2.2 qchisq, ten digits. */
    @Test
    void spreadFactorsAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "sd_upper_limit_factor")) {
            assertEquals(row[2], ExactLimits.spreadFactor((int) row[0], row[1]), 1e-9 * row[2]);
        }
    }

    private static double[] values(String file, int column) {
        return Reference.csv("data/" + file).stream()
                .mapToDouble(row -> Double.parseDouble(row[column]))
                .toArray();
    }

    /** NIST/SEMATECH e-Handbook 1.3.5.3, as printed there (read in a public copy). */
    @Test
    void theHandbooksTwoSampleTestIsReproduced() {
        double[][] arms =
                Stream.of("1", "2")
                        .map(
                                sample ->
                                        Reference.csv("data/auto83b.csv").stream()
                                                .filter(row -> row[0].equals(sample))
                                                .mapToDouble(row -> Double.parseDouble(row[1]))
                                                .toArray())
                        .toArray(double[][]::new);
        Sample sample = Sample.of(arms[1], arms[0]);
        double error = sample.spread() / Math.sqrt(sample.information());
        assertEquals(-12.62059, sample.estimate() / error, 5e-6);
        assertEquals(6.34260, sample.spread(), 5e-6);
        assertEquals(326, sample.degreesOfFreedom());
        assertEquals(1.9673, StudentT.upperQuantile(0.025, 326), 5e-5);
    }

    /** e-Handbook 1.3.5.4 (printed values from memory, recomputed with R 4.2.2). */
    @Test
    void theHandbooksAnalysisOfVarianceIsReproduced() {
        VarianceParts parts = parts("gear.csv", 1, 0);
        assertEquals(2.2969, parts.donningMeanSquare() / parts.trial(), 5e-5);
        assertEquals(4.573778e-06, parts.donning(), 5e-13);
        assertEquals(0.05, SpreadRatio.upperTail(1.9856, parts.donningDf(), parts.trialDf()), 5e-6);
    }

    /** e-Handbook 1.3.5.2 (printed values from memory, recomputed with R 4.2.2). */
    @Test
    void theHandbooksLimitsForTheMeanAreReproduced() {
        Interval interval = Summary.of(values("zarr13.csv", 0)).interval(0.95);
        assertEquals(9.258242, interval.lower(), 5e-7);
        assertEquals(9.264679, interval.upper(), 5e-7);
    }

    /** Davies and Goldsmith 1972; Devore 2000. R 4.2.2; balanced, so that REML gives the same. */
    @ParameterizedTest
    @CsvSource({"dyestuff, 1e-10", "rail, 1e-10"})
    void publishedVarianceComponentsAreReproduced(String set, double slack) {
        JsonNode expected =
                Reference.read("datasets.json").at("/datasets/" + set + "/nested_one_condition");
        VarianceParts parts = parts(set + ".csv", 0, 1);
        JsonNode moment = expected.get("moment");
        assertEquals(moment.get("trial").doubleValue(), parts.trial(), slack * parts.trial());
        assertEquals(moment.get("donning").doubleValue(), parts.donning(), slack * parts.donning());
        // lme4's optimum, good to about five digits.
        assertEquals(
                expected.at("/reml/donning").doubleValue(),
                parts.donning(),
                1e-5 * parts.donning());
        double f = parts.donningMeanSquare() / parts.trial();
        assertEquals(moment.get("F_donning").doubleValue(), f, slack * f);
        double p = moment.get("p_donning").doubleValue();
        assertEquals(p, SpreadRatio.upperTail(f, parts.donningDf(), parts.trialDf()), 1e-7 * p);
    }

    /** Dobson 1983; R 4.2.2 anova. */
    @Test
    void thePublishedAnalysisOfVarianceIsReproduced() {
        JsonNode expected = Reference.read("datasets.json").at("/datasets/plant_growth/anova");
        VarianceParts parts = parts("plant_growth.csv", 0, 1);
        double f = parts.donningMeanSquare() / parts.trial();
        assertEquals(expected.get("F").doubleValue(), f, 1e-9);
        assertEquals(
                expected.get("p").doubleValue(),
                SpreadRatio.upperTail(f, parts.donningDf(), parts.trialDf()),
                1e-10);
    }

    private static VarianceParts parts(String file, int group, int value) {
        Map<String, List<Double>> groups = new LinkedHashMap<>();
        for (String[] row : Reference.csv("data/" + file)) {
            groups.computeIfAbsent(row[group], g -> new ArrayList<>())
                    .add(Double.valueOf(row[value]));
        }
        return VarianceParts.of(
                List.of(
                        groups.values().stream()
                                .map(g -> g.stream().mapToDouble(Double::doubleValue).toArray())
                                .toList()));
    }

    /** R's documented examples of power.t.test, as printed. */
    @Test
    void documentedExamplesOfPowerAreReproduced() {
        assertEquals(0.8689528, power("two", 20, 1), 5e-8);
        assertEquals(0.8030962, power("paired", 10, 1), 5e-8);
        assertEquals(0.90, power("two", 22.02110, 1), 5e-7);
    }
}
