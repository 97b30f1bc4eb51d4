package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Unit;
import rigside.rig.FeedTrouble.Kind;

class FeedWatchTest {
    private static final long SECOND = 1_000_000_000L;

    private FeedWatch watch = new FeedWatch(gauge(OptionalDouble.of(10)), 0);
    private long now;

    @Test
    void readingsAreScaledAndInSi() {
        line("-1.5");
        Reading reading = watch.readings().latest().orElseThrow();
        assertEquals(now, reading.at());
        assertEquals(155, reading.si(), 1e-12, "(-1.5 * -1 + 0.05) mbar in Pa");
    }

    @Test
    void aFeedThatReadsWellTellsNothing() {
        steady(10, 20);
        assertEquals(List.of(), told());
        assertTrue(watch.isWell());
    }

    @Test
    void silenceIsToldOnceAtOnceAndItsEndAfterThreeReadings() {
        steady(10, 8);
        pass(1.9);
        assertEquals(List.of(), told());
        pass(0.2);
        assertEquals(List.of("SILENT gauge: nothing from file g.txt for 2 s"), told());
        pass(20);
        assertEquals(List.of(), told());
        line("1");
        line("1");
        assertEquals(List.of(), told());
        line("1");
        assertEquals(List.of("BACK gauge: reads well again"), told());
    }

    @Test
    void aFeedThatNeverSpeaksIsSilentToo() {
        pass(2.5);
        assertEquals(List.of(Kind.SILENT), kinds());
    }

    @ParameterizedTest(name = "''{0}'' is told as {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "abc|'abc' is no number",
                "NaN|'NaN' is no number",
                "1,5|'1,5' is no number",
                "11|'11' is no reading: it is outside -10 mbar to 10 mbar",
            })
    void nonsenseIsToldAtItsFirstLine(String line, String words) {
        steady(10, 1);
        line(line);
        assertEquals(List.of("NONSENSE gauge: " + words), told());
        assertEquals(10, watch.readings().count());
        line(line);
        assertEquals(List.of(), told());
        steady(10, 0.3);
        assertEquals(List.of(Kind.BACK), kinds());
        assertEquals(2, watch.nonsense());
    }

    @Test
    void nothingATerminalWouldObeyGetsIntoTheWords() {
        line("\u001b[2J\u0007");
        assertEquals(List.of("NONSENSE gauge: '?[2J?' is no number"), told());
    }

    @Test
    void aLineTooLongIsNonsense() {
        watch.take(new Arrival.Line(++now, "1".repeat(10), false));
        assertEquals(List.of(Kind.NONSENSE), kinds());
    }

    @Test
    void fewerThanHalfOfTheReadingsIsStutteringUntilTheRateIsBack() {
        steady(10, 6);
        steady(4, 6);
        assertEquals(List.of("STUTTERING gauge: 4.6 readings a second instead of 10.0"), told());
        steady(6, 6);
        assertEquals(List.of(), told());
        steady(10, 6);
        assertEquals(List.of(Kind.BACK), kinds());
    }

    @Test
    void aSlowInstrumentIsJudgedByTheTimeOfTenReadings() {
        watch = new FeedWatch(gauge(OptionalDouble.of(0.5)), 0);
        steady(0.5, 60);
        assertEquals(List.of(), told());
    }

    @Test
    void aBurstAfterAPauseIsNoTrouble() {
        steady(10, 8);
        pass(1.5);
        for (int count = 0; count < 15; count++) {
            watch.take(new Arrival.Line(now, "1", true));
        }
        steady(10, 8);
        assertEquals(List.of(), told());
        assertEquals(175, watch.readings().count());
    }

    @Test
    void aBrokenWireIsToldOnceHoweverOftenItIsTried() {
        steady(10, 8);
        for (int count = 0; count < 20; count++) {
            watch.take(new Arrival.Broken(now, "there is no such file"));
            pass(0.5);
        }
        assertEquals(List.of("BROKEN gauge: file g.txt: there is no such file"), told());
        watch.take(new Arrival.Opened(now));
        steady(10, 1);
        assertEquals(List.of(Kind.BACK), kinds());
    }

    @Test
    void aClockThatJumpsAheadIsASilenceAndOneThatGoesBackDoesNothing() {
        steady(10, 8);
        pass(3600);
        assertEquals(List.of(Kind.SILENT), kinds());
        steady(10, 1);
        assertEquals(List.of(Kind.BACK), kinds());
        long latest = watch.readings().latest().orElseThrow().at();
        watch.take(new Arrival.Line(5, "2", true));
        assertEquals(latest, watch.readings().latest().orElseThrow().at());
        watch.pass(7);
        assertEquals(List.of(), told());
    }

    @Test
    void rawLinesThatCannotBeKeptAreToldAndSoIsTheEndOfIt() {
        watch.take(new Arrival.NotKept(now, "the disk is full"));
        assertEquals(
                List.of("NOT_KEPT gauge: its raw readings cannot be kept: the disk is full"),
                told());
        steady(10, 2);
        assertFalse(watch.isWell());
        watch.take(new Arrival.Kept(now));
        assertEquals(List.of(Kind.BACK), kinds());
    }

    @Test
    void aHeaderThatStoodThereBeforeIsKnownAndItsLineIsNoReading() {
        watch =
                new FeedWatch(
                        feed(
                                Sampled.MASK_PRESSURE,
                                new LineForm(
                                        new LineForm.Columns(
                                                Separator.COMMA, Column.of("p"), Optional.empty()),
                                        false,
                                        Optional.empty(),
                                        Map.of()),
                                OptionalDouble.empty(),
                                0),
                        0);
        watch.take(new Arrival.Before(0, "t,p"));
        line("5,1");
        assertEquals(1, watch.readings().count());
        assertEquals(List.of(), told());
    }

    @Test
    void aWindowIsTheMeanOfItsReadingsWithBothEnds() {
        for (int second = 1; second <= 10; second++) {
            watch.take(new Arrival.Line(second * SECOND, "-" + (second / 10.0), true));
        }
        Sample sample = sample(new Span(3 * SECOND, 6 * SECOND, false));
        assertEquals(4, sample.count());
        assertEquals(50, sample.mean(), 1e-9, "0.3, 0.4, 0.5, 0.6 and 0.05 mbar, in Pa");
        assertEquals(35, sample.lowest(), 1e-9);
        assertEquals(10 * Math.sqrt(5.0 / 3), sample.spread(), 1e-9);
    }

    @Test
    void lessThanHalfOfTheExpectedReadingsDoNotStandForAWindow() {
        steady(10, 4.9);
        assertFalse(sample(new Span(0, 10 * SECOND, false)).isUsable());
        steady(10, 0.2);
        assertTrue(sample(new Span(0, 10 * SECOND, false)).isUsable());
        assertFalse(sample(new Span(20 * SECOND, 30 * SECOND, false)).isUsable());
    }

    @Test
    void settlingIsLeftOutAfterASwitchOnly() {
        watch = counter(Map.of());
        for (int second = 1; second <= 20; second++) {
            watch.take(new Arrival.Line(second * SECOND, "" + second, true));
        }
        assertEquals(6, mask(new Span(5 * SECOND, 7 * SECOND, false)).mean() / 1e6, 1e-9);
        assertEquals(9, mask(new Span(5 * SECOND, 10 * SECOND, true)).mean() / 1e6, 1e-9);
        assertEquals(0, mask(new Span(5 * SECOND, 7 * SECOND, true)).count());
    }

    @Test
    void aCounterThatSaysItsSideIsSettledFromTheSwitchItself() {
        watch = counter(Map.of("A", Signal.AMBIENT, "M", Signal.MASK));
        for (int second = 1; second <= 20; second++) {
            String side = second >= 7 && second < 15 ? "M" : "A";
            watch.take(new Arrival.Line(second * SECOND, second + "," + side, true));
        }
        Sample mask = mask(new Span(5 * SECOND, 16 * SECOND, true));
        assertEquals(5, mask.count(), "10 to 14: switched at 7, settled 3 s later");
        assertEquals(12, mask.mean() / 1e6, 1e-9);
        assertEquals(
                3,
                watch.sample(Signal.AMBIENT, new Span(16 * SECOND, 20 * SECOND, true)).count(),
                "18 to 20: switched at 15, before the window");
    }

    @Test
    void onlyTheNewestReadingsAreRemembered() {
        for (int count = 0; count < Readings.MOST + 10; count++) {
            watch.take(new Arrival.Line(count, "1", true));
        }
        assertEquals(Readings.MOST, watch.readings().between(0, Long.MAX_VALUE - 1).size());
        assertTrue(watch.readings().hasForgotten(0));
        assertFalse(watch.readings().hasForgotten(10));
    }

    @Test
    void aGaugeShowsNothingOldLongBeforeItsFeedCountsAsLost() {
        watch = new FeedWatch(gauge(OptionalDouble.of(10)), 0);
        now = 0;
        steady(10, 3);
        assertTrue(watch.gauged().si().isPresent());
        pass(0.5);
        assertTrue(watch.gauged().si().isPresent(), "five readings missed");
        pass(0.2);
        assertEquals(Now.SILENT, watch.gauged());
        assertTrue(watch.isWell());
        steady(10, 0.1);
        assertTrue(watch.gauged().si().isPresent());
    }

    @Test
    void aSlowGaugeIsGivenItsTime() {
        watch = new FeedWatch(gauge(OptionalDouble.empty()), 0);
        now = 0;
        assertEquals(Now.SILENT, watch.gauged(), "nothing was read yet");
        steady(1, 6);
        pass(1.9);
        assertTrue(watch.gauged().si().isPresent());
    }

    private Sample sample(Span span) {
        return watch.sample(Signal.PRESSURE, span);
    }

    private Sample mask(Span span) {
        return watch.sample(Signal.MASK, span);
    }

    private void line(String text) {
        now += SECOND / 10;
        watch.take(new Arrival.Line(now, text, true));
    }

    private void pass(double seconds) {
        now += Math.round(seconds * SECOND);
        watch.pass(now);
    }

    private void steady(double perSecond, double seconds) {
        for (int count = 0; count < Math.round(perSecond * seconds); count++) {
            now += Math.round(SECOND / perSecond);
            watch.take(new Arrival.Line(now, "1", true));
            watch.pass(now);
        }
    }

    private List<String> told() {
        return watch.tell().stream().map(each -> each.kind() + " " + each.words()).toList();
    }

    private List<Kind> kinds() {
        return watch.tell().stream().map(FeedTrouble::kind).toList();
    }

    private static Feed gauge(OptionalDouble perSecond) {
        return feed(Sampled.MASK_PRESSURE, form(Map.of()), perSecond, 0);
    }

    private static FeedWatch counter(Map<String, Signal> sides) {
        return new FeedWatch(
                new Feed(
                        "counter",
                        Sampled.SWITCHED,
                        new Origin.Appended(java.nio.file.Path.of("c.txt")),
                        form(sides),
                        new Scale(Unit.PER_CUBIC_CENTIMETRE, 1, 0, 0, 1e6),
                        OptionalDouble.empty(),
                        2,
                        3),
                0);
    }

    private static LineForm form(Map<String, Signal> sides) {
        Separator separator = sides.isEmpty() ? Separator.SEMICOLON : Separator.COMMA;
        return new LineForm(
                new LineForm.Columns(
                        separator,
                        Column.of("1"),
                        sides.isEmpty() ? Optional.empty() : Optional.of(Column.of("2"))),
                false,
                Optional.empty(),
                sides);
    }

    private static Feed feed(
            Sampled sampled, LineForm form, OptionalDouble perSecond, double settling) {
        double lost = perSecond.isPresent() ? Math.max(2, 5 / perSecond.getAsDouble()) : 2;
        return new Feed(
                "gauge",
                sampled,
                new Origin.Appended(java.nio.file.Path.of("g.txt")),
                form,
                new Scale(Unit.MILLIBAR, -1, 0.05, -10, 10),
                perSecond,
                lost,
                settling);
    }
}
