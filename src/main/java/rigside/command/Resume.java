package rigside.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Bench;
import rigside.bench.Settings;

/** {@code rigside resume SESSION}: goes on with a session that was left or broken off. */
@Command(name = "resume", description = "Go on with a session.")
final class Resume implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description = "the session's folder, or its name below the folder of sessions")
    private Path session;

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        return AtTerminal.run(
                spec,
                console -> {
                    Bench.resume(console, rigside.session(session), settings);
                    return Exit.DONE;
                });
    }
}
