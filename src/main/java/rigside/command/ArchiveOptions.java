package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import rigside.archive.Among;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.archive.Contents;
import rigside.archive.Refusal;
import rigside.archive.WithValues;
import rigside.desk.Folders;

/** The options that choose sessions from the archive. */
final class ArchiveOptions {

    @Option(
            names = "--protocol",
            paramLabel = "WORDS",
            description =
                    "sessions of protocols whose title or file holds these words (or whose hash"
                            + " begins with them)")
    private Optional<String> protocol = Optional.empty();

    @Option(names = "--wearer", paramLabel = "CODE", description = "sessions of this wearer")
    private Optional<String> wearer = Optional.empty();

    @Option(
            names = "--simulated",
            description = "invented sessions instead of real ones; the two are never mixed")
    private boolean simulated;

    /** Whether any of them was given. */
    boolean isAsked() {
        return protocol.isPresent() || wearer.isPresent() || simulated;
    }

    /** What came of choosing. */
    record Found(List<WithValues> sessions, Optional<String> leftOut, Optional<Refusal> refusal) {}

    /** The sessions meant, the latest first; how far a long reading has come is told. */
    Found find(Folders folders, PrintWriter err) {
        Archive archive = of(folders);
        Among among = new Among(protocol, wearer, simulated);
        try {
            Contents contents = archive.contents(new ReadingTold(err));
            List<Archived> all = contents.sessions();
            Set<Path> meant = among.meant(all);
            return new Found(
                    contents.withValues(each -> meant.contains(each.folder())),
                    among.leftOut(all),
                    among.refusal(all));
        } catch (IOException unreadable) {
            return new Found(
                    List.of(), Optional.empty(), Optional.of(unreadable(archive, unreadable)));
        }
    }

    /** What is said when the folder of sessions cannot be read. */
    static Refusal unreadable(Archive archive, IOException why) {
        return new Refusal(
                "the folder '" + archive.sessions() + "' cannot be read: " + why.getMessage(),
                "--home names another one");
    }

    static Archive of(Folders folders) {
        return new Archive(folders.sessions(), Version.number());
    }

    /** Says why nothing is done. */
    static int refused(PrintWriter err, Refusal refusal) {
        err.println("rigside: " + refusal.what());
        if (!refusal.help().isEmpty()) {
            err.println("    " + refusal.help());
        }
        err.flush();
        return Exit.PROBLEMS;
    }
}
