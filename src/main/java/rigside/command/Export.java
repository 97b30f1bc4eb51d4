package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.Damage;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.report.Again;
import rigside.report.DataPackage;
import rigside.report.PackageFolder;

/** {@code rigside export SESSION}: a session as tables for other programs. */
@Command(
        name = "export",
        description = {
            "Write a session as tables (CSV) with a description of every column"
                    + " (datapackage.json), for spreadsheets, R, Python and the like.",
            "Everything is in them, struck out or not; of an open session what is concealed is left"
                    + " out."
        })
final class Export implements Callable<Integer> {
    private static final String FOLDER = "data";

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            converter = Destination.class,
            description = "the folder to write, for the tables alone ('data' in the session's)")
    private Optional<Path> to = Optional.empty();

    @Option(names = "--replace", description = "write over an earlier export in that folder")
    private boolean replace;

    @Override
    public Integer call() {
        Reading reading = JournalReader.readAsGiven(rigside.session(session));
        reading.torn().ifPresent(torn -> err().println(torn));
        reading.damage().forEach(damage -> err().println(damage));
        if (reading.state().opening().isEmpty()) {
            return Exit.PROBLEMS;
        }
        Path own = reading.file().toAbsolutePath().normalize().getParent();
        Path folder = to.orElse(own.resolve(FOLDER));
        Shown shown = Shown.of(reading.state(), Analysis.of(reading.state()));
        DataPackage tables =
                DataPackage.of(
                        String.valueOf(own.getFileName()),
                        reading.state(),
                        shown,
                        reading.events(),
                        reading.damage().stream()
                                .map(Damage::inOneSentence)
                                .collect(Collectors.joining(" ")));
        return write(folder, tables, shown) && reading.damage().isEmpty()
                ? Exit.DONE
                : Exit.PROBLEMS;
    }

    private boolean write(Path folder, DataPackage tables, Shown shown) {
        try {
            switch (PackageFolder.taken(folder)) {
                case SOMETHING_ELSE -> {
                    return wrong(
                            "'" + folder + "' holds something else",
                            "name a folder that is empty or not there with --to FOLDER");
                }
                case EARLIER_PACKAGE -> {
                    if (!replace) {
                        return wrong(
                                "'" + folder + "' holds an earlier export",
                                "write over it with --replace, or name another folder with --to"
                                        + " FOLDER");
                    }
                }
                case NOTHING -> {}
            }
            PackageFolder.write(folder, tables.files());
        } catch (IOException trouble) {
            return wrong(
                    "'" + folder + "' cannot be written: " + trouble.getMessage(),
                    "mend that, or name another folder with --to FOLDER");
        }
        tell(folder, tables, shown);
        return true;
    }

    private void tell(Path folder, DataPackage tables, Shown shown) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("Written to " + folder + ":");
        tables.files().keySet().forEach(name -> out.println("  " + name));
        if (!shown.concealed().isEmpty()) {
            out.println(
                    "Left out: times, events, and what is concealed: " + shown.concealed() + ".");
        }
        for (Again again : tables.again()) {
            out.println();
            out.println(
                    "The comparisons by '"
                            + again.measure().title()
                            + "' again, by the table alone:");
            out.println(
                    "  rigside analyse --values "
                            + Quoted.word(folder.resolve(again.file()))
                            + " "
                            + Quoted.words(again.options()));
            if (again.differs().isEmpty()) {
                out.println("  It gives the same verdicts, estimates and intervals.");
            }
            again.differs().forEach(why -> out.println("  It differs. " + why));
        }
        out.flush();
    }

    /** Prints what is wrong and what to do. */
    private boolean wrong(String what, String help) {
        err().println(what + "\n    " + help);
        return false;
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
