package rigside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.RigFile;
import rigside.rig.Wearer;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/**
 * A protocol file, read, and the rig file beside it.
 *
 * @param name the file's name as the tester knows it
 * @param text its exact text
 * @param rigText the exact text of the file {@code NAME.rig.yaml} beside it, which describes the
 *     wearer of a simulated rig; empty without one
 * @param read what the protocol says, or all that is wrong with it
 * @param at where it lies; empty of one that comes with the program
 */
public record ProtocolFile(String name, String text, String rigText, Read read, Optional<Path> at) {
    private static final String RIG_ENDING = ".rig.yaml";

    static ProtocolFile of(String name, String text, String rigText) {
        return new ProtocolFile(
                name, text, rigText, ProtocolReader.read(name, text), Optional.empty());
    }

    /** One that cannot be read, and why. */
    static ProtocolFile unreadable(String name, Problem why) {
        return new ProtocolFile(name, "", "", new Read.Bad(List.of(why)), Optional.empty());
    }

    /** The same, lying somewhere. */
    ProtocolFile at(Path file) {
        return new ProtocolFile(name, text, rigText, read, Optional.of(file));
    }

    /** Whether it is the tester's own, which may be changed. */
    public boolean isOwn() {
        return at.isPresent();
    }

    /** Whether another reading of the files has found the same one, changed or not. */
    boolean isSameFile(ProtocolFile other) {
        return name.equals(other.name) && at.equals(other.at);
    }

    /** What it says; empty when something is wrong with it. */
    public Optional<Protocol> protocol() {
        return read instanceof Read.Good good ? Optional.of(good.protocol()) : Optional.empty();
    }

    /** All that is wrong with it, as it is told; empty when nothing is. */
    public List<String> problems() {
        return read instanceof Read.Bad bad
                ? bad.problems().stream().map(Problem::toString).toList()
                : List.of();
    }

    /** All that is wrong with the rig file; empty when nothing is, or there is none. */
    public List<String> rigProblems() {
        return rigText.isEmpty()
                ? List.of()
                : rig().problems().stream().map(Problem::toString).toList();
    }

    private Document<RigFile> rig() {
        return RigFile.read(rigName(name), rigText, Path.of(""));
    }

    /** The wearer of the rig file; empty when it has problems or is about instruments. */
    Optional<Wearer> wearer() {
        return rigText.isEmpty()
                ? Optional.empty()
                : rig().value()
                        .filter(RigFile.Simulated.class::isInstance)
                        .map(file -> ((RigFile.Simulated) file).wearer());
    }

    /** The text of the rig file if it describes a wearer; empty otherwise. */
    String wearerText() {
        return wearer().isPresent() ? rigText : "";
    }

    /** The name of the rig file beside a protocol file. */
    static String rigName(String name) {
        return bare(name) + RIG_ENDING;
    }

    /** Whether a file of that name describes a rig. */
    public static boolean isRigName(String name) {
        return name.endsWith(RIG_ENDING);
    }

    /** A file's name without its ending. */
    static String bare(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
