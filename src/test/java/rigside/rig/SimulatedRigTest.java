package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.rig.Asked.Kind;

class SimulatedRigTest {
    private static final Wearer WEARER = Wearer.plain(List.of("bare", "disc"));
    private static final int DONNINGS = 4000;

    @Test
    void theSameQuestionAlwaysGetsTheSameAnswer() {
        Asked asked = new Asked(Kind.INHALATION, 3, "disc", 2, 1, 0, 0);
        assertEquals(
                new SimulatedRig(WEARER, 5).answer(asked),
                new SimulatedRig(WEARER, 5).answer(asked));
    }

    @Test
    void aRetakeAnotherSeedAndAnotherDonningGetOthers() {
        double first = inhalation(5, 3, 0, 0);
        assertNotEquals(first, inhalation(5, 3, 0, 1));
        assertNotEquals(first, inhalation(6, 3, 0, 0));
        assertNotEquals(first, inhalation(5, 4, 0, 0));
    }

    /**
     * Medians and spreads come out as declared, within 4 standard errors of a normal sample of that
     * size.
     */
    @Test
    void timesHaveTheDeclaredMedianAndSpreads() {
        Wearer.Level declared = WEARER.behaviour("bare").inhalation();
        double sum = 0;
        double squares = 0;
        double within = 0;
        for (int donning = 1; donning <= DONNINGS; donning++) {
            double first = Math.log(inhalation(1, donning, 0, 0));
            double second = Math.log(inhalation(1, donning, 1, 0));
            sum += first;
            squares += first * first;
            within += (first - second) * (first - second) / 2;
        }
        double mean = sum / DONNINGS;
        double variance = squares / DONNINGS - mean * mean;
        double total =
                declared.between() * declared.between() + declared.within() * declared.within();
        assertEquals(Math.log(declared.median()), mean, 4 * Math.sqrt(total / DONNINGS));
        assertEquals(total, variance, 4 * total * Math.sqrt(2.0 / DONNINGS));
        double withinVariance = declared.within() * declared.within();
        assertEquals(
                withinVariance, within / DONNINGS, 4 * withinVariance * Math.sqrt(2.0 / DONNINGS));
    }

    @Test
    void aMaskReadingIsTheAmbientOverTheFitFactor() {
        double logs = 0;
        for (int donning = 1; donning <= DONNINGS; donning++) {
            Asked asked = new Asked(Kind.MASK, donning, "disc", 2, 0, 0, 0);
            logs +=
                    Math.log(
                            WEARER.ambient()
                                    / new SimulatedRig(WEARER, 2).answer(asked).getAsDouble());
        }
        Wearer.Level declared = WEARER.behaviour("disc").fitFactor();
        double sd = Math.hypot(declared.between(), declared.within());
        assertEquals(Math.log(declared.median()), logs / DONNINGS, 4 * sd / Math.sqrt(DONNINGS));
    }

    private static double inhalation(long seed, int donning, int trial, int again) {
        return new SimulatedRig(WEARER, seed)
                .answer(new Asked(Kind.INHALATION, donning, "bare", 2, trial, 0, again))
                .getAsDouble();
    }
}
