package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.analysis.PlanTable;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.Wearer;
import rigside.rig.WearerWriter;
import rigside.session.Event;
import rigside.session.Story;

/**
 * Whole sessions, played with the program's own runner, come to what the plan's simulation of plain
 * normal values lets one expect: two roads to the same figures.
 */
class RehearsalsTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final int SESSIONS = 300;

    /** The distance that is allowed, in standard errors of so many sessions. */
    private static final double ERRORS = 4;

    @ParameterizedTest
    @ValueSource(strings = {"none", "10%", "25%"})
    void manySessionsAgreeWithWhatThePlanForecasts(String change) throws IOException {
        String text = Story.text("/rehearsal/one-number.yaml");
        Protocol protocol = ((Read.Good) ProtocolReader.read("one.yaml", text)).protocol();
        Assumed assumed =
                AssumedReader.read(protocol, List.of("flow=" + change), List.of()).assumed();
        Wearer wearer = AssumedWearer.of(protocol, Optional.empty(), assumed);
        Rehearsals all =
                Rehearsals.play(
                        protocol,
                        Truth.of(protocol, wearer),
                        1,
                        SESSIONS,
                        seed -> {
                            Event.SessionOpened opening =
                                    new Event.SessionOpened(
                                            "test",
                                            "one.yaml",
                                            text,
                                            seed,
                                            wearer.title(),
                                            WearerWriter.text(wearer),
                                            true,
                                            1);
                            Faults none = Faults.of(protocol, List.of(), seed);
                            Tester tester = new Tester(Rigs.of(opening, protocol), none);
                            return Rehearsals.forgotten(tester, none, MORNING, opening);
                        });
        Rehearsals.Comparison found = all.comparisons().get(0);
        PlanTable.Outcome expected = found.expected().orElseThrow();
        assertShare(expected.meaningful(), found.meaningful(), "meaningful");
        assertShare(expected.noMeaningful(), found.noMeaningful(), "no meaningful");
        assertTrue(found.roundsError() > 0 && found.roundsError() < 0.3);
        assertEquals(expected.meanRounds(), found.meanRounds(), ERRORS * found.roundsError());
        assertEquals(found.meanRounds(), all.meanRounds(), 1e-9, "the only one that decides");
    }

    /** The standard error of a share of so many sessions, and one session for the last step. */
    private static void assertShare(double share, int count, String what) {
        double error = Math.sqrt(share * (1 - share) / SESSIONS);
        assertEquals(share, count / (double) SESSIONS, ERRORS * error + 1.0 / SESSIONS, what);
    }
}
