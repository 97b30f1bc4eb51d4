package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class KindOfRepeatTest {

    private static final String COSTS = "most: 10\n  donning-takes: 10 min\n  trial-takes: 20 s";

    /** Unbalanced: the second trial of the second round was not captured once. */
    private static Bench bothKinds(String most) {
        Bench bench = Bench.with(Map.of("most: 10", most));
        bench.start(1, "bare").exercises(20).trials(5.0, 5.3).complete();
        bench.start(1, "disc").exercises(20).trials(6.0, 6.5).complete();
        bench.start(2, "bare").exercises(20).trial(0, 5.6).complete();
        bench.start(2, "disc").exercises(20).trials(6.1, 6.4).complete();
        bench.start(3, "bare").exercises(20).trials(5.2, 5.1).complete();
        return bench.start(3, "disc").exercises(20).trials(6.6, 6.3).complete();
    }

    private static void assertSaid(String words, Bench bench) {
        List<String> remarks = bench.comparison("inhalation").remarks();
        assertTrue(remarks.contains(words), remarks.toString());
    }

    private static String components(Bench bench) {
        return bench.measure("inhalation").method().stream()
                .filter(each -> each.startsWith("One inhalation"))
                .findFirst()
                .orElse("");
    }

    /**
     * NumPy 2.4.6 on the logarithms: within 0.00146482 on 5, mean of 1 / k 0.583333, half the
     * variance of the differences 0.00177552, so a share of 0.481; the best number is the least of
     * (between + within / k) (cost of a donning + k cost of a trial).
     */
    @Test
    void unevenDonningsAreShared() {
        assertSaid(
                "About 48 % of the spread comes from the inhalations within a donning, the rest from"
                        + " putting the mask on: more of either helps; if a donning takes as long as"
                        + " ten inhalations, 4 trials a donning would tell most (now 1.8).",
                bothKinds("most: 10"));
        assertSaid(
                "About 48 % of the spread comes from the inhalations within a donning, the rest from"
                        + " putting the mask on: more of either helps; for the time they take, 7"
                        + " trials a donning would tell most (now 1.8).",
                bothKinds(COSTS));
    }

    @Test
    void donningsThatDifferMakeMoreInhalationsUseless() {
        assertSaid(
                "More inhalations in this donning will not help: they explain only about 0 % of the"
                        + " spread. Take the mask off and put it on again.",
                Bench.plain().round(1, 5, 5.5).round(2, 6, 5.9).round(3, 5.2, 6.2));
        assertSaid(
                "More inhalations in this donning will not help: they explain only about 0 % of the"
                        + " spread. Take the mask off and put it on again; for the time they take, 1"
                        + " trial a donning would tell most (now 2).",
                Bench.with(Map.of("most: 10", COSTS))
                        .round(1, 5, 5.5)
                        .round(2, 6, 5.9)
                        .round(3, 5.2, 6.2));
    }

    private static Bench noDonnings() {
        Bench bench = Bench.plain();
        double[][] bare = {{5, 6.1}, {6, 5}, {5.1, 6}};
        double[][] disc = {{6, 7.4}, {6.9, 5.4}, {6.2, 7.9}};
        for (int at = 0; at < 3; at++) {
            bench.start(at + 1, "bare").exercises(20).trials(bare[at][0], bare[at][1]).complete();
            bench.start(at + 1, "disc").exercises(20).trials(disc[at][0], disc[at][1]).complete();
        }
        return bench;
    }

    @Test
    void donningsThatDoNotDifferAreSaidToAddNothing() {
        assertSaid(
                "The inhalations within a donning explain all of the spread, and putting the mask on"
                        + " adds none that can be seen: a plan with more of them in each donning"
                        + " would settle sooner; if a donning takes as long as ten inhalations, as"
                        + " many trials a donning as do not tire, up to 10, would tell most (now"
                        + " 2).",
                noDonnings());
    }

    @Test
    void valuesThatDoNotSpreadGiveNoAdvice() {
        Bench bench = Bench.plain().round(1, 5, 6).round(2, 5, 6).round(3, 5, 6);
        assertTrue(
                bench.comparison("inhalation").remarks().stream()
                        .noneMatch(each -> each.contains("spread")));
    }

    /**
     * NumPy 2.4.6 and SciPy 1.17.1: within 0.0237166 on 6 degrees of freedom, chi-square 14.4494
     * and 1.23734; mean square between 0.00810 on 4, its upper limit over two trials.
     */
    @Test
    void thePartsOfTheSpreadAreGivenWithTheirLimits() {
        assertEquals(
                "One inhalation varies within its donning by about 15 % (95 % limits 9.5 % to 33 %);"
                        + " between donnings of one condition nothing beyond that is seen (at most"
                        + " 14 %).",
                components(noDonnings()));
        assertEquals("", components(Bench.plain().donning(1, "bare", 20, 5, 300)));
    }

    @Test
    void trialsThatStandForThemselvesComeWithAPlainWarning() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                "fewest: 3\n  most: 9\n  design: independent\n  replicates: trials"));
        bench.start(1, "bare").exercises(20).trials(5, 5.2).complete();
        bench.start(1, "disc").exercises(20).trials(6, 6.3).complete();
        String plain =
                "Each trial stands for itself, though those of one donning go together: so this"
                        + " speaks for these donnings only, not for putting the mask on again.";
        assertSaid(plain + " How much donnings differ cannot be seen from one of each.", bench);
        bench.start(2, "bare").exercises(20).trials(5.6, 5.5).complete();
        bench.start(2, "disc").exercises(20).trials(7, 6.7).complete();
        // NumPy: the donning's share is 0.8486, with two trials each sqrt(1 + 0.8486) = 1.36.
        assertSaid(
                plain
                        + " With donnings as different as seen here, an interval that speaks for new"
                        + " ones would be about 1.4 times as wide.",
                bench);
    }
}
