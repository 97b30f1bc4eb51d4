package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.RawReadings;
import rigside.protocol.Protocol;
import rigside.rig.Asked;
import rigside.rig.Rig;
import rigside.rig.Span;
import rigside.session.Event;
import rigside.session.Story;

class RigsTest {
    private static final long SECOND = 1_000_000_000L;
    private static final Protocol SMALL = Story.of("/session/small.yaml").state().protocol();
    private static final String BENCH =
            """
            format: 1
            title: bench (invented)
            feeds:
              - {id: counter, quantity: mask-concentration, replay: trace.tsv, column: 1, unit: /cm3}
            """;

    @TempDir Path folder;

    @Test
    void withoutARigFileEverythingIsTyped() {
        try (RawReadings raw = RawReadings.in(folder);
                Rig rig = Rigs.open(opening("", false), SMALL, () -> 0, raw)) {
            assertEquals("typed", rig.words());
        }
    }

    @Test
    void pathsStartFromTheFolderOfTheRigFileAndLinesAreKept() throws IOException {
        Files.writeString(folder.resolve("trace.tsv"), "0.0\t40\n1.0\t60\n");
        try (RawReadings raw = RawReadings.in(folder);
                Rig rig = Rigs.open(opening(BENCH, true), SMALL, () -> 0, raw)) {
            assertTrue(rig.simulated(), "of another time");
            rig.pass(2 * SECOND);
            assertEquals(OptionalDouble.of(50e6), rig.answer(mask(0, 2)));
        }
        assertEquals(
                "seconds\tline\n0.000000\t40\n1.000000\t60\n",
                Files.readString(RawReadings.file(folder, "counter")));
    }

    @Test
    void aWindowFromBeforeABreakIsAnsweredFromWhatWasKept() throws IOException {
        Files.writeString(
                RawReadings.file(folder, "counter"),
                "seconds\tline\n1.000000\t30\n2.000000\tjunk\n3.000000\t50\n4.0");
        try (RawReadings raw = RawReadings.in(folder);
                Rig rig = Rigs.open(opening(BENCH, true), SMALL, () -> 100 * SECOND, raw)) {
            assertEquals(OptionalDouble.of(40e6), rig.answer(mask(0, 3)));
            assertFalse(
                    rig.pass(100 * SECOND).stream().anyMatch(each -> each.words().contains("junk")),
                    "told before the break");
        }
    }

    @Test
    void aRehearsalNeedsAWearer() {
        assertThrows(IllegalArgumentException.class, () -> Rigs.of(opening(BENCH, true), SMALL));
    }

    private static Asked mask(long from, long to) {
        return new Asked(
                Asked.Kind.MASK,
                1,
                "plain",
                2,
                0,
                0,
                0,
                Optional.of(new Span(from * SECOND, to * SECOND, true)));
    }

    private Event.SessionOpened opening(String rig, boolean simulated) {
        return new Event.SessionOpened(
                "test",
                "small.yaml",
                Story.text("/session/small.yaml"),
                7,
                "",
                rig,
                simulated,
                1,
                folder.toString());
    }
}
