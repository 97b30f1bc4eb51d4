package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.measure.Breath;
import rigside.measure.TracedInhalation;
import rigside.session.Event;
import rigside.session.Trace;

class TraceRemarksTest {
    private static final String METHOD =
            "With a pressure trace the time at the target counts, not the clock: the pressure-time"
                    + " integral over the target pressure (linear resistance).";

    @Test
    void withoutATraceNothingIsSaid() {
        assertEquals(List.of(), remarks(one(false)).pulls());
        assertEquals(List.of(), remarks(one(false)).breaths());
    }

    /** Means of 240 and 250 Pa, of 20 and 30 Pa, of 0.9 and 0.8. */
    @Test
    void howSteadilyWasPulledIsSaidForEachConditionAndWhatTheClockTimedAlone() {
        List<String> said = remarks(one(true)).pulls();
        assertEquals(2, said.size(), said.toString());
        assertTrue(
                said.get(0)
                        .endsWith(
                                ": 2 inhalations by pressure trace, held at 245 Pa on average,"
                                        + " spread within a pull 25.0 Pa."),
                said.get(0));
        assertEquals(METHOD, said.get(1));
    }

    @Test
    void breathsAreSummedUpByTheMediansOfTheExercises() {
        Bench bench = Bench.plain().start(1, "bare").exercises(40);
        int last = bench.state().captured().entries().size();
        bench.take(new Event.EntryTraced(last, breaths(10, 90)));
        bench.take(new Event.EntryTraced(last - 1, breaths(12, 100)));
        bench.trials(6, 6).effort(5).complete();
        List<String> said = new TraceRemarks(bench.state(), values(bench, "fit")).breaths();
        assertEquals(1, said.size(), said.toString());
        assertTrue(
                said.get(0)
                        .endsWith(
                                ": 22 breaths by pressure trace; medians: 4.00 s a breath, in 1.80"
                                        + " s, peaks 95.0 Pa in and 55.0 Pa out, integrals 110 Pa s"
                                        + " in and 80.0 Pa s out."),
                said.get(0));
    }

    private static Trace.Breaths breaths(int count, double peak) {
        return new Trace.Breaths(count, 0, new Breath(0, 4, 1.8, peak, 55, 110, 80));
    }

    private static Bench one(boolean traced) {
        Bench bench = Bench.plain().start(1, "bare").exercises(40);
        for (int trial = 0; trial < 2; trial++) {
            bench.trial(trial, 6);
            if (traced) {
                bench.take(
                        new Event.EntryTraced(
                                bench.state().captured().entries().size(),
                                new Trace.Pull(
                                        6.3,
                                        new TracedInhalation(
                                                0,
                                                6.2,
                                                1500,
                                                240 + 10 * trial,
                                                20 + 10 * trial,
                                                0.9 - 0.1 * trial,
                                                0,
                                                true,
                                                1))));
            }
        }
        return bench.effort(5).complete();
    }

    private static TraceRemarks remarks(Bench bench) {
        return new TraceRemarks(bench.state(), values(bench, "inhalation"));
    }

    private static List<DonningValue> values(Bench bench, String measure) {
        return Analysis.of(bench.state()).measure(measure).orElseThrow().values();
    }
}
