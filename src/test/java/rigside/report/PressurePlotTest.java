package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.measure.TracedInhalation;
import rigside.rig.Reading;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Trace;

/** The pressure over time, of sessions whose gauge's readings are kept. */
class PressurePlotTest {
    private static Gauged pulls;
    private static Gauged breaths;

    @BeforeAll
    static void sessionsAreRehearsed() throws IOException {
        pulls = Gauged.of(Path.of("demo", "prefilter-disc.yaml"), 7);
        breaths = Gauged.of(Path.of("protocols", "pressure-while-breathing.yaml"), 7);
    }

    private static List<Figure> drawn(Material of) {
        return Figures.of(of).stream().filter(each -> each.name().contains("-pressure")).toList();
    }

    private static List<Entry> traced(Material of) {
        return of.state().captured().entries().stream()
                .filter(each -> each.trace().isPresent())
                .toList();
    }

    @Test
    void everyTracedInhalationHasAPanelInFiguresOfWholeRounds() {
        Material of = pulls.material();
        List<Figure> figures = drawn(of);
        assertEquals(
                List.of("breathing-pressure", "breathing-pressure-2"),
                figures.stream().map(Figure::name).toList());
        long panels =
                figures.stream()
                        .flatMap(each -> Boxed.all(each.wide()).stream())
                        .filter(each -> each.text().matches("round \\d+, trial \\d"))
                        .count();
        assertEquals(traced(of).size(), panels);
        for (Figure figure : figures) {
            FiguresTest.readable(figure);
            Xml.read(figure.svg());
            assertTrue(figure.svg().length() < 120_000, "bytes " + figure.svg().length());
        }
    }

    /** What was judged at the bench and what is drawn are the same readings. */
    @Test
    void theTraceDrawnHoldsTheHighestAndLowestReadingOfItsWindow() {
        Material of = pulls.material();
        for (PressureWindow window : PressureWindow.all(of.protocol(), of.events())) {
            double[] own =
                    pulls.readings().stream()
                            .filter(each -> each.at() >= window.from() && each.at() <= window.to())
                            .mapToDouble(Reading::si)
                            .sorted()
                            .toArray();
            PressureTrace trace = of.pressure().of(window.entry()).orElseThrow();
            assertEquals(own.length, trace.readings());
            assertEquals(-own[0], trace.highest());
            assertEquals(-own[own.length - 1], trace.lowest(), 0);
            assertTrue(
                    trace.runs().stream().mapToInt(List::size).sum() <= 2 * PressureTrace.FEWEST);
        }
    }

    /** Trapezoids over what is drawn, against the integral that the bench recorded. */
    @Test
    void thinningKeepsTheShapeOfAPull() {
        Material of = pulls.material();
        for (Entry entry : traced(of)) {
            var pull = entry.pull().orElseThrow().inhalation();
            double sum = 0;
            for (List<PressureTrace.Point> run :
                    of.pressure().of(entry.number()).orElseThrow().runs()) {
                for (int at = 1; at < run.size(); at++) {
                    PressureTrace.Point a = run.get(at - 1);
                    PressureTrace.Point b = run.get(at);
                    double middle = (a.seconds() + b.seconds()) / 2;
                    if (middle >= pull.startSeconds() && middle <= pull.endSeconds()) {
                        sum += (b.seconds() - a.seconds()) * (a.pascals() + b.pascals()) / 2;
                    }
                }
            }
            // A column is a tenth of a second, and a pull some seven seconds.
            assertEquals(pull.integral(), sum, 0.03 * pull.integral());
        }
    }

    @Test
    void breathsOfAnExerciseHaveTheirWindowFromItsBegin() {
        Material of = breaths.material();
        List<Figure> figures = drawn(of);
        assertEquals(
                List.of("sitting-pressure", "stepping-pressure"),
                figures.stream().map(Figure::name).toList());
        figures.forEach(FiguresTest::readable);
        for (Entry entry : traced(of)) {
            PressureTrace trace = of.pressure().of(entry.number()).orElseThrow();
            double peak = entry.breaths().orElseThrow().medians().peakInhalationPa();
            assertEquals(peak, trace.highest(), 0.02 * peak);
        }
    }

    @Test
    void whatIsStruckOutIsSaidAndCrossed() {
        Material before = pulls.material();
        int entry = traced(before).get(0).number();
        int captured = captured(before, entry);
        Material of =
                pulls.gathered(
                        Reported.with(
                                before,
                                captured + 1,
                                captured + 1,
                                new Event.EntryVoided(entry, "slipped")));
        Figure first = drawn(of).get(0);
        assertTrue(first.description().contains("struck out: round 1, trial"), first::description);
        assertEquals(2, signs(first, Mark.Shape.CROSS), "one over its panel, one in the key");
        FiguresTest.readable(first);
    }

    /** A journal may hold any number. */
    @Test
    void aPullWithoutAFiniteBeginIsDrawnByItsPresses() {
        Material before = pulls.material();
        int at =
                IntStream.range(0, before.events().size())
                        .filter(
                                each ->
                                        before.events().get(each).event()
                                                instanceof Event.EntryTraced)
                        .findFirst()
                        .orElseThrow();
        Event.EntryTraced was = (Event.EntryTraced) before.events().get(at).event();
        Trace.Pull pull = (Trace.Pull) was.trace();
        TracedInhalation own = pull.inhalation();
        TracedInhalation odd =
                new TracedInhalation(
                        Double.NaN,
                        own.endSeconds(),
                        own.integral(),
                        own.meanPa(),
                        own.spreadPa(),
                        own.withinShare(),
                        own.unseenSeconds(),
                        true,
                        1);
        Event now = new Event.EntryTraced(was.entry(), new Trace.Pull(pull.pressedSeconds(), odd));
        Figure first = drawn(pulls.gathered(Reported.with(before, at, at + 1, now))).get(0);
        assertTrue(first.description().contains("between the presses from 0"), first::description);
        assertFalse(first.svg().contains("NaN"));
    }

    @Test
    void longAndHostileTitlesAreWordsThatStandOnNoOther(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of("protocols", "pressure-while-breathing.yaml"));
        String hostile = "<script>alert(1)</script> & ' ]]> unbrokenwordthatislongerthanapanel";
        Path file =
                Files.writeString(
                        folder.resolve("p.yaml"),
                        text.replace("title: Mask as it is", "title: \"" + hostile + "\"")
                                .replace("title: Normal breathing", "title: \"" + hostile + "\""));
        for (Figure figure : drawn(Gauged.of(file, 3).material())) {
            FiguresTest.readable(figure);
            Xml.read(figure.svg());
            assertFalse(figure.svg().contains("<script"));
        }
    }

    @Test
    void withoutReadingsItIsSaidAndNothingDrawn() {
        Material of = pulls.material().with(PressureTraces.NONE);
        assertEquals(List.of(), drawn(of));
        String said = "No pressure over time: its raw readings are not there.";
        assertTrue(SessionReport.of(of).markdown().contains(said));
        assertFalse(SessionReport.of(pulls.material()).markdown().contains("raw readings are not"));
        assertFalse(SessionReport.of(Reported.demonstration()).markdown().contains(said));
    }

    /** A gauge that broke after the first round. */
    @Test
    void whereOnlySomeReadingsAreThereItIsSaidOfHowMany() {
        Material of = firstAlone(pulls.material());
        int all = traced(of).size();
        String said = "the raw readings of " + (all - 1) + " of " + all + " are not there.";
        assertTrue(SessionReport.of(of).markdown().contains(said));
        FiguresTest.readable(drawn(of).get(0));
    }

    /** The protocol conceals times and results until a donning ends. */
    @Test
    void nothingIsDrawnNorSaidOfItWhileItIsConcealed() {
        int looked = 0;
        for (int count = 2; count < pulls.events().size(); count += 5) {
            Material of = pulls.material(count);
            Shown shown = Shown.of(of.state(), Analysis.of(of.state()));
            if (!shown.trialClock() || !shown.result()) {
                looked++;
                assertEquals(List.of(), drawn(of));
                String said = SessionReport.of(of).markdown();
                assertFalse(said.contains("ressure over time"), said);
                assertEquals(said, SessionReport.of(of.with(PressureTraces.NONE)).markdown(), said);
            }
        }
        assertTrue(looked > 20, "only " + looked + " moments");
    }

    /** The tester's own gauge may write any number that its rig file allows. */
    @Test
    void aKnockOnTheGaugeShrinksNoTraceAndIsSaid() {
        Material whole = pulls.material();
        int entry = traced(whole).get(0).number();
        PressureTrace was = whole.pressure().of(entry).orElseThrow();
        Material of =
                with(
                        whole,
                        new PressureTrace(
                                was.window(),
                                was.readings(),
                                List.of(
                                        List.of(
                                                new PressureTrace.Point(0, 100),
                                                new PressureTrace.Point(1, 1e12),
                                                new PressureTrace.Point(1.1, -1e12),
                                                new PressureTrace.Point(2, 100)))));
        Figure first = drawn(of).get(0);
        FiguresTest.readable(first);
        assertEquals(2, signs(first, Mark.Shape.UP), "one in its panel, one in the key");
        assertEquals(1, signs(first, Mark.Shape.DOWN));
        assertTrue(text(first).contains("it goes on beyond the axis"), () -> text(first));
        assertTrue(first.description().contains("to 1.00E+12 Pa"), first::description);
        // The band is 40 Pa of an axis of twice 120 Pa to either side, 104 high.
        Mark.Box band =
                first.wide().marks().stream()
                        .filter(Mark.Box.class::isInstance)
                        .map(Mark.Box.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertTrue(band.height() > 7, band::toString);
        assertEquals(0, signs(drawn(whole).get(0), Mark.Shape.UP));
    }

    /** A trigger pressed only after minutes, then struck out. */
    @Test
    void aStruckPullOfMinutesIsCutOffAndShrinksNoOther() {
        Material before = pulls.material();
        Entry entry = traced(before).get(0);
        int at = captured(before, entry.number());
        Event struck = new Event.EntryVoided(entry.number(), "trigger forgotten");
        Material voided = pulls.gathered(Reported.with(before, at + 1, at + 1, struck));
        PressureWindow own = voided.pressure().of(entry.number()).orElseThrow().window();
        PressureWindow long600 =
                new PressureWindow(
                        own.entry(), own.from(), own.from() + 602_000_000_000L, own.zero(), 599);
        List<PressureTrace.Point> line =
                IntStream.range(0, 600)
                        .mapToObj(second -> new PressureTrace.Point(second, 50))
                        .toList();
        Material of = with(voided, new PressureTrace(long600, 600, List.of(line)));
        Figure first = drawn(of).get(0);
        FiguresTest.readable(first);
        assertEquals(2, signs(first, Mark.Shape.RIGHT), "one in its panel, one in the key");
        assertTrue(text(first).contains("the longest ends after 600.00 s"), () -> text(first));
        assertTrue(Boxed.all(first.wide()).stream().anyMatch(each -> each.text().equals("10")));
        assertFalse(Boxed.all(first.wide()).stream().anyMatch(each -> each.text().equals("100")));
    }

    @Test
    void aTargetWithoutAToleranceIsALineAndNotABand(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of("demo", "prefilter-disc.yaml"));
        assertTrue(text.contains("    tolerance: 20 %\n"));
        Path file =
                Files.writeString(
                        folder.resolve("p.yaml"), text.replace("    tolerance: 20 %\n", ""));
        Figure first = drawn(Gauged.of(file, 7).material()).get(0);
        assertTrue(first.description().contains("A line is the target, 100 Pa."));
        assertFalse(text(first).contains("tolerance"), () -> text(first));
        FiguresTest.readable(first);
    }

    @Test
    void oneInhalationInAllIsOnePanel() {
        Material of = firstAlone(pulls.material());
        List<Figure> figures = drawn(of);
        assertEquals(1, figures.size());
        assertEquals("Inhalation time: pressure over time, round 1", figures.get(0).title());
        FiguresTest.readable(figures.get(0));
    }

    /** To who cannot see it: what was captured, and times no finer than they are known. */
    @Test
    void theDescriptionGivesTimesToAHundredthAndTheValueOfAnExercise() {
        String pull = drawn(pulls.material()).get(0).description();
        assertTrue(pull.contains("round 1, trial 1: from "), pull);
        assertTrue(pull.contains(" Pa, pull from -0.02 to 6.33 s"), pull);
        String sitting = drawn(breaths.material()).get(0).description();
        assertTrue(sitting.contains("A dashed line is the value captured, the median"), sitting);
        assertTrue(sitting.contains(" Pa, captured "), sitting);
    }

    /** The dashed level then need not touch the peaks of what the gauge read. */
    @Test
    void aValueFromTheMeanOverBreathsSaysSo(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of("protocols", "pressure-while-breathing.yaml"));
        String kind = "    kind: pressure-trace\n";
        Path file =
                Files.writeString(
                        folder.resolve("p.yaml"), text.replace(kind, kind + "    zero: breaths\n"));
        Figure first = drawn(Gauged.of(file, 7).material()).get(0);
        String said = "the median of the peaks, from the mean over whole breaths";
        assertTrue(first.description().contains(said), first::description);
        assertTrue(text(first).contains("mean over whole breaths"), () -> text(first));
        assertFalse(drawn(breaths.material()).get(0).description().contains("whole breaths"));
        FiguresTest.readable(first);
    }

    /** With the readings of its first inhalation and of no other. */
    private static Material firstAlone(Material whole) {
        int entry = traced(whole).get(0).number();
        return whole.with(
                new PressureTraces(Map.of(entry, whole.pressure().of(entry).orElseThrow())));
    }

    private static Material with(Material of, PressureTrace trace) {
        Map<Integer, PressureTrace> traces = new HashMap<>(of.pressure().traces());
        traces.put(trace.window().entry(), trace);
        return of.with(new PressureTraces(traces));
    }

    private static String text(Figure figure) {
        return Boxed.all(figure.narrow()).stream()
                .map(Boxed::text)
                .collect(Collectors.joining(" "));
    }

    private static long signs(Figure figure, Mark.Shape shape) {
        return figure.wide().marks().stream()
                .filter(each -> each instanceof Mark.Sign sign && sign.shape() == shape)
                .count();
    }

    private static int captured(Material of, int entry) {
        return IntStream.range(0, of.events().size())
                .filter(
                        at ->
                                of.events().get(at).event() instanceof Event.EntryTraced traced
                                        && traced.entry() == entry)
                .findFirst()
                .orElseThrow();
    }
}
