package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What plans and fixed numbers of rounds bring: NumPy 1.24.2, 2e6 paths a row of
 * operating_characteristics.json and 4e5 a figure of rho_choice.json. Here a small share of that,
 * from raw values through the whole of {@link Sequential} or by campaigns; fixed numbers exactly.
 */
class OperatingCharacteristicsTest {

    private static final int CAMPAIGNS = 4000;
    private static final double BAND = Math.log(1.1);

    static Stream<Answers> everyRow() {
        List<Answers> rows = new ArrayList<>();
        for (JsonNode plan : Reference.read("operating_characteristics.json").get("main")) {
            for (JsonNode row : plan.get("rows")) {
                rows.add(
                        new Answers(
                                row.get("design").textValue()
                                        + ", exponent "
                                        + row.path("rho")
                                        + ", spread "
                                        + row.get("sd_log_ratio")
                                        + ", ratio "
                                        + row.get("true_ratio"),
                                row));
            }
        }
        return rows.stream();
    }

    /** Counts of one row, by Sequential. */
    private static final class Played {
        private int increases;
        private int decreases;
        private int none;
        private int unsettled;
        private int offZero;
        private int rounds;
        private int covered;
        private int coveredToTheStop;
        private int coveredAtTheStop;

        void add(Course course, double truth) {
            Finding stop = course.settling().orElse(course.latest());
            rounds += stop.n();
            increases += stop.conclusion().equals(conclusion(1)) ? 1 : 0;
            decreases += stop.conclusion().equals(conclusion(-1)) ? 1 : 0;
            none += stop.verdict() == Verdict.NO_MEANINGFUL_DIFFERENCE ? 1 : 0;
            unsettled += stop.verdict().settled() ? 0 : 1;
            offZero += stop.verdict() == Verdict.DIFFERENCE_SIZE_UNSETTLED ? 1 : 0;
            boolean all = course.looks().stream().allMatch(look -> holds(look, truth));
            boolean upToStop =
                    course.looks().stream()
                            .filter(look -> look.n() <= stop.n())
                            .allMatch(look -> holds(look, truth));
            covered += all ? 1 : 0;
            coveredToTheStop += upToStop ? 1 : 0;
            coveredAtTheStop += holds(stop, truth) ? 1 : 0;
        }

        private static Conclusion conclusion(int direction) {
            return new Conclusion(Verdict.MEANINGFUL_DIFFERENCE, direction);
        }

        private static boolean holds(Finding look, double truth) {
            Interval interval = look.interval().orElseThrow();
            return truth >= interval.lower() && truth <= interval.upper();
        }
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void everyFigureOfTheReferenceIsReached(Answers row) {
        boolean fixed = row.take("design").textValue().equals("fixed_n");
        double exponent = fixed ? 2 : row.number("rho");
        double truth = Math.log(row.number("true_ratio"));
        double spread = row.number("sd_log_ratio");
        Rules rules = rules(fixed ? 10 : 3, 10, exponent);
        SplittableRandom random = new SplittableRandom(31);
        Played played = new Played();
        for (int i = 0; i < CAMPAIGNS; i++) {
            double[] d = new double[10];
            for (int round = 0; round < 10; round++) {
                d[round] = truth + spread * random.nextGaussian();
            }
            played.add(Sequential.pairedCourse(rules, d), truth);
        }
        try (row) {
            assertShare(row, "meaningful_increase", played.increases);
            assertShare(row, "meaningful_decrease", played.decreases);
            assertShare(row, "no_meaningful_difference", played.none);
            assertShare(row, "unsettled_at_max", played.unsettled);
            assertShare(row, "unsettled_but_interval_excludes_zero", played.offZero);
            assertShare(row, "coverage_all_looks", played.covered);
            assertShare(row, "coverage_looks_until_stop", played.coveredToTheStop);
            assertShare(row, "coverage_of_interval_at_stop", played.coveredAtTheStop);
            // Rounds run from 3 to 10: their standard deviation is at most 3.5.
            assertEquals(
                    row.number("mean_rounds"),
                    (double) played.rounds / CAMPAIGNS,
                    4 * 3.5 / Math.sqrt(CAMPAIGNS));
            if (fixed) {
                FixedDesign exact = FixedDesign.of(rules, truth, spread / Math.sqrt(2));
                double meaningful =
                        row.number("meaningful_increase") + row.number("meaningful_decrease");
                // Four standard errors of 2e6 paths.
                assertExact(meaningful, exact.meaningful(), 2e6);
                assertExact(row.number("no_meaningful_difference"), exact.noMeaningful(), 2e6);
                assertExact(row.number("unsettled_at_max"), 1 - exact.settles(), 2e6);
            }
        }
    }

    /** Five standard errors, since there are 540 shares. */
    private static void assertShare(Answers row, String field, int count) {
        double expected = row.number(field);
        double error = Math.sqrt(Math.max(expected * (1 - expected), 2e-4) / CAMPAIGNS);
        assertEquals(expected, (double) count / CAMPAIGNS, 5 * error, row + ", " + field);
    }

    private static void assertExact(double simulated, double exact, double paths) {
        double error = Math.sqrt(Math.max(exact * (1 - exact), 1e-6) / paths);
        assertEquals(exact, simulated, 4 * error + 5.1e-6);
    }

    static Stream<Answers> everyRowOfTheChoiceOfExponent() {
        return Reference.list(Reference.read("rho_choice.json").get("rows")).stream()
                .map(
                        row ->
                                new Answers(
                                        row.get("n_min")
                                                + " to "
                                                + row.get("n_max")
                                                + ", "
                                                + row.get("design").textValue()
                                                + " "
                                                + row.get("rho"),
                                        row));
    }

    /**
     * The study behind the default exponent; its figures have three digits. Five standard errors,
     * since there are 1680 comparisons.
     */
    @ParameterizedTest
    @MethodSource("everyRowOfTheChoiceOfExponent")
    void plansSettleAsInTheStudyOfTheExponent(Answers row) {
        int fewest = row.take("n_min").intValue();
        int most = row.take("n_max").intValue();
        boolean fixed = row.take("design").textValue().equals("fixed_n");
        JsonNode exponent = row.take("rho");
        JsonNode settled = row.take("settled");
        JsonNode rounds = row.take("mean_rounds");
        Rules rules = fixed ? rules(most, most, 2) : rules(fewest, most, exponent.doubleValue());
        double allSettled = 0;
        double allRounds = 0;
        for (String sd : List.of("0.03", "0.05", "0.10", "0.15")) {
            for (String ratio : List.of("1.00", "1.05", "1.15", "1.20", "1.35")) {
                String place = "/sd " + sd + "/ratio " + ratio;
                double truth = Math.log(Double.parseDouble(ratio));
                double spread = Double.parseDouble(sd) / Math.sqrt(2);
                double share = settled.at(place).doubleValue();
                allSettled += share / 20;
                allRounds += rounds.at(place).doubleValue() / 20;
                if (fixed) {
                    double exact = FixedDesign.of(rules, truth, spread).settles();
                    double error = Math.sqrt(Math.max(exact * (1 - exact), 1e-6) / 4e5);
                    assertEquals(exact, share, 5 * error + 5.1e-4, place);
                    assertEquals(most, rounds.at(place).doubleValue());
                    continue;
                }
                Outlook outlook =
                        Planning.outlook(rules, truth, spread, CAMPAIGNS, new SplittableRandom(43));
                double error = Math.sqrt(Math.max(share * (1 - share), 1e-4) / CAMPAIGNS);
                assertEquals(share, 1 - outlook.unsettled(), 5 * error + 5.1e-4, place);
                assertEquals(
                        rounds.at(place).doubleValue(),
                        outlook.meanRounds(),
                        5 * (most - fewest) / 2.0 / Math.sqrt(CAMPAIGNS) + 5.1e-3,
                        place);
            }
        }
        // Averages over the scenarios just checked, each rounded before.
        assertEquals(row.number("average_settled"), allSettled, 1.1e-3);
        assertEquals(row.number("average_rounds"), allRounds, 1.1e-2);
        row.close();
    }

    private static Rules rules(int fewest, int most, double exponent) {
        return new Rules(
                Schedule.paired(fewest, most),
                0.05,
                exponent,
                Bands.symmetric(BAND),
                Matters.EITHER,
                0);
    }
}
