package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All that the reference says of two samples: t tests, pooled or not, F, equivalence, on the values
 * and on their logarithms; of made-up sets, of published ones, and of means of donnings. R 4.2.2
 * (stats), by the scripts named in the files. One look with the whole alpha is the classical test.
 */
class TwoSampleAnswersTest {

    /** Two samples and what is said of them. */
    static final class Case {
        private final double[] a;
        private final double[] b;
        private final Answers answers;

        Case(double[] a, double[] b, Answers answers) {
            this.a = a;
            this.b = b;
            this.answers = answers;
        }

        @Override
        public String toString() {
            return answers.toString();
        }
    }

    static Stream<Case> everySet() {
        List<Case> cases = new ArrayList<>();
        JsonNode made = Reference.read("classical.json").at("/data_tests/sets");
        made.fieldNames()
                .forEachRemaining(
                        name ->
                                cases.add(
                                        new Case(
                                                Reference.doubles(made.get(name).get("A")),
                                                Reference.doubles(made.get(name).get("B")),
                                                new Answers(name, made.get(name))
                                                        .given("A", "B", "paired_design"))));
        published(cases);
        donningMeans(cases);
        rounds(cases);
        return cases.stream();
    }

    private static void published(List<Case> cases) {
        JsonNode sets = Reference.read("datasets.json").get("datasets");
        for (String way : List.of("paired", "as_if_independent")) {
            add(cases, sets, "sleep", way, column("sleep", 1), column("sleep", 2));
            add(cases, sets, "shoes", way, column("shoes", 1), column("shoes", 2));
        }
        add(cases, sets, "immer", "Y2_minus_Y1", column("immer", 2), column("immer", 3));
        double[] ctrl = Reference.column("plant_growth", 1, row -> row[0].equals("ctrl"));
        for (String group : List.of("trt1", "trt2")) {
            double[] treated = Reference.column("plant_growth", 1, row -> row[0].equals(group));
            add(cases, sets, "plant_growth", group + "_vs_ctrl", ctrl, treated);
        }
        add(cases, sets, "tooth_growth", "VC_vs_OJ_all", tooth("OJ", ""), tooth("VC", ""));
        for (String dose : List.of("0.5", "1", "2")) {
            add(cases, sets, "tooth_growth", "dose_" + dose, tooth("OJ", dose), tooth("VC", dose));
        }
    }

    private static void add(
            List<Case> cases, JsonNode sets, String set, String way, double[] a, double[] b) {
        cases.add(
                new Case(
                        a,
                        b,
                        new Answers(set + ", " + way, sets.get(set).get(way))
                                .given("A_is", "B_is")));
    }

    private static double[] tooth(String supplement, String dose) {
        return Reference.column(
                "tooth_growth",
                2,
                row -> row[0].equals(supplement) && (dose.isEmpty() || row[1].equals(dose)));
    }

    private static double[] column(String set, int column) {
        return Reference.column(set, column, row -> true);
    }

    private static void donningMeans(List<Case> cases) {
        JsonNode nested = Reference.read("nested.json").get("nested");
        nested.fieldNames()
                .forEachRemaining(
                        name -> {
                            List<JsonNode> conditions =
                                    Reference.list(nested.get(name).get("data"));
                            for (String scale : List.of("raw", "log")) {
                                DoubleUnaryOperator of = scale.equals("log") ? Math::log : x -> x;
                                JsonNode answers =
                                        nested.get(name).get(scale).path("t_on_donning_means");
                                if (!answers.isMissingNode()) {
                                    cases.add(
                                            new Case(
                                                    means(conditions.get(0), of),
                                                    means(conditions.get(1), of),
                                                    new Answers(
                                                            name + ", donning means, " + scale,
                                                            answers)));
                                }
                            }
                        });
    }

    private static double[] means(JsonNode donnings, DoubleUnaryOperator of) {
        return Reference.list(donnings).stream().mapToDouble(trials -> mean(trials, of)).toArray();
    }

    private static double mean(JsonNode trials, DoubleUnaryOperator of) {
        return Sample.mean(Arrays.stream(Reference.doubles(trials)).map(of).toArray());
    }

    private static void rounds(List<Case> cases) {
        JsonNode sets = Reference.read("nested.json").get("paired_rounds");
        sets.fieldNames()
                .forEachRemaining(
                        name -> {
                            List<List<JsonNode>> rounds =
                                    Reference.list(sets.get(name).get("data")).stream()
                                            .map(Reference::list)
                                            .toList();
                            cases.add(
                                    new Case(
                                            of(rounds, 0, x -> x),
                                            of(rounds, 1, x -> x),
                                            new Answers(name, sets.get(name).get("answers"))));
                            cases.add(
                                    new Case(
                                            of(rounds, 0, Math::log),
                                            of(rounds, 1, Math::log),
                                            new Answers(
                                                    name + ", geometric",
                                                    sets.get(name).get("answers"))));
                        });
    }

    private static double[] of(List<List<JsonNode>> rounds, int place, DoubleUnaryOperator of) {
        return rounds.stream().mapToDouble(both -> mean(both.get(place), of)).toArray();
    }

    @ParameterizedTest
    @MethodSource("everySet")
    void everyAnswerOfTheReferenceIsReached(Case set) {
        try (Answers answers = set.answers) {
            answer(answers, set.a, set.b);
        }
    }

    private static void answer(Answers answers, double[] a, double[] b) {
        for (String field : answers.left()) {
            if (field.startsWith("tost_")) {
                equivalence(field, answers.part(field), log(a), log(b));
            } else {
                switch (field) {
                    case "paired" -> paired(answers.part(field), a, b);
                    case "paired_log" -> paired(answers.part(field), log(a), log(b));
                    case "pooled", "welch" -> test(answers.part(field), of(field, 0.05, a, b));
                    case "variance_ratio_F" -> spreads(answers.part(field), a, b);
                    case "two_sample" -> answer(answers.part(field), a, b);
                    case "two_sample_log", "log" -> answer(answers.part(field), log(a), log(b));
                    case "ratio_ci" -> ratioLimits(answers, of("paired", 0.05, log(a), log(b)));
                    case "round_means" -> roundMeans(answers, a, b);
                    // One case has the means, the other their logarithms.
                    case "paired_t_on_arithmetic_means" -> onRounds(answers, field, false, a, b);
                    case "paired_t_on_log_geometric_means" -> onRounds(answers, field, true, a, b);
                    default -> fail("no check for " + field);
                }
            }
        }
    }

    /** Published sets have one more level of this name. */
    private static void paired(Answers answers, double[] a, double[] b) {
        if (answers.has("paired")) {
            answer(answers, a, b);
            return;
        }
        Interval interval = of("paired", 0.05, a, b);
        if (answers.has("ratio_ci")) {
            ratioLimits(answers, interval);
        }
        test(answers, interval);
    }

    private static void test(Answers answers, Interval interval) {
        TTest test =
                new TTest(
                        interval.estimate(), interval.standardError(), interval.degreesOfFreedom());
        answers.assertClose("estimate", test.estimate());
        answers.assertClose("standard_error", test.standardError());
        answers.assertClose("t", test.t());
        answers.assertClose("df", test.degreesOfFreedom());
        answers.assertClose("p_two_sided", test.p());
        answers.assertLimits("ci", interval.lower(), interval.upper(), test.standardError());
        assertEquals(0.95, answers.number("confidence"));
    }

    /** The ratio, and limits for it, from those of the logarithms. */
    private static void ratioLimits(Answers answers, Interval logs) {
        answers.assertLimits("ratio_ci", Math.exp(logs.lower()), Math.exp(logs.upper()), 1);
    }

    private static void roundMeans(Answers answers, double[] a, double[] b) {
        if (answers.toString().endsWith("geometric")) {
            answers.given("round_means");
            return;
        }
        List<JsonNode> means = Reference.list(answers.take("round_means"));
        for (int i = 0; i < a.length; i++) {
            assertEquals(means.get(i).get(0).doubleValue(), a[i], Answers.DIGITS * a[i]);
            assertEquals(means.get(i).get(1).doubleValue(), b[i], Answers.DIGITS * b[i]);
        }
    }

    private static void onRounds(
            Answers answers, String field, boolean geometric, double[] a, double[] b) {
        if (geometric != answers.toString().endsWith("geometric")) {
            answers.given(field);
            return;
        }
        Answers part = answers.part(field);
        Interval interval = of("paired", 0.05, a, b);
        if (geometric) {
            part.assertClose("ratio", Math.exp(interval.estimate()));
            ratioLimits(part, interval);
        }
        test(part, interval);
    }

    /** F, its tail, and limits for the ratio of the variances: where F over them has each tail. */
    private static void spreads(Answers answers, double[] a, double[] b) {
        SpreadRatio ratio = SpreadRatioTest.ratio(a, b);
        answers.assertClose("F", ratio.f());
        answers.assertClose("df1", ratio.otherDf());
        answers.assertClose("df2", ratio.referenceDf());
        answers.assertClose("p_two_sided", ratio.p());
        double[] limits = answers.numbers("ci95");
        double df1 = ratio.otherDf();
        double df2 = ratio.referenceDf();
        double low = SpreadRatio.upperTail(ratio.f() / limits[0], df1, df2);
        double high = SpreadRatio.upperTail(ratio.f() / limits[1], df1, df2);
        assertEquals(0.025, low, 0.025 * Answers.DIGITS);
        assertEquals(0.975, high, 0.025 * Answers.DIGITS);
    }

    /** Two one-sided tests at 5 % each are one look with the 90 % interval inside the band. */
    private static void equivalence(String name, Answers answers, double[] a, double[] b) {
        String[] words = name.split("_", -1);
        String kind = words.length == 4 ? words[2] : "paired";
        double alpha = answers.number("alpha");
        double margin = answers.number("margin");
        assertEquals(
                Math.log(Double.parseDouble(words[words.length - 1])),
                margin,
                Answers.DIGITS * margin);
        Interval interval = of(kind, 2 * alpha, a, b);
        double se = interval.standardError();
        double df = interval.degreesOfFreedom();
        double over = (interval.estimate() + margin) / se;
        double under = (interval.estimate() - margin) / se;
        double pOver = StudentT.upperTail(over, df);
        double pUnder = StudentT.upperTail(-under, df);
        answers.assertClose("t_lower", over);
        answers.assertClose("t_upper", under);
        answers.assertClose("p_lower", pOver);
        answers.assertClose("p_upper", pUnder);
        answers.assertClose("p_tost", Math.max(pOver, pUnder));
        answers.assertLimits("ci_1_minus_2alpha", interval.lower(), interval.upper(), se);
        assertEquals(
                answers.take("equivalent").booleanValue(),
                Verdicts.of(interval, Bands.symmetric(margin), Matters.EITHER)
                        == Verdict.NO_MEANINGFUL_DIFFERENCE);
    }

    private static Interval of(String kind, double alpha, double[] a, double[] b) {
        if (kind.equals("welch")) {
            return Welch.interval(a, b, alpha);
        }
        boolean paired = kind.equals("paired");
        Schedule schedule =
                paired
                        ? Schedule.paired(a.length, a.length)
                        : Schedule.independent(List.of(new Schedule.Arms(a.length, b.length)));
        Rules rules = new Rules(schedule, alpha, 2, Bands.symmetric(1), Matters.EITHER, 0);
        double[] d = new double[a.length];
        Arrays.setAll(d, i -> paired ? b[i] - a[i] : 0);
        Finding finding =
                paired ? Sequential.paired(rules, d) : Sequential.independent(rules, a, b);
        return finding.interval().orElseThrow();
    }

    private static double[] log(double[] values) {
        return Arrays.stream(values).map(Math::log).toArray();
    }
}
