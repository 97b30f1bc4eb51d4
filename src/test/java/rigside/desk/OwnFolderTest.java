package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnFolderTest {
    @TempDir Path home;

    private ProtocolFile demonstration() throws IOException {
        return Shelf.all(home.resolve("none")).get(0);
    }

    @Test
    void aShippedProtocolIsCopiedWithItsRigAndIsThenTheTestersOwn() throws IOException {
        Path protocols = home.resolve("protocols");
        ProtocolFile shipped = demonstration();
        Path copy = new OwnFolder(protocols).copy(shipped);
        assertEquals(protocols.resolve("prefilter-disc.yaml"), copy);
        assertEquals(shipped.text(), Files.readString(copy));
        ProtocolFile own = Shelf.all(protocols).get(0);
        assertTrue(own.isOwn());
        assertEquals(shipped.rigText(), own.rigText());
        assertFalse(own.isSameFile(shipped));
        assertFalse(shipped.isOwn());
    }

    @Test
    void aCopyNeverGoesOverAFileThatIsThere() throws IOException {
        OwnFolder folder = new OwnFolder(home);
        Files.writeString(home.resolve("prefilter-disc.yaml"), "mine");
        Files.writeString(home.resolve("prefilter-disc-2.rig.yaml"), "mine too");
        assertEquals(home.resolve("prefilter-disc-3.yaml"), folder.copy(demonstration()));
        assertEquals("mine", Files.readString(home.resolve("prefilter-disc.yaml")));
        assertEquals("mine too", Files.readString(home.resolve("prefilter-disc-2.rig.yaml")));
    }

    @Test
    void aNewFileIsRefusedWhereThereIsOne() throws IOException {
        OwnFolder folder = new OwnFolder(home.resolve("deep/below"));
        Path file = folder.write("a.yaml", "first");
        assertThrows(FileAlreadyExistsException.class, () -> folder.write("a.yaml", "second"));
        assertEquals("first", Files.readString(file));
        try (var files = Files.list(folder.folder())) {
            assertEquals(List.of(file), files.toList());
        }
    }
}
