package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Wall;
import rigside.desk.Choice;
import rigside.desk.Openings;
import rigside.desk.ProtocolFile;
import rigside.desk.RigOnDisk;
import rigside.journal.Journal;
import rigside.journal.NotOpened;
import rigside.protocol.Protocol;
import rigside.rig.RigFile;
import rigside.runner.JournalLedger;
import rigside.runner.Rehearsal;
import rigside.runner.Rigs;
import rigside.session.Event;

/** {@code rigside rehearse PROTOCOL}: a whole session without a tester. */
@Command(
        name = "rehearse",
        description =
                "Run a whole session by itself with a simulated rig: every value is invented.")
final class Rehearse implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one, such as breathing-only")
    private String protocol;

    @Option(
            names = "--seed",
            required = true,
            paramLabel = "NUMBER",
            description = "the same seed gives the same session")
    private long seed;

    @Option(
            names = "--into",
            required = true,
            paramLabel = "FOLDER",
            description = "the folder the session's folder is made in")
    private Path into;

    @Option(
            names = "--rig",
            paramLabel = "FILE",
            description = "a rig file with the simulated wearer that answers")
    private Optional<String> rig = Optional.empty();

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Optional<RigOnDisk> named =
                rig.flatMap(word -> RigFiles.sound(word, rigside.folders(), err));
        if (rig.isPresent() && named.isEmpty()) {
            return Exit.PROBLEMS;
        }
        if (named.flatMap(RigOnDisk::file).filter(RigFile.Attached.class::isInstance).isPresent()) {
            err.println(
                    "rigside: the rig file '"
                            + rig.get()
                            + "' declares instruments; nobody breathes in a rehearsal\n    name a"
                            + " rig file with a simulated wearer, or none");
            return Exit.PROBLEMS;
        }
        Optional<ProtocolFile> file = Protocols.sound(protocol, true, rigside.folders(), err);
        if (file.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Protocol read = file.get().protocol().orElseThrow();
        Event.SessionOpened opening =
                Openings.of(file.get(), read, choice(named), seed, Version.number());
        ZonedDateTime start = Wall.now();
        try (Journal journal = Journal.create(into, opening.protocolName(), start)) {
            Rehearsal.run(new JournalLedger(journal), Rigs.of(opening, read), start, opening);
            spec.commandLine().getOut().println(journal.folder());
            return Exit.DONE;
        } catch (NotOpened notOpened) {
            err.println("rigside: " + notOpened.getMessage() + "\n    " + notOpened.help());
            return Exit.PROBLEMS;
        }
    }

    private static Choice choice(Optional<RigOnDisk> named) {
        return named.map(file -> Choice.of(file, 1)).orElse(new Choice(true, 1));
    }
}
