package rigside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code rigside verify SESSION}: whether what is on record is as it was written. */
@Command(
        name = "verify",
        description =
                "Tell whether a session's record is whole and as it was written: its lines and their"
                        + " hashes, its protocol, every look reckoned anew. Exit status 0 only if all"
                        + " of it is sound.")
final class Verify implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    @Override
    public Integer call() {
        Verified verified = Verified.of(rigside.session(session));
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? VerifiedJson.of(verified) : VerifiedText.of(verified));
        out.flush();
        return verified.isSound() ? Exit.DONE : Exit.PROBLEMS;
    }
}
