package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Where each part of the reference is tested: a part without a test fails here. */
class ReferenceFilesTest {

    /** What says how the numbers were made, and is no answer. */
    private static final Set<String> NO_ANSWERS =
            Set.of(
                    "source",
                    "note",
                    "note_lan_demets",
                    "definition",
                    "accuracy",
                    "tolerance_advice",
                    "standard_error",
                    "purpose",
                    "scenarios",
                    "check_mvtnorm_max_abs_error");

    private static void assertTested(String file, String inside, Map<String, Class<?>> tests) {
        JsonNode node = Reference.read(file).at(inside);
        Set<String> parts = new TreeSet<>();
        node.fieldNames().forEachRemaining(parts::add);
        parts.removeAll(NO_ANSWERS);
        assertEquals(parts, new TreeMap<>(tests).keySet(), file);
    }

    @Test
    void everyPartOfTheClassicalValuesIsTested() {
        Map<String, Class<?>> tests = new TreeMap<>();
        tests.put("student_t_quantile", StudentTTest.class);
        tests.put("student_t_cdf", StudentTTest.class);
        tests.put("f_quantile", SpreadRatioTest.class);
        tests.put("f_upper_tail", SpreadRatioTest.class);
        tests.put("noncentral_t_cdf", ToleranceTest.class);
        tests.put("noncentral_t_quantile", ToleranceTest.class);
        tests.put("power_t_test", PowerTest.class);
        tests.put("sample_size_t_test", PowerTest.class);
        tests.put("tost_sample_size", FixedDesignTest.class);
        tests.put("tost_power", FixedDesignTest.class);
        tests.put("tolerance_factor_one_sided", ToleranceTest.class);
        tests.put("grubbs_critical", GrubbsTest.class);
        tests.put("poisson_limits", ExactLimitsTest.class);
        tests.put("poisson_rate_ratio", ExactLimitsTest.class);
        tests.put("sd_upper_limit_factor", ExactLimitsTest.class);
        tests.put("binomial_limits", ExactLimitsTest.class);
        tests.put("data_tests", TwoSampleAnswersTest.class);
        tests.put("fieller", FiellerTest.class);
        tests.put("trend", RankTrendTest.class);
        tests.put("grubbs_data", GrubbsTest.class);
        assertTested("classical.json", "", tests);
    }

    @Test
    void everyPublishedDataSetIsTested() {
        assertTested(
                "datasets.json",
                "/datasets",
                Map.of(
                        "sleep", TwoSampleAnswersTest.class,
                        "plant_growth", TwoSampleAnswersTest.class,
                        "tooth_growth", TwoSampleAnswersTest.class,
                        "shoes", TwoSampleAnswersTest.class,
                        "immer", TwoSampleAnswersTest.class,
                        "dyestuff", NestedAnswersTest.class,
                        "rail", NestedAnswersTest.class));
    }

    @Test
    void everyPartOfTheOtherFilesIsTested() {
        assertTested(
                "nested.json",
                "",
                Map.of(
                        "nested", NestedAnswersTest.class,
                        "one_condition", NestedAnswersTest.class,
                        "paired_rounds", TwoSampleAnswersTest.class));
        assertTested(
                "group_sequential_known_sigma.json",
                "",
                Map.of(
                        "entries", KnownSpreadTest.class,
                        "bench_designs", KnownSpreadTest.class,
                        "remembered_published_values", KnownSpreadTest.class));
        for (String kind : new String[] {"paired", "independent"}) {
            assertTested(
                    "sequential_t_" + kind + ".json",
                    "",
                    Map.of(
                            "entries", CriticalValuesTest.class,
                            "naive_peeking", CriticalValuesTest.class));
        }
        Map<String, Class<?>> entries = Map.of("entries", CriticalValuesTest.class);
        assertTested("sequential_t_unbalanced.json", "", entries);
        assertTested("worked_sequences.json", "", Map.of("entries", SequentialTest.class));
        assertTested(
                "operating_characteristics.json",
                "",
                Map.of("main", OperatingCharacteristicsTest.class));
        assertTested("rho_choice.json", "", Map.of("rows", OperatingCharacteristicsTest.class));
    }
}
