package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

class SpreadsForPlanTest {

    private static Optional<SpreadOnRecord> breathing(Protocol protocol, SomeValues... sessions) {
        return of(protocol, "breathing", sessions);
    }

    private static Optional<SpreadOnRecord> of(
            Protocol protocol, String measure, SomeValues... sessions) {
        return SpreadsForPlan.of(
                protocol,
                protocol.measure(measure).orElseThrow(),
                Stream.of(sessions).map(SomeValues::session).toList());
    }

    /** The demonstration with a line more in its plan. */
    private static Protocol planned(String line) {
        return Protocols.with("  most: 8\n", "  most: 8\n  " + line + "\n");
    }

    /** What R gives for these sessions, see {@link Expected}. */
    @Test
    void aPlanByRoundsTakesTheSpreadOfDifferencesWithinThem() {
        SpreadOnRecord.Found found =
                breathing(Protocols.demo(), Expected.THREE, Expected.TWO, Expected.ONE)
                        .flatMap(each -> each.planned(Plan.Design.ROUNDS))
                        .orElseThrow();
        Expected.near("value_spread", found.spread());
        Expected.near("upper80", found.upper());
        assertEquals(3, found.sessions());
    }

    /** The same, with independent donnings. */
    @Test
    void aPlanOfIndependentDonningsTakesTheirs() {
        Protocol protocol = planned("design: independent\n  replicates: donnings");
        SpreadOnRecord spread =
                breathing(protocol, Expected.THREE, Expected.TWO, Expected.ONE).orElseThrow();
        Expected.near(
                "donning_spread", spread.planned(protocol.plan().design()).orElseThrow().spread());
        String words = SpreadOnRecordWords.planned(spread, protocol.plan().design()).orElseThrow();
        assertTrue(words.endsWith("from 18 donnings in 3 sessions"), words);
    }

    @Test
    void whatTheSessionsCallTheMeasureDoesNotMatter() {
        Protocol renamed = Protocols.with("breathing", "pulls");
        assertEquals(
                breathing(Protocols.demo(), Expected.TWO).orElseThrow().differences(),
                of(renamed, "pulls", Expected.TWO).orElseThrow().differences());
        assertEquals("pulls", of(renamed, "pulls", Expected.TWO).orElseThrow().measure().id());
    }

    @Test
    void whatNoSessionTellsIsEmpty() {
        assertTrue(of(Protocols.demo(), "seal", Expected.TWO).isEmpty());
        assertTrue(breathing(Protocols.demo()).isEmpty());
        double[] one = {6.1};
        assertTrue(breathing(Protocols.demo(), SomeValues.on("2026-03-02", one, one)).isEmpty());
        SomeValues bounded = Expected.TWO.with(SomeValues.value("plain", 5, 6, 12, true, false));
        assertTrue(breathing(Protocols.demo(), bounded).isEmpty());
    }

    /** The archive keeps values of donnings; a trial's spread is another and mostly smaller one. */
    @Test
    void whereTrialsAreValuesNoSpreadOfDonningsIsTaken() throws IOException {
        String text =
                Files.readString(Path.of("protocols", "breathing-only.yaml"))
                        .replace(
                                "  most: 10\n",
                                "  most: 10\n  design: independent\n  replicates: trials\n");
        Protocol protocol = ((Read.Good) ProtocolReader.read("trials.yaml", text)).protocol();
        assertEquals(Plan.Design.INDEPENDENT_TRIALS, protocol.plan().design());
        assertTrue(breathing(protocol, Expected.TWO).isEmpty());
    }

    @Test
    void sessionsInWhichTheMaskStayedOnSpeakForSuchPlansOnly() {
        Protocol staying = planned("mask: stays-on");
        assertTrue(staying.plan().maskStaysOn());
        SomeValues apart = Expected.TWO;
        // Two conditions of one piece, both at the same number of wearings.
        SomeValues stayed =
                new SomeValues(
                        "2026-03-30", "A", false, List.of("mask A", "mask A"), 0, apart.values());
        for (Protocol protocol : List.of(Protocols.demo(), staying)) {
            assertEquals(
                    1,
                    breathing(protocol, apart, stayed)
                            .flatMap(SpreadOnRecord::differences)
                            .orElseThrow()
                            .sessions());
        }
        assertTrue(breathing(Protocols.demo(), stayed).isEmpty());
        assertTrue(breathing(staying, apart).isEmpty());
    }

    @Test
    void ofSessionsThatDoNotMeasureItNothingIsRemarked() {
        assertEquals(
                List.of(),
                breathing(Protocols.demo(), Expected.TWO, Expected.ONE).orElseThrow().remarks());
        assertEquals(
                List.of("Simulated: every value of these sessions is invented."),
                breathing(Protocols.demo(), Expected.TWO.invented()).orElseThrow().remarks());
    }
}
