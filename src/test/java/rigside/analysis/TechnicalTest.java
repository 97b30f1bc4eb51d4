package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.analysis.Tables.values;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Tables.Terms;

class TechnicalTest {

    /**
     * Means and standard errors by NumPy 2.4 (mean and std with ddof 1 of the logarithms or
     * numbers); 5.278 and 4.39 are critical values of the reference files for 3 to 10, rho 2.
     */
    static Stream<Arguments> everyDesign() {
        double[] plain = {12.1, 11.4, 12.8, 12.0, 11.9};
        double[] disc = {14.6, 13.5, 15.2, 14.7, 13.8};
        return Stream.of(
                Arguments.of(
                        "pairs",
                        Terms.PAIRED.of(plain, disc),
                        "Paired log ratios, n = 5: mean 0.17596, standard error 0.00924 (4 "
                                + "degrees of freedom), repeated 95 % confidence interval 0.12720 to "
                                + "0.22473 with c = 5.28 (look 3 of 8)."),
                Arguments.of(
                        "pairs of differences, too few",
                        Terms.PAIRED.difference("1").of(values(3, -1), values(7, 4)),
                        "Paired differences, n = 2: mean 4.50; no interval before the first look at"
                                + " n = 3."),
                Arguments.of(
                        "independent",
                        Terms.PAIRED.independent().of(plain, values(14.6, 13.5, 15.2, 14.7)),
                        "Independent log values, n = 4 against 4 of the reference: difference "
                                + "of means 0.1829, pooled standard error 0.0345 (6 degrees of freedom), "
                                + "repeated 95 % confidence interval 0.0314 to 0.3344 with c = 4.39 (look"
                                + " 2 of 8)."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyDesign")
    void aStatisticianCanPutTheNumbersTogetherAgain(
            String design, Comparison comparison, String technical) {
        assertEquals(technical, comparison.words().technical());
    }

    @Test
    void sharedErrorIsNamed() {
        String three =
                """
                1,plain,10
                1,disc,12.5
                1,felt,10.1
                2,plain,11
                2,disc,13.2
                2,felt,11.3
                3,plain,10.5
                3,disc,12.9
                3,felt,10.4
                """;
        assertEquals(
                "Paired log ratios, n = 3: mean 0.2038, standard error 0.0118 (2 "
                        + "degrees of freedom), repeated 97.5 % confidence interval (95 % for "
                        + "both comparisons together) -0.0452 to 0.4528 with c = 21.0 (look 1 of 8).",
                Terms.PAIRED.of(three).comparisons().get(0).words().technical());
    }

    @Test
    void theUnitAndTheTrialsOfASessionAreNamed() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                "fewest: 3\n  most: 9\n  design: independent\n  replicates: trials"));
        bench.start(1, "bare").exercises(20).trials(5, 5.2).effort(300).complete();
        bench.start(1, "disc").exercises(20).trials(6, 6.3).effort(320).complete().look();
        bench.start(2, "bare").exercises(20).trials(5.1, 4.9).effort(310).complete();
        bench.start(2, "disc").exercises(20).trial(0, 6.1).effort(325).complete().look();
        assertEquals(
                "Independent log values, one a trial, n = 3 against 4 of the reference:"
                        + " difference of means 0.1944, pooled standard error 0.0193 (5 degrees "
                        + "of freedom), repeated 95 % confidence interval 0.1209 to 0.2679 with c"
                        + " = 3.81 (look 1 of 3).",
                bench.comparison("inhalation").words().technical());
        assertEquals(
                "Independent values in Pa, n = 2 against 2 of the reference: difference"
                        + " of means 17.5; no interval before the first look at n = 3 against 3 "
                        + "of the reference.",
                bench.comparison("effort").words().technical());
    }
}
