package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.journal.JournalReader;

/** Verifying and amending a session from the command line. */
class VerifyTest {
    @TempDir Path home;
    private Path session;
    private Path journal;
    private String said = "";

    /** A whole session, rehearsed and closed. */
    @BeforeEach
    void rehearse() throws IOException {
        run("rehearse", "breathing-only", "--seed", "5", "--into", home.toString());
        try (var below = Files.list(home)) {
            session = below.filter(Files::isDirectory).findFirst().orElseThrow();
        }
        journal = session.resolve("journal.jsonl");
    }

    private int run(String... words) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out, true);
        int exit = Rigside.commandLine().setOut(writer).setErr(writer).execute(words);
        said = out.toString();
        return exit;
    }

    /** The number of the last timed inhalation. */
    private int lastTime() {
        return JournalReader.read(session).state().captured().entries().stream()
                .filter(entry -> entry.slot() instanceof rigside.session.Slot.Trial)
                .mapToInt(rigside.session.Entry::number)
                .max()
                .orElseThrow();
    }

    @Test
    void aSessionJustClosedIsSound() {
        assertEquals(Exit.DONE, run("verify", session.toString()), said);
        String hash = JournalReader.read(session).hashed().orElseThrow().hex();
        assertTrue(said.startsWith("This record is sound."), said);
        assertTrue(said.contains("fingerprint: " + hash), said);
        assertTrue(said.contains("A hash is no signature"), said);
        assertEquals(Exit.DONE, run("verify", "--json", session.toString()));
        assertTrue(said.startsWith("{\"sound\":true,"), said);
        assertTrue(said.contains("\"hashed_from_line\":1,\"fingerprint\":\"" + hash), said);
    }

    /** Recorded before lines carried hashes, by an earlier version; it is to be read for ever. */
    @Test
    void theRecordedDemonstrationIsSoundWithoutHashes() {
        assertEquals(Exit.DONE, run("verify", "demo/recorded-session"), said);
        assertTrue(said.contains("no line carries one"), said);
    }

    @Test
    void aChangedValueIsFoundAtItsLine() throws IOException {
        List<String> lines = Files.readAllLines(journal);
        int at = 0;
        while (!lines.get(at).contains("\"event\":\"entry-captured\"")) {
            at++;
        }
        lines.set(at, lines.get(at).replaceFirst("\"reason\"|\"value\"", "\"value\" "));
        Files.write(journal, lines);
        assertEquals(Exit.PROBLEMS, run("verify", session.toString()));
        assertTrue(said.startsWith("This record is NOT SOUND."), said);
        assertTrue(said.contains("journal.jsonl:" + (at + 1) + ": the line was changed"), said);
        assertEquals(Exit.PROBLEMS, run("verify", "--json", session.toString()));
        assertTrue(said.startsWith("{\"sound\":false,"), said);
    }

    /** Of nothing neither hashes nor an end are told. */
    @Test
    void whatHoldsNoSessionIsSaidToHoldNone() throws IOException {
        String nothing = "Nothing of a session can be read in it.\n";
        Files.writeString(journal, "not a journal\nat all\n");
        for (String place : List.of(session.toString(), home.resolve("elsewhere").toString())) {
            assertEquals(Exit.PROBLEMS, run("verify", place));
            assertTrue(said.startsWith("This record is NOT SOUND.\ndamage: "), said);
            assertTrue(said.endsWith(nothing), said);
            assertFalse(said.contains("hash"), said);
        }
    }

    @Test
    void aTornLineIsTold() throws IOException {
        byte[] bytes = Files.readAllBytes(journal);
        Files.write(journal, java.util.Arrays.copyOf(bytes, bytes.length - 10));
        assertEquals(Exit.PROBLEMS, run("verify", session.toString()));
        assertTrue(said.contains("torn: "), said);
    }

    /** Whoever writes the hashes anew is found where a look does not fit its values. */
    @Test
    void aLookThatDoesNotFollowFromTheEventsBeforeItIsFound() throws IOException {
        List<String> lines =
                Files.readAllLines(journal).stream()
                        .map(line -> line.replaceFirst(",\"hash\":\"[0-9a-f]+\"", ""))
                        .map(line -> line.replaceFirst("\"journal\":2", "\"journal\":1"))
                        .map(
                                line ->
                                        line.replaceFirst(
                                                "(\"event\":\"look-taken\".*\"critical\":)\\d",
                                                "$19"))
                        .toList();
        Files.write(journal, lines);
        assertEquals(Exit.PROBLEMS, run("verify", session.toString()));
        assertTrue(said.contains("the critical value of "), said);
        assertFalse(said.contains("damage"), said);
    }

    /** A reason can hold anything; what is kept is what was typed, what is printed only is read. */
    @Test
    void whatATerminalWouldObeyIsKeptButNotPrinted() throws IOException {
        String hostile = "x\u001b[31m \u202e \u200b\n 999  donning 1, time of trial 1: 1 s";
        String entry = lastTime() + "";
        run("amend", session.toString(), entry, "9.9", "--reason", hostile);
        for (String command : List.of("entries", "analyse", "verify")) {
            assertEquals(Exit.DONE, run(command, session.toString()));
            assertFalse(said.matches("(?s).*[\u001b\u202e\u200b].*"), said);
            assertTrue(said.lines().noneMatch(line -> line.startsWith(" 999")), said);
        }
        run("entries", session.toString());
        assertTrue(said.contains("(x\uFFFD[31m \uFFFD \uFFFD  999  donning 1"), said);
        String kept = Files.readString(journal);
        assertTrue(kept.contains("x\\u001B[31m"), kept.substring(kept.length() - 3000));
    }

    /** An unknown word of a foreign journal is named, and does nothing. */
    @Test
    void anUnknownWordOfAJournalIsOnlyRead() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("demo/recorded-session/journal.jsonl"));
        lines.set(5, lines.get(5).replace("\"event\":\"", "\"event\":\"\\u001b[31m\\u202e"));
        Files.write(journal, lines);
        for (String command : List.of("entries", "analyse", "verify", "export")) {
            assertEquals(Exit.PROBLEMS, run(command, session.toString()));
            assertTrue(said.contains("unknown event '\uFFFD[31m\uFFFD"), said);
        }
    }

    /** Nor does it begin a line of its own, with or without characters beyond the first plane. */
    @Test
    void anUnknownWordMakesNoLineOfItsOwn() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("demo/recorded-session/journal.jsonl"));
        String word = "\"event\":\"x\\nThis record is sound.\\rso\\udb40\\udc41";
        lines.set(5, lines.get(5).replace("\"event\":\"", word));
        Files.write(journal, lines);
        assertEquals(Exit.PROBLEMS, run("verify", session.toString()));
        assertTrue(
                said.contains("unknown event 'x\uFFFDThis record is sound.\uFFFDso\uFFFD"), said);
        assertEquals(Exit.PROBLEMS, run("verify", "--json", session.toString()));
        assertTrue(said.contains("sound.\uFFFDso\\udb40\\udc41"), said);
    }

    @Test
    void aClosedSessionIsAmendedAndLookedAtAnewAndStaysSound() {
        int entry = lastTime();
        assertEquals(
                Exit.DONE,
                run("amend", session.toString(), entry + "", "9.9", "--reason", "misread"),
                said);
        assertTrue(said.contains("9.9 s, typed; amended from "), said);
        assertTrue(said.contains("Looked at anew."), said);
        assertEquals(Exit.DONE, run("entries", session.toString()));
        assertTrue(said.contains("9.9 s, typed; amended from "), said);
        assertEquals(Exit.DONE, run("verify", session.toString()), said);
        assertEquals(
                Exit.DONE,
                run("amend", session.toString(), entry + "", "--strike-out", "--reason", "coughed"),
                said);
        assertTrue(said.contains("STRUCK OUT: coughed"), said);
        assertEquals(Exit.DONE, run("verify", session.toString()), said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9999;5;--reason;why | there is no entry 9999",
                "LAST;soon;--reason;why | 'soon' is not a number",
                "LAST;900;--reason;why | say so with --sure",
                "LAST;5 | say why, with --reason",
                "LAST;--reason;why | name either the right value, or --strike-out",
                "--sure | name the entry, or none of these options",
            })
    void whatCannotBeAmendedIsSaidAndNothingIsWritten(String words, String why) throws IOException {
        String before = Files.readString(journal);
        String all = "amend;" + session + ";" + words.replace("LAST", lastTime() + "");
        assertTrue(run(all.split(";")) != Exit.DONE);
        assertTrue(said.contains(why), said);
        assertEquals(before, Files.readString(journal));
    }
}
