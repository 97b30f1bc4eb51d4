package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.decide.Chart;
import rigside.decide.RandomLine;
import rigside.decide.Summary;

class FollowingTest {
    private static final double[] NONE = {};

    private static List<WithValues> sessions(SomeValues... sessions) {
        return Stream.of(sessions).map(SomeValues::session).toList();
    }

    private static Following follow(List<WithValues> sessions) {
        return Following.of(sessions, "breathing", "plain");
    }

    /** A session a week from 2 March 2026 on, two donnings each. */
    private static List<WithValues> weekly(double... seconds) {
        return IntStream.range(0, seconds.length)
                .mapToObj(
                        i ->
                                SomeValues.on(
                                                LocalDate.of(2026, 3, 2).plusWeeks(i).toString(),
                                                new double[] {seconds[i] * 0.99, seconds[i] / 0.99},
                                                NONE)
                                        .session())
                .toList();
    }

    @Test
    void sessionsStandInTheOrderOfTheirDaysWhateverTheOrderGiven() {
        List<WithValues> given =
                new ArrayList<>(sessions(Expected.ONE, Expected.TWO, Expected.THREE));
        Following one = follow(given);
        Collections.reverse(given);
        assertEquals(one, follow(given));
        assertEquals(
                List.of("2026-03-02", "2026-03-09", "2026-03-16"),
                one.points().stream().map(each -> each.day().toString()).toList());
        double[] logs = {Math.log(6.1), Math.log(6.3), Math.log(5.9)};
        assertEquals(Summary.of(logs).mean(), one.points().get(0).mean(), 1e-15);
        assertEquals(Summary.of(logs).sd(), one.points().get(0).spread().getAsDouble(), 1e-15);
    }

    @Test
    void theChartAndTheLineAreThoseOfTheMeansOfSessions() {
        Following following = follow(weekly(6, 6.3, 5.9, 6.2, 6.1));
        double[] means = following.points().stream().mapToDouble(Following.Point::mean).toArray();
        assertEquals(Chart.of(means), following.chart().orElseThrow());
        // Equally many donnings: the weights are equal, whatever the spread.
        double[] ones = {1, 1, 1, 1, 1};
        RandomLine line = RandomLine.of(new double[] {0, 7, 14, 21, 28}, means, ones);
        assertEquals(
                line.slope().estimate(), following.byDay().orElseThrow().slope().estimate(), 1e-12);
    }

    /** The protocol says 0 each week: two wearings a session are counted on. */
    @Test
    void wearingsAreCountedOnOverSessionsThatForgetThem() {
        Following following = follow(weekly(6, 6.3, 5.9, 6.2));
        assertEquals(
                List.of(0.5, 2.5, 4.5, 6.5),
                following.points().stream().map(Following.Point::wornBefore).toList());
        Following.Piece piece = following.pieces().get(0);
        assertEquals("mask A", piece.name());
        assertTrue(piece.byWearing().isPresent());
        assertTrue(
                following.remarks().stream().anyMatch(each -> each.contains("worn-before")),
                () -> following.remarks().toString());
    }

    @Test
    void aMaskThatWearsOutIsSeen() {
        String said = said(follow(weekly(6, 6.31, 6.58, 6.9, 7.3, 7.62)));
        assertTrue(said.contains("Over its wearings the mean rises: +2.4"), said);
        assertTrue(said.contains("Over time the mean rises"), said);
        assertTrue(said.contains("cannot tell wear from practice"), said);
    }

    @Test
    void aMethodThatStaysTheSameShowsNothing() {
        String said = said(follow(weekly(6, 6.1, 5.9, 6.05, 5.95, 6)));
        assertTrue(said.contains("No session is beyond the limits."), said);
        assertTrue(said.contains("Over time the mean shows no clear trend"), said);
        assertTrue(said.contains("From 6 sessions these limits are rough"), said);
        assertFalse(said.contains("SIGNAL"), said);
    }

    @Test
    void aSessionFarOffIsASignalByItsName() {
        String said = said(follow(weekly(6, 6.1, 5.9, 6.05, 5.95, 6, 6.1, 5.9, 6.05, 5.95, 6, 9)));
        assertTrue(said.contains("A SIGNAL, beyond the limits: 2026-05-18."), said);
        assertTrue(said.contains("1 of 10 sessions lay outside"), said);
    }

    @Test
    void eightInARowOnOneSideAreASignal() {
        String said =
                said(
                        follow(
                                weekly(
                                        6, 6.1, 6, 6.1, 6, 6.1, 6, 6.1, 6.5, 6.6, 6.5, 6.6, 6.5,
                                        6.6, 6.5, 6.6)));
        assertTrue(said.contains("A SIGNAL, the end of 8 or more sessions in a row"), said);
    }

    private static String said(Following following) {
        return String.join("\n", FollowingWords.of(following));
    }

    @Test
    void eachPieceHasATrendOfItsOwn() {
        List<WithValues> mixed = new ArrayList<>(weekly(6, 6.3, 5.9));
        mixed.add(
                SomeValues.on("2026-06-01", new double[] {7, 7.2}, NONE)
                        .wearing("mask B")
                        .session());
        Following following = follow(mixed);
        assertEquals(
                List.of("mask A", "mask B"),
                following.pieces().stream().map(Following.Piece::name).toList());
        assertTrue(following.pieces().get(1).byWearing().isEmpty());
        assertTrue(said(following).contains("too few to tell whether it wears out"));
    }

    @Test
    void oneSessionIsFollowedWithoutAChart() {
        Following following = follow(sessions(Expected.ONE));
        assertTrue(following.chart().isEmpty());
        assertTrue(said(following).contains("take three sessions"));
    }

    @Test
    void nothingVariesWhereAllIsTheSame() {
        double[] same = {6, 6};
        Following following =
                follow(
                        sessions(
                                SomeValues.on("2026-03-02", same, NONE),
                                SomeValues.on("2026-03-09", same, NONE),
                                SomeValues.on("2026-03-16", same, NONE)));
        assertEquals(0, following.byDay().orElseThrow().slope().estimate());
        assertTrue(said(following).startsWith("The sessions do not differ"), said(following));
        assertFalse(said(following).contains("NaN"), said(following));
    }

    @Test
    void unknownNamesAreRefusedWithThoseThereAre() {
        List<WithValues> sessions = sessions(Expected.ONE);
        assertEquals(Optional.empty(), Following.refusal(sessions, "Inhalation time", "As It Is"));
        assertEquals(
                new Refusal("none of these sessions has a measure 'seal'", "they have 'breathing'"),
                Following.refusal(sessions, "seal", "plain").orElseThrow());
        assertEquals(
                new Refusal(
                        "none of these sessions has a condition 'bare'",
                        "they have 'disc' and 'plain'"),
                Following.refusal(sessions, "breathing", "bare").orElseThrow());
    }
}
