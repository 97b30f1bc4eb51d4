package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.protocol.Protocol;

class PoolTest {

    private static Chosen chosen(SomeValues session, long seed) {
        return new Chosen(session.session(), Optional.of(Protocols.demo()), seed);
    }

    private static String refused(Chosen... sessions) {
        return Pool.refusal(List.of(sessions)).orElseThrow().what();
    }

    private final Chosen one = chosen(Expected.ONE, 1);
    private final Chosen two = chosen(Expected.TWO, 2);

    @Test
    void sessionsOfOneProtocolAndWearerArePooled() {
        assertEquals(Optional.empty(), Pool.refusal(List.of(one, two)));
        Chosen inSmallLetters = chosen(Expected.TWO.by("a"), 2);
        assertEquals(Optional.empty(), Pool.refusal(List.of(one, inSmallLetters)));
    }

    @Test
    void whatIsNotTwoSessionsOfOneWearerIsRefused() {
        assertEquals("pooling takes two sessions, there is none", refused());
        assertEquals("pooling takes two sessions, there is one", refused(one));
        assertEquals(
                "2026-03-02 is named twice, or is a copy of another one", refused(one, two, one));
        assertEquals(
                "simulated sessions are not set beside real ones: 2026-03-09 is invented",
                refused(one, chosen(Expected.TWO.invented(), 2)));
        assertEquals(
                "not the same wearer: 2026-03-02 was worn by 'A', 2026-03-09 was worn by 'B'",
                refused(one, chosen(Expected.TWO.by("B"), 2)));
    }

    @Test
    void aSessionThatIsOpenOrDamagedIsRefused() {
        Archived open = SomeSession.in(Path.of("open")).begun("2026-04-01T09:00:00Z").archived();
        assertEquals(
                "open is still open",
                refused(
                        one,
                        new Chosen(
                                new WithValues(open, List.of()),
                                Optional.of(Protocols.demo()),
                                3)));
        assertEquals(
                "none/journal.jsonl: there is no such file",
                refused(one, Chosen.read(Path.of("none/journal.jsonl"))));
    }

    /** What differs is named; what may differ between two days is not asked. */
    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "for: 30 s|for: 40 s|the step 'Purge' of a donning",
                "particle-reading: seal-only|particle-reading: seal-and-filter|what a particle"
                        + " reading holds in 'plain'",
                "detection-limit: 0.1 /cm3|detection-limit: 0.2 /cm3|how 'seal' is measured or"
                        + " compared",
                "id: with-disc|id: disc|the conditions: plain and with-disc there, plain and disc"
                        + " here",
                "worn-before: 12|worn-before: 30|",
                "meaningful: 15 %|meaningful: 20 %|",
                "most: 8|most: 9|",
                "expected-spread: 5 %|expected-spread: 4 %|",
                "Pre-filter disc on|Disc on|",
                "(invented), disc 1|(invented), disc 2|"
            })
    void aDifferentTestIsRefusedByWhatDiffers(String words, String others, String differs) {
        assertEquals(
                Optional.ofNullable(differs),
                Alike.difference(Protocols.demo(), Protocols.with(words, others)));
    }

    @Test
    void aTestInWhichNothingIsWornIsAnotherOne() {
        assertEquals(
                Optional.of("the conditions: plain and with-disc there, none here"),
                Alike.difference(Protocols.demo(), Protocols.check()));
    }

    @Test
    void anotherPieceIsRemarked() {
        Chosen other =
                new Chosen(
                        Expected.TWO.session(),
                        Optional.of(Protocols.with("(invented), disc 1", "(invented), disc 2")),
                        2);
        List<String> remarks = Alike.remarks(one.protocol().get(), other.protocol().get(), "it");
        assertEquals(
                List.of(
                        "it wore another piece as 'Half mask with disc': half mask A (invented),"
                                + " disc 2, not half mask A (invented), disc 1."),
                remarks);
    }

    @Test
    void valuesThatStandByThemselvesAreNotPooledByRounds() {
        Optional<Protocol> independent =
                Optional.of(Protocols.with("  most: 8", "  most: 8\n  design: independent"));
        String refused =
                refused(
                        new Chosen(Expected.ONE.session(), independent, 1),
                        new Chosen(Expected.TWO.session(), independent, 2));
        assertTrue(refused.contains("set no rounds against each other"), refused);
    }
}
