package rigside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.rig.RigFile;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/**
 * A rig file chosen by the tester, read.
 *
 * @param name the file's name as the tester knows it
 * @param text its exact text
 * @param folder the folder it lies in, absolute: paths in it start from there
 * @param read what it describes, or all that is wrong with it
 */
public record RigOnDisk(String name, String text, Path folder, Document<RigFile> read) {
    static RigOnDisk of(String name, String text, Path folder) {
        Path absolute = folder.toAbsolutePath().normalize();
        return new RigOnDisk(name, text, absolute, RigFile.read(name, text, absolute));
    }

    /** One that cannot be read, and why. */
    static RigOnDisk unreadable(String name, Path folder, String why) {
        List<Problem> problems = List.of(new Problem(name, 1, 1, why, ""));
        Path absolute = folder.toAbsolutePath().normalize();
        return new RigOnDisk(name, "", absolute, new Document<>(Optional.empty(), problems));
    }

    /** What it describes; empty when something is wrong with it. */
    public Optional<RigFile> file() {
        return read.value();
    }

    /** All that is wrong with it, as it is told; empty when nothing is. */
    public List<String> problems() {
        return read.problems().stream().map(Problem::toString).toList();
    }

    /** Whether its values would be invented, or of another time. */
    public boolean isSimulated() {
        return file().filter(
                        each ->
                                !(each instanceof RigFile.Attached attached)
                                        || attached.instruments().isReplayed())
                .isPresent();
    }

    /** What it is, in words for the home screen. */
    String words() {
        return file().map(each -> described(each) + " (" + name + ")")
                .orElse("rig file " + name + ", which has problems");
    }

    private static String described(RigFile file) {
        if (!(file instanceof RigFile.Attached attached)) {
            return "from a simulated rig, every value invented: " + file.title();
        }
        return (attached.instruments().isReplayed()
                        ? "from recorded traces, of another time: "
                        : "from instruments: ")
                + file.title();
    }
}
