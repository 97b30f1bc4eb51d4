package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MethodTest {

    private static List<String> method(Bench bench, String measure) {
        return bench.measure(measure).method();
    }

    private static void assertSaid(String sentence, Bench bench, String measure) {
        assertTrue(method(bench, measure).contains(sentence), method(bench, measure).toString());
    }

    @Test
    void theIntervalIsExplainedWithItsSources() {
        List<String> method = method(Bench.plain().round(1, 5, 5.5), "inhalation");
        assertEquals(
                List.of(
                        "Value of a donning: the geometric mean of the times of its inhalations.",
                        "Design: each round gives one difference, condition less reference, on the"
                                + " scale of natural logarithms, so that differences are ratios; the"
                                + " interval is that of their mean, after 3 to 10 complete rounds.",
                        "Interval: estimate plus or minus c standard errors, a repeated confidence"
                                + " interval (Jennison and Turnbull 1989).",
                        "c is larger than for a single look, so that in 95 % of all such plans every"
                                + " interval from first to last holds the true change: one may look"
                                + " after every round and stop at any.",
                        "The error is spent as the share of the plan that is done to the power 2"
                                + " (Kim and DeMets 1987); what has accrued by the first look is"
                                + " spent there.",
                        "c is calculated for Student's t with these few degrees of freedom, not"
                                + " borrowed from the normal distribution.",
                        "The error of 5 % is for this comparison alone.",
                        "No ordinary p is given: it holds for one look only, and here one looks"
                                + " often.",
                        "Too small to matter: from 0.909 to 1.10, declared beforehand. Wholly beyond"
                                + " it the interval shows a meaningful difference, wholly inside it"
                                + " no meaningful difference."),
                method.subList(0, 9));
    }

    @Test
    void thePlanOfTheProtocolIsTheOneExplained() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                "fewest: 4\n  most: 12\n  design: independent\n  confidence: 90 %\n"
                                        + "  exponent: 1.5",
                                "meaningful: 25 Pa",
                                "meaningful: 25 Pa\n    matters: increase"));
        assertSaid(
                "Design: each donning is a value of its own, compared as differences in Pa; two"
                        + " samples with pooled spread, from 4 to 12 values per condition.",
                bench,
                "effort");
        assertSaid(
                "The error is spent as the share of the plan that is done to the power 1.5 (Kim and"
                        + " DeMets 1987); what has accrued by the first look is spent there.",
                bench,
                "effort");
        assertSaid(
                "Only an increase matters: above 25.0 Pa the interval shows one, below 25.0 Pa none."
                        + " The c of both directions is kept, so each wrong claim has at most 5 %.",
                bench, "effort");
        assertSaid("Value of a donning: the number typed.", bench, "effort");
    }

    @Test
    void sharedErrorIsSaid() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "measures:\n",
                                """
                                  - id: felt
                                    title: the mask with felt
                                    specimen: {piece: mask 1 and felt 1, worn-before: 0}
                                    particle-reading: seal-only
                                measures:
                                """));
        assertSaid(
                "The error of 5 % is shared equally by both comparisons (Bonferroni), 2.5 % each.",
                bench, "inhalation");
    }

    @Test
    void whatIsOutOfTheOrdinaryIsSaidWhereItOccurs() {
        Bench plain = Bench.plain().round(1, 5, 5.6).round(2, 5.1, 5.5).round(3, 5, 5.9);
        for (String word : List.of("detection limit", "struck out", "rounding")) {
            assertFalse(Bench.says(method(plain, "inhalation"), word), word);
        }
        assertTrue(Bench.says(method(plain, "fit"), "rounding"), "equal fit factors");
        Bench struck = plain.replaced(6, 0, 5.7).look();
        assertTrue(Bench.says(method(struck, "inhalation"), "analysed both ways"));
        assertFalse(Bench.says(method(struck, "effort"), "analysed both ways"));
        Bench bounded = Bench.plain().start(1, "bare").exercises(1, 8).complete();
        assertTrue(Bench.says(method(bounded, "fit"), "at half that penetration"));
    }

    @Test
    void aMeasureThatIsOnlyRecordedTellsHowItsValueIsMade() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "    compare: difference\n    meaningful: 25 Pa\n    decides: no\n",
                                ""));
        assertEquals(List.of("Value of a donning: the number typed."), method(bench, "effort"));
        assertEquals(List.of(), bench.measure("effort").flags());
    }
}
