package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackageFolderTest {
    private static final Map<String, byte[]> PACKAGE =
            Map.of(
                    "datapackage.json",
                    bytes(
                            "{\"rigside-program-version\":\"1\",\"resources\":[{\"path\":\"a.csv\"}]}"),
                    "a.csv",
                    bytes("a\r\n1\r\n"));

    @TempDir Path home;

    @Test
    void aFolderThatIsNotThereOrEmptyIsFree() throws IOException {
        assertEquals(PackageFolder.Taken.NOTHING, PackageFolder.taken(home.resolve("none")));
        assertEquals(PackageFolder.Taken.NOTHING, PackageFolder.taken(home));
    }

    @Test
    void anEarlierPackageIsKnownByWhatItNames() throws IOException {
        Path folder = home.resolve("deep").resolve("data");
        PackageFolder.write(folder, PACKAGE);
        assertEquals(PackageFolder.Taken.EARLIER_PACKAGE, PackageFolder.taken(folder));
        assertEquals(List.of("data"), names(folder.getParent()));
        Files.delete(folder.resolve("a.csv"));
        assertEquals(PackageFolder.Taken.EARLIER_PACKAGE, PackageFolder.taken(folder));
        Files.writeString(folder.resolve("notes.txt"), "mine");
        assertEquals(PackageFolder.Taken.SOMETHING_ELSE, PackageFolder.taken(folder));
    }

    @Test
    void packagesOfOthersPlainFilesAndLinksAreSomethingElse() throws IOException {
        Path other = Files.createDirectory(home.resolve("other"));
        Files.writeString(other.resolve("datapackage.json"), "{\"resources\":[]}");
        assertEquals(PackageFolder.Taken.SOMETHING_ELSE, PackageFolder.taken(other));
        Files.writeString(other.resolve("datapackage.json"), "not JSON");
        assertEquals(PackageFolder.Taken.SOMETHING_ELSE, PackageFolder.taken(other));
        Path file = Files.writeString(home.resolve("file"), "x");
        assertEquals(PackageFolder.Taken.SOMETHING_ELSE, PackageFolder.taken(file));
        Path link = Files.createSymbolicLink(home.resolve("link"), other);
        assertEquals(PackageFolder.Taken.SOMETHING_ELSE, PackageFolder.taken(link));
    }

    @Test
    void anEarlierPackageIsReplacedAsAWhole() throws IOException {
        Path folder = home.resolve("data");
        PackageFolder.write(folder, PACKAGE);
        PackageFolder.write(
                folder, Map.of("datapackage.json", bytes("{}"), "b.csv", bytes("b\r\n")));
        assertEquals(List.of("b.csv", "datapackage.json"), names(folder));
        assertEquals(List.of("data"), names(home));
    }

    @Test
    void whatCannotBeWrittenLeavesWhatWasThere() throws IOException {
        Path folder = home.resolve("data");
        PackageFolder.write(folder, PACKAGE);
        Map<String, byte[]> broken = Map.of("no/such/folder.csv", bytes("x"));
        assertThrows(IOException.class, () -> PackageFolder.write(folder, broken));
        assertEquals(List.of("a.csv", "datapackage.json"), names(folder));
        assertEquals(List.of("data"), names(home));
        assertThrows(IOException.class, () -> PackageFolder.write(home.resolve("new"), broken));
        assertFalse(Files.exists(home.resolve("new")));
        assertTrue(Files.exists(folder));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }
}
