package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.decide.Interval;
import rigside.protocol.Protocol;

class DaysApartTest {
    private static final Protocol PROTOCOL = Protocols.demo();

    private static Chosen chosen(SomeValues session) {
        return new Chosen(session.session(), Optional.of(PROTOCOL), 1);
    }

    private static DaysApart.Compared compared(String one, String two, SomeValues... archive) {
        return DaysApart.of(
                        chosen(Expected.ONE),
                        one,
                        chosen(Expected.TWO),
                        two,
                        Stream.of(archive).map(SomeValues::session).toList())
                .compared()
                .get(0);
    }

    private static SomeValues day(String day, double... plain) {
        return SomeValues.on(day, plain, new double[0]);
    }

    /** Logarithms of the ratios by hand: mean of the second session's less that of the first's. */
    @Test
    void throughTheReferenceItIsTheDifferenceOfDifferences() {
        DaysApart.Compared compared = compared("disc", "disc");
        double one = (Math.log(7.2 / 6.1) + Math.log(7.9 / 6.3) + Math.log(7.1 / 5.9)) / 3;
        double two =
                (Math.log(7.0 / 5.6)
                                + Math.log(6.8 / 5.9)
                                + Math.log(7.1 / 5.5)
                                + Math.log(7.2 / 5.8))
                        / 4;
        assertEquals(two - one, compared.through().orElseThrow().estimate(), 1e-14);
    }

    @Test
    void theReferenceItselfIsNotComparedThroughItself() {
        assertTrue(compared("plain", "disc").through().isEmpty());
        assertTrue(compared("plain", "plain").through().isEmpty());
    }

    @Test
    void withoutThreeOtherDaysThereIsNoIntervalThatDeservesTheName() {
        SomeValues other = day("2026-04-01", 6.0, 6.2);
        SomeValues later = day("2026-04-08", 5.1);
        DaysApart.Compared two = compared("plain", "disc", other, later);
        assertEquals(2, two.days());
        assertTrue(two.overDays().isEmpty());
        assertTrue(two.within().isPresent());
        String said = String.join("\n", words(two));
        assertTrue(said.contains("There is no interval that deserves the name"), said);
        assertTrue(said.contains("2 other days"), said);
        assertTrue(said.contains("too narrow"), said);
    }

    @Test
    void twoSessionsOfOneDayAreOneDay() {
        SomeValues morning = day("2026-04-01", 6.0, 6.2);
        SomeValues later = day("2026-04-08", 5.1);
        assertEquals(2, compared("plain", "disc", morning, morning, later).days());
    }

    @Test
    void theDaysComparedAreNoOtherDays() {
        SomeValues sameDay = day(Expected.ONE.day(), 6.0, 6.2).at("14:00");
        assertEquals(0, compared("plain", "disc", sameDay).days());
    }

    @Test
    void sidesThatTitleAndDayDoNotTellApartAreCalledByTheirSessions() {
        SomeValues sameDay = day(Expected.ONE.day(), 6.0, 6.2).at("14:00");
        assertEquals(
                "As it is (2026-03-02-1400), compared with As it is (2026-03-02)",
                DaysApart.of(chosen(Expected.ONE), "plain", chosen(sameDay), "plain", List.of())
                        .title());
        assertEquals(
                "With disc (2026-03-09), compared with As it is (2026-03-02)",
                DaysApart.of(chosen(Expected.ONE), "plain", chosen(Expected.TWO), "disc", List.of())
                        .title());
    }

    @Test
    void withThreeOtherDaysTheIntervalHoldsThem() {
        DaysApart.Compared compared =
                compared(
                        "plain",
                        "plain",
                        day("2026-04-01", 6.0, 6.2),
                        day("2026-04-08", 5.1),
                        day("2026-04-15", 6.9, 6.8));
        double wide = width(compared.overDays());
        assertEquals(3, compared.days());
        assertTrue(wide > 3 * width(compared.within()), "as wide as " + wide);
    }

    private static double width(Optional<Interval> interval) {
        return interval.orElseThrow().upper() - interval.orElseThrow().lower();
    }

    @Test
    void anotherWearerAnotherPieceOrInventedValuesTellNothingOfDays() {
        assertEquals(
                0,
                compared(
                                "plain",
                                "disc",
                                day("2026-04-01", 6.0).by("B"),
                                day("2026-04-08", 5.1).invented(),
                                day("2026-04-15", 6.9).wearing("mask B"),
                                Expected.ONE,
                                Expected.TWO)
                        .days());
    }

    private static List<String> words(DaysApart.Compared compared) {
        DaysApart apart =
                DaysApart.of(
                        chosen(Expected.ONE), "plain", chosen(Expected.TWO), "disc", List.of());
        return DaysApartWords.of(apart, compared);
    }

    @Test
    void whatCannotBeSetAgainstEachOtherIsRefused() {
        assertEquals(Optional.empty(), refusal(Expected.ONE, "plain", Expected.TWO, "disc"));
        assertEquals(
                "both conditions are of one session",
                refused(Expected.ONE, "plain", Expected.ONE, "disc"));
        assertEquals(
                "2026-03-09 has no condition 'part'",
                refused(Expected.ONE, "plain", Expected.TWO, "part"));
        assertEquals(
                "not the same wearer: 2026-03-02 was worn by 'A', 2026-03-09 was worn by 'B'",
                refused(Expected.ONE, "plain", Expected.TWO.by("B"), "disc"));
        assertEquals(
                "not the same wearer: 2026-03-02 was worn by 'A', 2026-03-09 names no wearer",
                refused(Expected.ONE, "plain", Expected.TWO.by(""), "disc"));
        assertEquals(
                "simulated sessions are not set beside real ones: 2026-03-09 is invented",
                refused(Expected.ONE, "plain", Expected.TWO.invented(), "disc"));
    }

    private static String refused(SomeValues one, String a, SomeValues two, String b) {
        return refusal(one, a, two, b).orElseThrow().what();
    }

    private static Optional<Refusal> refusal(SomeValues one, String a, SomeValues two, String b) {
        return DaysApart.refusal(chosen(one), a, chosen(two), b);
    }
}
