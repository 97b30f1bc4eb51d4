package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.protocol.Protocol;
import rigside.session.Event;
import rigside.session.Story;

class RigChoiceTest {
    private static final String BENCH =
            """
            format: 1
            title: bench (invented)
            feeds:
              - {id: gauge, quantity: mask-pressure, file: g.csv, column: 1, unit: Pa}
            """;

    @TempDir Path rigs;

    @Test
    void theKeyGoesThroughTypedSimulatedAndEveryRigFile() throws IOException {
        write("a.rig.yaml", BENCH);
        write("b.rig.yaml", BENCH.replace("file:", "replay:"));
        write("notes.txt", "no rig");
        List<RigOnDisk> all = Shelf.rigs(rigs);
        assertEquals(2, all.size());
        Choice choice = Choice.TYPED;
        choice = choice.other(all);
        assertTrue(choice.simulated());
        choice = choice.other(all);
        assertEquals("from instruments: bench (invented) (a.rig.yaml)", choice.shown().words());
        assertFalse(choice.isInvented());
        assertEquals(1, choice.effectiveSpeed());
        choice = choice.other(all);
        assertEquals(
                "from recorded traces, of another time: bench (invented) (b.rig.yaml)",
                choice.shown().words());
        assertTrue(choice.isInvented());
        assertEquals(1, choice.effectiveSpeed());
        assertEquals(Choice.TYPED, choice.other(all));
        assertEquals(Choice.TYPED, choice.other(List.of()), "the file has gone meanwhile");
    }

    @Test
    void aRigFileIsFoundByPathAndByName() throws IOException {
        Path file = write("a.rig.yaml", BENCH);
        for (String word : List.of("a", "a.rig.yaml", file.toString())) {
            assertTrue(Shelf.findRig(word, rigs).isPresent(), word);
        }
        assertEquals(Optional.empty(), Shelf.findRig("b", rigs));
        assertEquals(Optional.empty(), Shelf.findRig("a", rigs.resolve("none")));
    }

    @Test
    void aRigFileWithProblemsIsShownAsOne() throws IOException {
        write("a.rig.yaml", BENCH.replace("Pa", "bar"));
        Choice choice = Choice.of(Shelf.rigs(rigs).get(0), 30);
        assertEquals("rig file a.rig.yaml, which has problems", choice.shown().words());
        assertEquals(1, choice.named().orElseThrow().problems().size());
    }

    @Test
    void aSessionsOpeningHoldsTheRigFileAndWhereItsPathsStart() throws IOException {
        write("a.rig.yaml", BENCH);
        ProtocolFile protocol =
                ProtocolFile.of("small.yaml", Story.text("/session/small.yaml"), "");
        Protocol read = protocol.protocol().orElseThrow();
        Choice choice = Choice.of(Shelf.rigs(rigs).get(0), 30);
        Event.SessionOpened opening = Openings.of(protocol, read, choice, 7, "test");
        assertEquals("instruments: bench (invented)", opening.rig());
        assertEquals(BENCH, opening.rigText());
        assertEquals(rigs.toAbsolutePath().normalize().toString(), opening.rigFolder());
        assertFalse(opening.simulated());
        assertEquals("", Openings.of(protocol, read, Choice.TYPED, 7, "test").rigFolder());
    }

    @Test
    void instrumentsBesideAProtocolAreNoWearer() {
        ProtocolFile protocol =
                ProtocolFile.of("small.yaml", Story.text("/session/small.yaml"), BENCH);
        Protocol read = protocol.protocol().orElseThrow();
        Event.SessionOpened opening = Openings.of(protocol, read, new Choice(true, 30), 7, "test");
        assertEquals("simulated: a plain invented wearer", opening.rig());
        assertEquals("", opening.rigText());
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(rigs.resolve(name), text);
    }
}
