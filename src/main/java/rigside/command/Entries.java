package rigside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.session.Entry;

/** {@code rigside entries SESSION}: every entry with its number. */
@Command(
        name = "entries",
        description =
                "List the entries of a session with their numbers, for 'rigside amend'; what is"
                        + " concealed still is left out.")
final class Entries implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Reading reading = JournalReader.readAsGiven(rigside.session(session));
        reading.torn().ifPresent(torn -> spec.commandLine().getErr().println(torn));
        reading.damage().forEach(damage -> spec.commandLine().getErr().println(damage));
        if (reading.state().opening().isPresent()) {
            Shown shown = Shown.of(reading.state(), Analysis.of(reading.state()));
            for (Entry entry : reading.state().captured().entries()) {
                out.println(EntryLine.of(reading.state(), shown, entry));
            }
            out.flush();
        }
        return reading.damage().isEmpty() ? Exit.DONE : Exit.PROBLEMS;
    }
}
