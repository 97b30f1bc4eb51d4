package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfTest {
    @TempDir Path own;

    @Test
    void whateverLiesInTheProjectsFoldersComesWithTheProgram() throws IOException {
        Set<String> there = new TreeSet<>();
        for (String folder : List.of("protocols", "demo")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.map(file -> "/" + folder + "/" + file.getFileName())
                        .filter(name -> name.endsWith(".yaml") && !name.endsWith(".rig.yaml"))
                        .forEach(there::add);
            }
        }
        assertEquals(there, new TreeSet<>(Shelf.SHIPPED));
    }

    @Test
    void everythingThatComesWithTheProgramCanBeRun() throws IOException {
        for (ProtocolFile file : Shelf.all(own.resolve("missing"))) {
            assertEquals(List.of(), file.problems(), file.name());
            assertEquals(List.of(), file.rigProblems(), file.name());
        }
    }

    @Test
    void theDemonstrationHasAWearerOfItsOwn() throws IOException {
        assertFalse(Shelf.find("prefilter-disc", own).orElseThrow().rigText().isEmpty());
    }

    @Test
    void theTestersOwnGoFirstWithTheirProblems() throws IOException {
        Files.writeString(own.resolve("b.yml"), "format: 1\n");
        Files.writeString(own.resolve("a.yaml"), "format: one\n");
        Files.writeString(own.resolve("a.rig.yaml"), "format: 1\n");
        Files.writeString(own.resolve("notes.txt"), "not a protocol");
        Files.writeString(own.resolve(".hidden.yaml"), "format: 1\n");
        List<ProtocolFile> all = Shelf.all(own);
        assertEquals(
                List.of("a.yaml", "b.yml"), all.stream().limit(2).map(ProtocolFile::name).toList());
        assertEquals(2 + Shelf.SHIPPED.size(), all.size());
        assertTrue(all.get(0).problems().get(0).startsWith("a.yaml:1:9: "));
        assertTrue(all.get(0).rigProblems().get(0).startsWith("a.rig.yaml:1:1: "));
    }

    @Test
    void oneIsFoundByFileByNameAndByBareName() throws IOException {
        Path file = Files.writeString(own.resolve("mine.yaml"), "format: 1\n");
        assertEquals(file.toString(), Shelf.find(file.toString(), own).orElseThrow().name());
        assertEquals("mine.yaml", Shelf.find("mine.yaml", own).orElseThrow().name());
        assertEquals("mine.yaml", Shelf.find("mine", own).orElseThrow().name());
        assertTrue(Shelf.find("other", own).isEmpty());
    }

    /** The memory of a process is a file on Linux, and nobody can read its beginning. */
    @Test
    void oneThatCannotBeReadIsListedWithTheReasonAndTakesNoOtherAway() throws IOException {
        Path nobodyReads = Path.of("/proc/self/mem");
        assumeTrue(Files.isRegularFile(nobodyReads));
        Files.writeString(own.resolve("sound.yaml"), "format: one\n");
        Files.createSymbolicLink(own.resolve("silent.yaml"), nobodyReads);
        String reason = ":1:1: the file cannot be read: Input/output error";
        assertEquals(
                List.of("silent.yaml" + reason),
                Shelf.find("silent", own).orElseThrow().problems());
        assertTrue(Shelf.find("breathing-only", own).orElseThrow().protocol().isPresent());
        Files.createSymbolicLink(own.resolve("sound.rig.yaml"), nobodyReads);
        assertEquals(
                List.of("sound.rig.yaml" + reason),
                Shelf.find("sound", own).orElseThrow().problems());
        assertEquals(List.of("sound.rig.yaml" + reason), Shelf.rigs(own).get(0).problems());
        Files.delete(own.resolve("silent.yaml"));
        Files.delete(own.resolve("sound.rig.yaml"));
    }

    @Test
    void aFileIsReadOnlyAsFarAsItTakesToSeeThatItIsTooLarge() throws IOException {
        Files.writeString(own.resolve("large.yaml"), "#".repeat(600_000));
        ProtocolFile large = Shelf.find("large", own).orElseThrow();
        assertEquals(256 * 1024 + 1, large.text().length());
        assertEquals(1, large.problems().size());
    }
}
