package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.Journal;
import rigside.journal.Stamp;
import rigside.session.Event;

class EnterTest {
    private static final ZonedDateTime WALL = ZonedDateTime.parse("2026-11-20T09:16:00+01:00");

    @TempDir private Path home;

    @Test
    void aFormThatIsHalfTypedInIsNotBegunAnewAndTheLineThatGoesOnWithItIsTold() throws Exception {
        Path protocol = Path.of("demo", "prefilter-disc.yaml");
        String folder = begin(Files.readString(protocol), 11);
        StringWriter said = new StringWriter();
        int exit =
                Rigside.commandLine()
                        .setErr(new PrintWriter(said, true))
                        .execute(
                                "enter",
                                protocol.toString(),
                                "--seed",
                                "11",
                                "--home",
                                home.toString());
        assertEquals(Exit.PROBLEMS, exit);
        assertTrue(
                said.toString().contains("rigside resume " + folder + " --home '" + home + "'"),
                said.toString());
    }

    private String begin(String text, long seed) throws Exception {
        try (Journal journal = Journal.create(home.resolve("sessions"), "prefilter-disc", WALL)) {
            journal.append(
                    List.of(
                            new Event.SessionOpened(
                                    "0.1.0",
                                    "prefilter-disc.yaml",
                                    text,
                                    seed,
                                    "typed",
                                    "",
                                    false,
                                    1,
                                    "",
                                    Optional.of(new Event.Paper(Optional.empty())))),
                    new Stamp(WALL, 0));
            return journal.folder().getFileName().toString();
        }
    }
}
