package rigside.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder that holds a data package and nothing else: it is there with all its files or not at
 * all, and never in the place of what somebody else put there.
 */
public final class PackageFolder {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What stands in the way of writing a package. */
    public enum Taken {
        NOTHING,
        /** An earlier package of ours, with nothing beside its own files. */
        EARLIER_PACKAGE,
        /** Anything else. */
        SOMETHING_ELSE
    }

    private PackageFolder() {}

    /** What is there now. */
    public static Taken taken(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return Taken.NOTHING;
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return Taken.SOMETHING_ELSE;
        }
        Set<String> there = names(folder);
        if (there.isEmpty()) {
            return Taken.NOTHING;
        }
        Set<String> own = own(folder.resolve(DataPackage.DESCRIPTION));
        return !own.isEmpty() && own.containsAll(there)
                ? Taken.EARLIER_PACKAGE
                : Taken.SOMETHING_ELSE;
    }

    /**
     * Writes all files, in the place of an empty folder or an earlier package if there is one.
     *
     * @throws IOException if it cannot be; then what was there still is
     */
    public static void write(Path folder, Map<String, byte[]> files) throws IOException {
        Path parent = folder.toAbsolutePath().normalize().getParent();
        Files.createDirectories(parent);
        // Not a temporary folder of the system's: those are for their owner alone.
        Path next = Files.createDirectory(parent.resolve(".rigside-data-" + UUID.randomUUID()));
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(next.resolve(file.getKey()), file.getValue());
            }
            swap(folder.toAbsolutePath().normalize(), next, parent);
        } finally {
            remove(next);
        }
    }

    private static void swap(Path folder, Path next, Path parent) throws IOException {
        if (!Files.exists(folder)) {
            Files.move(next, folder);
            return;
        }
        Path old = Files.createTempDirectory(parent, ".rigside-old-").resolve("data");
        Files.move(folder, old);
        try {
            Files.move(next, folder);
        } catch (IOException notMoved) {
            Files.move(old, folder);
            throw notMoved;
        } finally {
            remove(old);
            Files.deleteIfExists(old.getParent());
        }
    }

    /** A folder of plain files, all of them our own. */
    private static void remove(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            for (String name : names(folder)) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.deleteIfExists(folder);
        }
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** The files a description of ours names, itself among them; none where it is not ours. */
    private static Set<String> own(Path description) {
        Set<String> own = new TreeSet<>();
        try {
            JsonNode root = JSON.readTree(Files.readAllBytes(description));
            if (root.has("rigside-program-version")) {
                own.add(DataPackage.DESCRIPTION);
                root.path("resources").forEach(each -> own.add(each.path("path").asText()));
            }
            return own;
        } catch (IOException notADescription) {
            return Set.of();
        }
    }
}
