package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Trace;
import rigside.session.Value;

class TimingRemarkTest {
    private static final String HAND = "pressing start and stop by hand can explain ";

    /** Four donnings of two trials each that differ by the root of 2 times {@code spread}. */
    private static Bench timed(Bench bench, double spread, Source source) {
        for (int donning = 1; donning <= 4; donning++) {
            bench.start((donning + 1) / 2, donning % 2 == 1 ? "bare" : "disc");
            bench.exercises(20);
            for (int trial = 0; trial < 2; trial++) {
                double seconds = 8 + donning + (trial - 0.5) * Math.sqrt(2) * spread;
                bench.take(
                        new Event.EntryCaptured(
                                bench.state().captured().entries().size() + 1,
                                new Slot.Trial(new Place(Stage.DONNING, donning, 2), trial),
                                new Value.Measured(new Quantity(seconds, Unit.SECOND)),
                                source));
            }
            bench.effort(300).complete();
        }
        return bench;
    }

    private static List<String> remarks(Bench bench) {
        return bench.measure("inhalation").remarks();
    }

    /** Shares worked out beside the published figure: 0.10 s against these spreads, squared. */
    @ParameterizedTest(name = "{0} s")
    @CsvSource({"0.40, about 6 %", "0.20, about 25 %", "0.12, about 69 %", "0.08, all"})
    void withoutASelfTestThePublishedFigureIsUsedAndNamed(double spread, String share) {
        List<String> remarks = remarks(timed(Bench.plain(), spread, Source.TIMED));
        assertTrue(Bench.says(remarks, HAND + share + " of that variance, at 0.10 s as published"));
        assertTrue(Bench.says(remarks, String.format("spread by %.2f s within", spread)));
        assertEquals(
                spread < 0.14, Bench.says(remarks, "A pressure trace would time more exactly"));
    }

    /** Reactions 0.1 s apart in turn: variance 0.1^2 / 4 * 6 / 5, so a pair has 0.0775 s. */
    @Test
    void aSelfTestGivesTheTestersOwn() {
        Bench bench =
                Bench.plain()
                        .take(
                                new Event.SelfTested(
                                        "2026-01-05T07:55:00Z",
                                        "xterm",
                                        0,
                                        0,
                                        0,
                                        0,
                                        "tones",
                                        List.of(0.2, 0.3, 0.2, 0.3, 0.2, 0.3),
                                        List.of(),
                                        List.of()));
        List<String> remarks = remarks(timed(bench, 0.2, Source.TIMED));
        assertTrue(
                Bench.says(
                        remarks,
                        HAND
                                + "about 15 % of that variance, at 0.08 s from your reactions in"
                                + " the self-test of 2026-01-05."));
    }

    @ParameterizedTest
    @CsvSource({"SIMULATED", "INSTRUMENT", "TYPED"})
    void onlyTimesByTheClockAreMeant(Source source) {
        assertFalse(Bench.says(remarks(timed(Bench.plain(), 0.2, source)), HAND));
    }

    @Test
    void whatAPressureTraceTimedIsNotMeant() {
        Bench bench = timed(Bench.plain(), 0.2, Source.TIMED);
        TracedInhalation inhalation =
                new TracedInhalation(-0.12, 6.05, 612.35, 99.25, 8.5, 0.912, 0.1, true, 2);
        bench.take(new Event.EntryTraced(bench.entry(1, 0), new Trace.Pull(6.25, inhalation)));
        assertTrue(Bench.says(remarks(bench), "6 trials"));
        bench.take(new Event.EntryTraced(bench.entry(2, 0), new Trace.Pull(6.25, inhalation)));
        assertFalse(Bench.says(remarks(bench), HAND));
    }

    @Test
    void itIsConcealedWithTheResult() {
        Bench bench = timed(Bench.plain(), 0.2, Source.TIMED).start(3, "bare");
        assertTrue(Bench.says(remarks(bench), HAND));
        assertTrue(bench.shown().measures().stream().allMatch(each -> each.remarks().isEmpty()));
    }
}
