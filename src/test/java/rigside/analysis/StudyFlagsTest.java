package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is worth a second look where one condition is put on again and again. */
class StudyFlagsTest {
    private static Bench study(double... times) {
        Bench bench =
                Bench.with(
                        Map.of(
                                """
                                  - id: disc
                                    title: the mask with disc
                                    specimen: {piece: mask 1 and disc 1, worn-before: 0}
                                    particle-reading: seal-and-filter
                                """,
                                "",
                                "    compare: ratio\n",
                                "",
                                "    compare: difference\n",
                                "",
                                "    meaningful: 2 times\n    decides: no\n",
                                "",
                                "    meaningful: 10 %\n",
                                "",
                                "    meaningful: 25 Pa\n    decides: no\n",
                                "",
                                "  fewest: 3\n",
                                ""));
        for (int at = 0; at < times.length; at++) {
            bench.donning(at + 1, "bare", 20, times[at], 300);
        }
        return bench;
    }

    private static List<Flag> inhalation(Bench bench) {
        return bench.measure("inhalation").flags();
    }

    /** R 4.2.2: grubbs' bound 2 n pt(-t, n - 2) of the logarithms is 1.2e-6. */
    @Test
    void aDonningThatStandsApartIsNamedAndCountsAllTheSame() {
        List<Flag> flags = inhalation(study(5, 5.12, 4.93, 9.1, 5.07, 4.97, 5.03));
        assertEquals(
                List.of(
                        "Donning 4 (the bare mask) stands apart: 9.10 s, the others 4.93 to 5.12 s,"
                                + " which chance alone does less than once in 1000 times. Look at"
                                + " the notes of donning 4; the value counts all the same."),
                flags.stream().map(Flag::reason).toList());
        assertEquals(List.of(4), flags.get(0).donnings());
        assertEquals(List.of(), flags.get(0).whatIf());
    }

    /** R 4.2.2: m = lm(log(y) ~ seq_along(y)); exp(fitted(m)) 5.048 to 5.788, Pr(>|t|) 0.00533. */
    @Test
    void aDriftOverTheDonningsIsSaidToBeInTheSpread() {
        assertEquals(
                List.of(
                        "The inhalation time drifts over the donnings: from 5.05 to 5.79 s along a"
                                + " straight line, which chance alone does about 5 times in 1000. The"
                                + " spread holds that drift too; look for tiredness, wear or a"
                                + " changing room."),
                inhalation(study(5.0, 5.3, 5.1, 5.5, 5.3, 5.7, 5.5, 5.9)).stream()
                        .map(Flag::reason)
                        .toList());
    }

    /** The same call of R gives 0.0208. */
    @Test
    void aDriftThatChanceDoesInTwoOfAHundredRaisesNoFlag() {
        assertEquals(List.of(), inhalation(study(5.0, 5.3, 5.1, 5.5, 5.2, 5.6, 5.4, 5.7)));
    }

    @Test
    void valuesThatScatterAndValuesThatAreAlikeRaiseNoFlag() {
        assertEquals(List.of(), inhalation(study(5.0, 5.3, 5.1, 5.2, 4.9, 5.25, 5.05)));
        assertEquals(List.of(), inhalation(study(5, 5, 5, 5, 5, 5)));
        assertEquals(List.of(), study(5, 5, 5, 5, 5, 5).measure("effort").flags());
    }
}
