package rigside.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/** The protocols at hand: the tester's own, and those that come with the program. */
public final class Shelf {
    /** What comes with the program, the demonstration first. */
    static final List<String> SHIPPED =
            List.of(
                    "/demo/prefilter-disc.yaml",
                    "/protocols/seal-and-breathing.yaml",
                    "/protocols/breathing-only.yaml",
                    "/protocols/pressure-while-breathing.yaml",
                    "/protocols/several-sizes.yaml",
                    "/protocols/strap-adjustment.yaml",
                    "/protocols/ambient-eight-exercises.yaml",
                    "/protocols/short-elastomeric.yaml",
                    "/protocols/short-filtering-facepiece.yaml",
                    "/protocols/repeatability.yaml",
                    "/protocols/instrument-check.yaml");

    private Shelf() {}

    /**
     * All protocols: the tester's own by name, then those that come with the program. One that
     * cannot be read is among them, with the reason as its problem.
     *
     * @param own the folder of the tester's own; it need not exist
     * @throws IOException if the folder cannot be read
     */
    public static List<ProtocolFile> all(Path own) throws IOException {
        List<ProtocolFile> all = new ArrayList<>(own(own));
        SHIPPED.forEach(resource -> all.add(shipped(resource)));
        return List.copyOf(all);
    }

    /**
     * The protocol a word on the command line means: a file, or the name of one at hand with or
     * without its ending.
     *
     * @throws IOException if it is a file that cannot be read
     */
    public static Optional<ProtocolFile> find(String word, Path own) throws IOException {
        if (Files.isRegularFile(Path.of(word))) {
            return Optional.of(onDisk(word, Path.of(word)));
        }
        return all(own).stream()
                .filter(
                        file ->
                                file.name().equals(word)
                                        || ProtocolFile.bare(file.name()).equals(word))
                .findFirst();
    }

    /**
     * The words that {@link #find} knows, in the order of {@link #all}.
     *
     * @param own the folder of the tester's own; it need not exist
     * @throws IOException if the folder cannot be read
     */
    public static List<String> names(Path own) throws IOException {
        return all(own).stream().map(file -> ProtocolFile.bare(file.name())).toList();
    }

    /**
     * The tester's own rig files, by name; one that cannot be read with the reason as its problem.
     *
     * @param own their folder; it need not exist
     * @throws IOException if the folder cannot be read
     */
    static List<RigOnDisk> rigs(Path own) throws IOException {
        if (!Files.isDirectory(own)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(own)) {
            List<RigOnDisk> rigs = new ArrayList<>();
            for (Path file :
                    files.filter(each -> ProtocolFile.isRigName(each.getFileName().toString()))
                            .filter(Files::isRegularFile)
                            .sorted()
                            .toList()) {
                rigs.add(rig(file, own));
            }
            return rigs;
        }
    }

    /**
     * The rig file a word on the command line means: a file, or the name of one of the tester's own
     * with or without its ending.
     *
     * @throws IOException if it cannot be read
     */
    public static Optional<RigOnDisk> findRig(String word, Path own) throws IOException {
        Path file = Path.of(word);
        if (Files.isRegularFile(file)) {
            Path folder = file.toAbsolutePath().getParent();
            return Optional.of(RigOnDisk.of(word, text(file), folder));
        }
        return rigs(own).stream()
                .filter(
                        rig ->
                                rig.name().equals(word)
                                        || rig.name().equals(ProtocolFile.rigName(word + ".")))
                .findFirst();
    }

    private static List<ProtocolFile> own(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<ProtocolFile> own = new ArrayList<>();
            for (Path file : files.filter(Shelf::mayBeProtocol).sorted().toList()) {
                own.add(protocol(file));
            }
            return own;
        }
    }

    private static RigOnDisk rig(Path file, Path folder) {
        String name = file.getFileName().toString();
        try {
            return RigOnDisk.of(name, text(file), folder);
        } catch (IOException unreadable) {
            return RigOnDisk.unreadable(name, folder, FileWords.of(file, unreadable));
        }
    }

    /** Among others: one that cannot be read must not take the others away. */
    private static ProtocolFile protocol(Path file) {
        String name = file.getFileName().toString();
        Path reading = file;
        try {
            String text = text(file);
            reading = rigBeside(file);
            return ProtocolFile.of(name, text, textIfThere(reading)).at(file);
        } catch (IOException unreadable) {
            String why = FileWords.of(reading, unreadable);
            Problem problem = new Problem(reading.getFileName().toString(), 1, 1, why, "");
            return ProtocolFile.unreadable(name, problem).at(file);
        }
    }

    private static boolean mayBeProtocol(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return Files.isRegularFile(file)
                && Stream.of(".yaml", ".yml", ".json").anyMatch(name::endsWith)
                && !ProtocolFile.isRigName(name)
                && !name.startsWith(".");
    }

    private static ProtocolFile onDisk(String name, Path file) throws IOException {
        return ProtocolFile.of(name, text(file), textIfThere(rigBeside(file))).at(file);
    }

    private static Path rigBeside(Path file) {
        return file.resolveSibling(ProtocolFile.rigName(file.getFileName().toString()));
    }

    private static String textIfThere(Path file) throws IOException {
        return Files.isRegularFile(file) ? text(file) : "";
    }

    private static String text(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return text(in);
        }
    }

    private static ProtocolFile shipped(String resource) {
        try (InputStream in = Shelf.class.getResourceAsStream(resource);
                InputStream rig = Shelf.class.getResourceAsStream(ProtocolFile.rigName(resource))) {
            String name = resource.substring(resource.lastIndexOf('/') + 1);
            return ProtocolFile.of(name, text(in), rig == null ? "" : text(rig));
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own files cannot be read", broken);
        }
    }

    /** No more of a file than it takes to see that it is too large. */
    private static String text(InputStream in) throws IOException {
        return new String(in.readNBytes(Document.MOST_BYTES + 1), StandardCharsets.UTF_8);
    }
}
