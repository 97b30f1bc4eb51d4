package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * NIST Statistical Reference Datasets: certified values, and how many of their digits are reached
 * (log relative error). Their lag-one autocorrelation is nothing the program asks for.
 */
class CertifiedTest {

    /**
     * NumAcc3's own values lose six digits when read as doubles (1000000.1 and its like), so no
     * program working in doubles reaches ten there.
     */
    @ParameterizedTest(name = "{0}: mean to {1} digits, sd to {2}")
    @CsvSource({
        "Lew, 15, 14.5",
        "Lottery, 14.5, 14.5",
        "Mavro, 15, 12.8",
        "NumAcc1, 15, 15",
        "NumAcc2, 14, 14",
        "NumAcc3, 15, 9.4",
        "PiDigits, 14.5, 14.5"
    })
    void meansAndSpreadsAreReached(String dataset, double meanDigits, double sdDigits) {
        String[] certified = certified("univariate", dataset);
        Summary summary =
                Summary.of(
                        Reference.csv("nist/" + dataset + ".csv").stream()
                                .mapToDouble(row -> Double.parseDouble(row[0]))
                                .toArray());
        assertEquals(Integer.parseInt(certified[1]), summary.n());
        assertDigits(certified[2], summary.mean(), meanDigits);
        assertDigits(certified[3], summary.sd(), sdDigits);
    }

    /**
     * One condition, the groups as donnings. SmLs04 and 05 have seven constant leading digits,
     * SmLs08 thirteen: from their values as doubles exact arithmetic gives 10.05, 9.94 and 3.92
     * digits, and here as many are reached.
     */
    @ParameterizedTest(name = "{0} to {1} digits")
    @CsvSource({
        "SiRstv, 12.5",
        "SmLs01, 14",
        "SmLs02, 13.5",
        "SmLs04, 10",
        "SmLs05, 9.9",
        "SmLs08, 3.9"
    })
    void theNestedAnalysisReachesCertifiedVariances(String dataset, double digits) {
        VarianceParts parts =
                VarianceParts.of(
                        List.of(
                                List.copyOf(
                                        Reference.groups("nist/" + dataset + ".csv", 0, 1)
                                                .values())));
        String[] certified = certified("anova", dataset);
        double between = parts.donningMeanSquare() * parts.donningDf();
        double within = parts.trial() * parts.trialDf();
        assertEquals(Integer.parseInt(certified[1]), parts.donningDf() + 1);
        assertEquals(Double.parseDouble(certified[2]), parts.trialsPerDonning(), 1e-12);
        assertEquals(Double.parseDouble(certified[3]), parts.donningDf());
        assertEquals(Double.parseDouble(certified[7]), parts.trialDf());
        assertDigits(certified[4], between, digits);
        assertDigits(certified[5], parts.donningMeanSquare(), digits);
        assertDigits(certified[6], parts.donningMeanSquare() / parts.trial(), digits);
        assertDigits(certified[8], within, digits);
        assertDigits(certified[9], parts.trial(), digits);
        assertDigits(certified[10], between / (between + within), digits);
        assertDigits(certified[11], Math.sqrt(parts.trial()), digits);
        // Not certified: from the mean squares beside it.
        assertDigits(certified[12], parts.donning(), Math.min(digits, 6));
    }

    private static String[] certified(String kind, String dataset) {
        return Reference.csv("nist/certified-" + kind + ".csv").stream()
                .filter(row -> row[0].equals(dataset))
                .findFirst()
                .orElseThrow();
    }

    private static void assertDigits(String certified, double actual, double digits) {
        double value = Double.parseDouble(certified);
        double error = Math.abs(actual - value) / Math.abs(value);
        double reached = error == 0 ? 16 : -Math.log10(error);
        assertTrue(reached >= digits, certified + " but " + actual + ": " + reached + " digits");
    }
}
