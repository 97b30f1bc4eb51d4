package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import rigside.session.Recorded;
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
        List<Recorded> events = new ArrayList<>(before.events());
        int captured =
                IntStream.range(0, events.size())
                        .filter(
                                at ->
                                        events.get(at).event() instanceof Event.EntryTraced traced
                                                && traced.entry() == entry)
                        .findFirst()
                        .orElseThrow();
        Material of =
                pulls.gathered(
                        Reported.with(
                                before,
                                captured + 1,
                                captured + 1,
                                new Event.EntryVoided(entry, "slipped")));
        Figure first = drawn(of).get(0);
        assertTrue(first.description().contains("struck out: round 1, trial"), first::description);
        long crosses =
                first.wide().marks().stream()
                        .filter(
                                each ->
                                        each instanceof Mark.Sign sign
                                                && sign.shape() == Mark.Shape.CROSS)
                        .count();
        assertEquals(2, crosses, "one over its panel, one in the key");
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
        Material whole = pulls.material();
        int entry = traced(whole).get(0).number();
        Material of =
                whole.with(
                        new PressureTraces(
                                Map.of(entry, whole.pressure().of(entry).orElseThrow())));
        int all = traced(whole).size();
        assertTrue(
                SessionReport.of(of)
                        .markdown()
                        .contains(
                                "of "
                                        + (all - 1)
                                        + " of "
                                        + all
                                        + " the raw readings are not there"));
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

    @Test
    void aSilenceOfTheGaugeIsAGapInTheTrace() {
        PressureWindow window = new PressureWindow(1, 0, 10_000_000_000L, 0, 10);
        PressureTraces.Gathering gathering = new PressureTraces.Gathering(List.of(window));
        for (int tenth = 0; tenth < 100; tenth++) {
            if (tenth < 40 || tenth >= 60) {
                gathering.reading(tenth * 100_000_000L, tenth == 20 ? -300 : -100);
            }
        }
        PressureTrace trace = gathering.traces().of(1).orElseThrow();
        assertEquals(2, trace.runs().size());
        assertEquals(80, trace.readings());
        assertEquals(300, trace.highest(), 0);
        assertEquals(
                6,
                trace.runs().get(1).get(0).seconds(),
                1e-9,
                "after the silence it begins with the first reading");
    }

    @Test
    void tooManyForTheFiguresAreCounted() {
        Material of = pulls.material();
        Plotting plotting = Plots.of(of.state(), of.shown(), "breathing").orElseThrow();
        List<PressureFollowed> own = PressureFollowed.all(of, plotting);
        List<PressureFollowed> round =
                own.stream().filter(each -> each.donning().round() == 1).toList();
        List<PressureFollowed> many = new ArrayList<>();
        IntStream.range(0, 10).forEach(time -> many.addAll(round));
        assertEquals(
                new PressurePages(
                        List.of(many.subList(0, PressurePages.PANELS)),
                        many.size() - PressurePages.PANELS),
                PressurePages.of(many));
    }
}
