package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power and sample sizes of t tests, by the tails that tolerance bounds and fixed designs use. */
class PowerTest {

    private static List<JsonNode> rows(String section) {
        return Reference.list(Reference.read("classical.json").get(section).get("rows"));
    }

    private static NoncentralT shifted(String type, double n, double shift) {
        double information = type.equals("paired") ? n : n / 2;
        return new NoncentralT(degrees(type, n), shift * Math.sqrt(information));
    }

    private static double degrees(String type, double n) {
        return type.equals("paired") ? n - 1 : 2 * n - 2;
    }

    /** One tail, at this level a side. */
    private static double power(String type, double n, double shift, double level) {
        return shifted(type, n, shift).upperTail(StudentT.upperQuantile(level, degrees(type, n)));
    }

    /** R 4.2.2 power.t.test, of the larger tail and strictly. R's own is good to about 1e-9. */
    @Test
    void powersOfTTestsAreThoseOfTheReference() {
        for (JsonNode row : rows("power_t_test")) {
            String type = row.get(0).textValue();
            double n = row.get(1).doubleValue();
            double shift = row.get(2).doubleValue();
            double level = row.get(3).doubleValue() / 2;
            double one = power(type, n, shift, level);
            double other =
                    shifted(type, n, shift)
                            .lowerTail(-StudentT.upperQuantile(level, degrees(type, n)));
            assertEquals(row.get(4).doubleValue(), one, 2e-9, row.toString());
            assertEquals(row.get(5).doubleValue(), one + other, 2e-9, row.toString());
        }
    }

    /** R 4.2.2 power.t.test; its n is found to about 6 digits. */
    @Test
    void sampleSizesOfTTestsAreThoseOfTheReference() {
        for (JsonNode row : rows("sample_size_t_test")) {
            String type = row.get(0).textValue();
            double shift = row.get(1).doubleValue();
            double wished = row.get(2).doubleValue();
            int needed = row.get(4).intValue();
            assertTrue(power(type, needed, shift, 0.025) >= wished, row.toString());
            assertTrue(power(type, needed - 1, shift, 0.025) < wished, row.toString());
            double n = row.get(3).doubleValue();
            assertEquals(wished, power(type, n, shift, 0.025), 2e-6, row.toString());
        }
    }

    /** R's documented examples of power.t.test, as printed: powers, or n that have a power. */
    @ParameterizedTest
    @CsvSource({
        "two, 20, 1, 0.025, 0.8689528, 5.1e-8",
        "paired, 10, 1, 0.025, 0.8030962, 5.1e-8",
        "two, 22.02110, 1, 0.025, 0.90, 5e-7",
        "two, 17.84713, 1, 0.05, 0.90, 5e-7"
    })
    void documentedExamplesAreReproduced(
            String type, double n, double shift, double level, double power, double slack) {
        assertEquals(power, power(type, n, shift, level), slack);
    }

    /** Another of R's examples, strict: 127.5158 of one sample see 0.25 with 80 %, both tails. */
    @Test
    void theDocumentedExampleOfAStrictPowerIsReproduced() {
        double n = 127.5158;
        double critical = StudentT.upperQuantile(0.025, n - 1);
        NoncentralT t = shifted("paired", n, 0.25);
        assertEquals(0.80, t.upperTail(critical) + t.lowerTail(-critical), 5e-7);
    }

    /** NIST/SEMATECH e-Handbook 7.2.2.2 (from memory): 8.567 by the normal, 10.6 by t with 8. */
    @Test
    void theHandbooksSampleSizesAreReproduced() {
        double normal = StudentT.upperQuantile(0.05, 1e9) + StudentT.upperQuantile(0.1, 1e9);
        assertEquals(8.567, normal * normal, 4e-3);
        double t = StudentT.upperQuantile(0.05, 8) + StudentT.upperQuantile(0.1, 8);
        assertEquals(10.6, t * t, 5.1e-2);
    }
}
