package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All that the reference says of trials within donnings within conditions: made-up sets and two
 * published ones. R 4.2.2 (stats), lme4 1.1.31 for restricted likelihood.
 */
class NestedAnswersTest {

    record Case(List<List<double[]>> conditions, Answers answers) {
        @Override
        public String toString() {
            return answers.toString();
        }

        /** Balanced: every donning has as many trials, every condition as many donnings. */
        boolean isBalanced() {
            return conditions.stream().mapToInt(List::size).distinct().count() == 1
                    && donnings().mapToInt(each -> each.length).distinct().count() == 1;
        }

        Stream<double[]> donnings() {
            return conditions.stream().flatMap(List::stream);
        }
    }

    static Stream<Case> everySet() {
        List<Case> cases = new ArrayList<>();
        JsonNode file = Reference.read("nested.json");
        JsonNode sets = file.get("nested");
        sets.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode set = sets.get(name);
                            for (String scale : List.of("raw", "log")) {
                                cases.add(
                                        new Case(
                                                conditions(set.get("data"), scale),
                                                new Answers(name + ", " + scale, set.get(scale))));
                            }
                        });
        JsonNode one = file.at("/one_condition/six_donnings_three_trials");
        cases.add(
                new Case(
                        List.of(trials(one.get("data"), x -> x)),
                        new Answers("one condition", one.get("raw"))));
        for (String set : List.of("dyestuff", "rail")) {
            JsonNode answers =
                    Reference.read("datasets.json")
                            .at("/datasets/" + set + "/nested_one_condition");
            cases.add(
                    new Case(
                            List.of(
                                    List.copyOf(
                                            Reference.groups("data/" + set + ".csv", 0, 1)
                                                    .values())),
                            new Answers(set, answers)));
        }
        return cases.stream();
    }

    private static List<List<double[]>> conditions(JsonNode data, String scale) {
        DoubleUnaryOperator of = scale.equals("log") ? Math::log : x -> x;
        return Reference.list(data).stream().map(each -> trials(each, of)).toList();
    }

    private static List<double[]> trials(JsonNode donnings, DoubleUnaryOperator of) {
        return Reference.list(donnings).stream()
                .map(each -> Arrays.stream(Reference.doubles(each)).map(of).toArray())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("everySet")
    void everyAnswerOfTheReferenceIsReached(Case set) {
        VarianceParts parts = VarianceParts.of(set.conditions());
        try (Answers answers = set.answers()) {
            // Those of the means are answers on two samples: TwoSampleAnswersTest.
            answers.given("scale", "t_on_donning_means");
            meanSquares(answers.part("anova"), set, parts);
            answers.assertClose("n0", parts.trialsPerDonning(), 1e-11);
            moments(answers.part("moment"), parts);
            likelihood(answers.part("reml"), set, parts);
            means(answers.part("donning_means"), set);
            for (JsonNode row : answers.take("best_trials_per_donning")) {
                best(new Answers("best trials", row), parts);
            }
        }
    }

    /** Sums of squares are mean squares times their degrees of freedom. */
    private static void meanSquares(Answers anova, Case set, VarianceParts parts) {
        Answers donnings = anova.part("donning_within_condition");
        donnings.assertClose("df", parts.donningDf(), 0);
        donnings.assertClose("ms", parts.donningMeanSquare(), 1e-11);
        donnings.assertClose("ss", parts.donningMeanSquare() * parts.donningDf(), 1e-11);
        Answers trials = anova.part("trial_within_donning");
        trials.assertClose("df", parts.trialDf(), 0);
        trials.assertClose("ms", parts.trial(), 1e-11);
        trials.assertClose("ss", parts.trial() * parts.trialDf(), 1e-11);
        conditions(anova.part("condition"), set, parts);
    }

    /**
     * The row of the conditions is no variance part: differences between conditions are what the
     * looks are for. It stands on the same sums.
     */
    private static void conditions(Answers row, Case set, VarianceParts parts) {
        double[] all = set.donnings().flatMapToDouble(Arrays::stream).toArray();
        double mean = Sample.mean(all);
        double squares = 0;
        for (List<double[]> condition : set.conditions()) {
            double[] own = condition.stream().flatMapToDouble(Arrays::stream).toArray();
            squares += own.length * Math.pow(Sample.mean(own) - mean, 2);
        }
        int df = set.conditions().size() - 1;
        row.assertClose("df", df, 0);
        double size = parts.donningMeanSquare();
        assertEquals(row.number("ss"), squares, 1e-10 * (size + squares));
        if (df == 0) {
            assertTrue(row.take("ms").isNull());
            return;
        }
        assertEquals(row.number("ms"), squares / df, 1e-10 * (size + squares));
        if (row.has("F_against_donnings")) {
            row.assertClose("F_against_donnings", squares / df / size, 1e-10);
        }
    }

    private static void moments(Answers moment, VarianceParts parts) {
        double size = moment.number("trial");
        moment.assertClose("trial", parts.trial(), 1e-11);
        assertEquals(moment.number("donning"), parts.donning(), 1e-11 * (1 + size));
        assertEquals(
                moment.number("donning_untruncated"),
                parts.donningUntruncated(),
                1e-11 * (1 + size));
        assertEquals(moment.number("icc"), parts.donningShare(), 1e-10);
        double f = parts.donningMeanSquare() / parts.trial();
        moment.assertClose("F_donning", f, 1e-10);
        // A tail of F as small as 1e-12 moves by its digits times the exponent.
        moment.assertClose(
                "p_donning", SpreadRatio.upperTail(f, parts.donningDf(), parts.trialDf()), 1e-8);
    }

    /**
     * Restricted likelihood is not what the program computes, but says the same where it can:
     * balanced sets have the same answer by both roads, up to five digits of lme4's optimum;
     * without a donning variance both mean squares are pooled. In unbalanced sets the moments come
     * near.
     */
    private static void likelihood(Answers reml, Case set, VarianceParts parts) {
        reml.given("note");
        double trial = reml.number("trial");
        double donning = reml.number("donning");
        if (donning == 0) {
            double squares =
                    parts.donningMeanSquare() * parts.donningDf() + parts.trial() * parts.trialDf();
            assertEquals(trial, squares / (parts.donningDf() + parts.trialDf()), 2e-5 * trial);
            assertEquals(0, parts.donning());
            return;
        }
        if (set.isBalanced()) {
            assertEquals(trial, parts.trial(), 2e-5 * trial);
            assertEquals(donning, parts.donning(), 2e-5 * donning);
        }
    }

    private static void means(Answers means, Case set) {
        List<String> names = means.left();
        double[] expected =
                names.stream()
                        .flatMapToDouble(name -> Arrays.stream(means.numbers(name)))
                        .sorted()
                        .toArray();
        double[] actual = set.donnings().mapToDouble(Sample::mean).sorted().toArray();
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], actual[i], 1e-11 * Math.abs(expected[i]));
        }
    }

    private static void best(Answers row, VarianceParts parts) {
        double cost = row.number("cost_donning_over_cost_trial");
        assertEquals(row.number("best_integer_1_to_50"), parts.bestTrials(cost, 1, 50));
        double best = Math.sqrt(cost * parts.trial() / parts.donning());
        if (row.take("n_opt").isNumber()) {
            row.assertClose("n_opt", best, 1e-9);
        } else {
            assertEquals(Double.POSITIVE_INFINITY, best);
        }
        row.close();
    }
}
