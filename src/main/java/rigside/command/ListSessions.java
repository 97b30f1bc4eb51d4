package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.archive.Wanted;

/** {@code rigside sessions}: all sessions, or those that are asked for. */
@Command(
        name = "sessions",
        description =
                "List the sessions kept, the latest first, or those in which all the words are"
                        + " found: in the protocol's title and question, the conditions, what was"
                        + " answered about the session, or its folder's name.")
final class ListSessions implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;
    @Mixin private WantedOptions wanted;

    @Option(names = "--json", description = "print JSON with everything instead of a table")
    private boolean json;

    @Option(
            names = "--rebuild",
            description =
                    "read every journal again, whatever is kept from reading them before; never"
                            + " needed unless a file was changed and its time set back")
    private boolean rebuild;

    @Override
    public Integer call() {
        Wanted which = wanted.read(spec.commandLine());
        Archive archive = new Archive(rigside.folders().sessions(), Version.number());
        try {
            ReadingTold told = new ReadingTold(spec.commandLine().getErr());
            List<Archived> all = rebuild ? archive.rebuild(told) : archive.list(told);
            List<Archived> found = all.stream().filter(which).toList();
            PrintWriter out = spec.commandLine().getOut();
            out.print(
                    json ? SessionsJson.of(found, all.size()) : SessionsText.of(found, all.size()));
            out.flush();
            return Exit.DONE;
        } catch (IOException unreadable) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "rigside: the folder '"
                                    + archive.sessions()
                                    + "' cannot be read: "
                                    + unreadable.getMessage());
            return Exit.PROBLEMS;
        }
    }
}
