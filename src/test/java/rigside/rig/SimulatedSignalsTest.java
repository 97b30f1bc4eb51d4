package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.measure.TimedTrace;
import rigside.measure.TracedInhalation;
import rigside.rig.Act.Kind;

class SimulatedSignalsTest {
    private static final long SECOND = 1_000_000_000L;
    private static final double TARGET = 250;
    private static final Act PULL = new Act(Kind.PULL, 10 * SECOND, 2, "disc", 3, 1, 0, TARGET);
    private static final Act EXERCISE = new Act(Kind.EXERCISE, 50 * SECOND, 2, "disc", 2, 1, 0, 0);

    private final SimulatedRig rig = new SimulatedRig(Wearer.plain(List.of("bare", "disc")), 5);

    /**
     * Read ten times a second, straight lines between; the two ends are short of what lies below 5
     * % of the target.
     */
    @Test
    void theTraceOfAPullHasTheIntegralOfTheTimeAnswered() {
        double answered = rig.answer(PULL.asked(Asked.Kind.INHALATION)).orElseThrow();
        wearing(2);
        rig.does(PULL, 10 * SECOND);
        rig.pass(40 * SECOND);
        TimedTrace trace =
                TimedTrace.of(
                        rig.readings(Signal.PRESSURE, 10 * SECOND, 40 * SECOND).stream()
                                .map(each -> new TimedTrace.Reading(each.at() / 1e9, each.si()))
                                .toList(),
                        10);
        TracedInhalation pull =
                TracedInhalation.find(trace, TARGET, 0.2, 10, 10 + answered).orElseThrow();
        assertEquals(answered, pull.equivalentSeconds(TARGET), 0.02 * answered);
        assertEquals(10, pull.startSeconds(), 0.1);
        assertTrue(pull.withinShare() > 0.9, () -> "held within 20 %: " + pull.withinShare());
    }

    @Test
    void breathsReachThePeakAnswered() {
        rig.does(EXERCISE, 50 * SECOND);
        rig.pass(80 * SECOND);
        Sample sample =
                rig.sample(Signal.PRESSURE, new Span(50 * SECOND, 80 * SECOND, false))
                        .orElseThrow();
        double peak = rig.answer(EXERCISE.asked(Asked.Kind.PRESSURE)).orElseThrow();
        assertEquals(-peak, sample.lowest(), 1e-6, "a quarter of a breath is ten readings");
    }

    @Test
    void theMaskOfAnExerciseReadsWhatIsAnsweredForItsWindow() {
        rig.does(EXERCISE, 50 * SECOND);
        rig.pass(110 * SECOND);
        Sample sample =
                rig.sample(Signal.MASK, new Span(50 * SECOND, 110 * SECOND, false)).orElseThrow();
        double answered = rig.answer(EXERCISE.asked(Asked.Kind.MASK)).orElseThrow();
        assertEquals(601, sample.count());
        assertEquals(answered, sample.mean(), 0.01 * answered, "5 % noise over 601 readings");
    }

    @Test
    void whatWasDoneThenCountsNotWhatIsDoneNow() {
        wearing(2);
        rig.does(PULL, 10 * SECOND);
        rig.does(EXERCISE, 50 * SECOND);
        rig.pass(52 * SECOND);
        assertEquals(
                -TARGET,
                rig.readings(Signal.PRESSURE, 12 * SECOND, 12 * SECOND).get(0).si(),
                0.1 * TARGET);
        assertEquals(52 * SECOND, rig.latest(Signal.MASK).orElseThrow().at());
    }

    @Test
    void nothingIsReadOfTheFutureOrBeforeTheBegin() {
        assertEquals(Optional.empty(), rig.latest(Signal.PRESSURE));
        assertEquals(List.of(), rig.readings(Signal.PRESSURE, 0, SECOND));
        wearing(5);
        rig.pass(6 * SECOND);
        assertEquals(11, rig.readings(Signal.PRESSURE, 0, 90 * SECOND).size(), "from 5 to 6 s");
    }

    @Test
    void theSameSeedReadsTheSame() {
        SimulatedRig other = new SimulatedRig(Wearer.plain(List.of("bare", "disc")), 5);
        for (SimulatedRig each : List.of(rig, other)) {
            each.does(EXERCISE, 50 * SECOND);
            each.pass(60 * SECOND);
        }
        assertEquals(
                rig.readings(Signal.MASK, 50 * SECOND, 60 * SECOND),
                other.readings(Signal.MASK, 50 * SECOND, 60 * SECOND));
    }

    private void wearing(long second) {
        rig.does(new Act(Kind.WEARING, second * SECOND, 2, "disc", 0, 0, 0, 0), second * SECOND);
    }
}
