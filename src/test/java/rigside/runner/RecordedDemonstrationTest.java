package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.Journal;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.journal.Stamp;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Recorded;

/**
 * The recorded session of demo/ (invented data), read back and rehearsed again from what its
 * journal holds.
 */
class RecordedDemonstrationTest {
    private static final Path RECORDED = Path.of("demo", "recorded-session");
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    @TempDir Path temporary;

    @Test
    void itIsWholeClosedAndMarkedAsInvented() {
        Reading reading = JournalReader.read(RECORDED);
        assertEquals(List.of(), reading.damage());
        assertTrue(reading.torn().isEmpty());
        assertTrue(reading.state().course().closed());
        assertTrue(reading.state().opening().orElseThrow().event().simulated());
        assertTrue(reading.state().captured().lastLook().orElseThrow().enough());
    }

    @Test
    void itsProtocolAndSeedGiveTheSameSessionAgain() throws Exception {
        List<Recorded> recorded = JournalReader.read(RECORDED).events();
        List<Recorded> again = JournalReader.read(rehearsed("again", MORNING)).events();
        assertEquals(told(recorded), told(again));
    }

    @Test
    void twoRehearsalsAreTheSameByteForByteApartFromWallTimes() throws Exception {
        String first = journal(rehearsed("first", MORNING));
        String second = journal(rehearsed("second", MORNING.plusDays(40)));
        assertNotEquals(first, second);
        assertEquals(withoutWall(first), withoutWall(second));
    }

    /**
     * Numbers of looks come from quadrature, whose last digit another processor may round
     * otherwise: verdicts are told. Cues were not kept when the session was recorded.
     */
    private static List<String> told(List<Recorded> events) {
        List<String> told = new ArrayList<>();
        for (Recorded each : events) {
            if (each.event() instanceof Event.Cued) {
                continue;
            }
            String what =
                    each.event() instanceof Event.LookTaken taken
                            ? taken.look().lines().stream()
                                    .map(Look.Line::verdict)
                                    .toList()
                                    .toString()
                            : each.event().toString();
            told.add(each.at() + " " + what);
        }
        return told;
    }

    private Path rehearsed(String name, ZonedDateTime start) throws Exception {
        Event.SessionOpened opening =
                (Event.SessionOpened) JournalReader.read(RECORDED).events().get(0).event();
        Path sessions = Files.createDirectory(temporary.resolve(name));
        try (Journal journal = Journal.create(sessions, opening.protocolName(), start)) {
            Rehearsal.run(
                    (events, wall, at) -> journal.append(events, new Stamp(wall, at)),
                    Rigs.of(opening, JournalReader.read(RECORDED).state().protocol()),
                    start,
                    opening);
            return journal.folder();
        }
    }

    private static String journal(Path folder) throws IOException {
        return Files.readString(folder.resolve("journal.jsonl"));
    }

    private static String withoutWall(String journal) {
        return journal.replaceAll("\"wall\":\"[^\"]*\",|,\"hash\":\"[^\"]*\"", "");
    }
}
