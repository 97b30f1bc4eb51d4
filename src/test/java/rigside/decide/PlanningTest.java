package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlanningTest {

    private static final int CAMPAIGNS = 20_000;

    static Stream<Named<JsonNode>> everySequentialRow() {
        return Reference.list(Reference.read("operating_characteristics.json").at("/main/0/rows"))
                .stream()
                .filter(row -> row.get("design").textValue().equals("sequential"))
                .map(
                        row ->
                                Named.of(
                                        "spread "
                                                + row.get("sd_log_ratio")
                                                + ", ratio "
                                                + row.get("true_ratio")
                                                + ", exponent "
                                                + row.get("rho"),
                                        row));
    }

    /** The file has 2e6 campaigns a row; the tolerance is four standard errors of those here. */
    @ParameterizedTest
    @MethodSource("everySequentialRow")
    void outcomesAreThoseOfTheReference(JsonNode row) {
        Rules rules = rules(row.get("rho").doubleValue(), Matters.EITHER);
        double truth = Math.log(row.get("true_ratio").doubleValue());
        double ofOneValue = row.get("sd_log_ratio").doubleValue() / Math.sqrt(2);
        Outlook outlook =
                Planning.outlook(rules, truth, ofOneValue, CAMPAIGNS, new SplittableRandom(5));
        double up = row.get("meaningful_increase").doubleValue();
        double down = row.get("meaningful_decrease").doubleValue();
        assertShare(up + down, outlook.meaningful());
        assertShare(row.get("no_meaningful_difference").doubleValue(), outlook.noMeaningful());
        assertShare(row.get("unsettled_at_max").doubleValue(), outlook.unsettled());
        assertShare(row.get("coverage_all_looks").doubleValue(), outlook.coverage());
        // Rounds run from 3 to 10: their standard deviation is at most 3.5.
        assertEquals(
                row.get("mean_rounds").doubleValue(),
                outlook.meanRounds(),
                4 * 3.5 / Math.sqrt(CAMPAIGNS));
        boolean beyond = truth > Math.log(1.1) + 1e-12;
        double wrong =
                beyond ? row.get("no_meaningful_difference").doubleValue() + down : up + down;
        assertShare(wrong, outlook.wrong());
    }

    @Test
    void whereOneDirectionMattersTheOtherIsNoWrongClaim() {
        Outlook outlook =
                Planning.outlook(
                        rules(2, Matters.DECREASE), 0.5, 0.05, 2000, new SplittableRandom(6));
        assertEquals(1, outlook.noMeaningful());
        assertEquals(0, outlook.wrong());
    }

    @Test
    void nineOfTenCampaignsDoNotExceedTheNinetiethRounds() {
        // An obvious difference ends at the first or second look.
        Outlook clear =
                Planning.outlook(rules(2, Matters.EITHER), 3, 0.01, 2000, new SplittableRandom(7));
        assertEquals(3, clear.ninetiethRounds());
        assertEquals(3, clear.meanRounds());
        // On the edge nearly nothing settles.
        Outlook edge =
                Planning.outlook(
                        rules(2, Matters.EITHER),
                        Math.log(1.1),
                        0.1,
                        2000,
                        new SplittableRandom(7));
        assertEquals(10, edge.ninetiethRounds());
    }

    @ParameterizedTest
    @CsvSource({"NaN, 1, 10", "0, 0, 10", "0, -1, 10", "0, NaN, 10", "0, Infinity, 10", "0, 1, 0"})
    void impossibleQuestionsAreRefused(double truth, double spread, int campaigns) {
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        Planning.outlook(
                                rules(2, Matters.EITHER),
                                truth,
                                spread,
                                campaigns,
                                new SplittableRandom(8)));
    }

    @Test
    void theChanceToSettleIsThatOfTheOutlook() {
        Rules rules = rules(2, Matters.EITHER);
        Outlook outlook = Planning.outlook(rules, 0.02, 0.05, 4000, new SplittableRandom(9));
        double settles = Planning.settles(rules, 0.02, 0.05, 4000, new SplittableRandom(10));
        // Two independent shares of 4000, four standard errors.
        assertEquals(1 - outlook.unsettled(), settles, 4 * Math.sqrt(2 * 0.25 / 4000));
    }

    @ParameterizedTest
    @CsvSource({"3, 50, 3", "3, 50, 4", "3, 50, 14", "3, 50, 49", "3, 50, 50", "5, 5, 5"})
    void theFewestIsFound(int shortest, int longest, int enough) {
        assertEquals(
                OptionalInt.of(enough),
                Planning.fewestOf(shortest, longest, rounds -> rounds >= enough));
    }

    @Test
    void whereNothingIsEnoughNothingIsNamed() {
        assertEquals(OptionalInt.empty(), Planning.fewestOf(3, 50, rounds -> false));
        assertThrows(
                IllegalArgumentException.class, () -> Planning.fewestOf(51, 50, rounds -> true));
    }

    private static Rules rules(double exponent, Matters matters) {
        return new Rules(
                Schedule.paired(3, 10), 0.05, exponent, Bands.symmetric(Math.log(1.1)), matters, 0);
    }

    private static void assertShare(double expected, double actual) {
        double error = Math.sqrt(Math.max(expected * (1 - expected), 1e-4) / CAMPAIGNS);
        assertEquals(expected, actual, 4 * error);
    }
}
