package rigside.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Bench;
import rigside.bench.Settings;
import rigside.bench.Trigger;

/** {@code rigside resume SESSION}: goes on with a session that was left or broken off. */
@Command(name = "resume", description = "Go on with a session.")
final class Resume implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description = "the session's folder, or its name below the folder of sessions")
    private Path session;

    @Option(
            names = "--trigger",
            paramLabel = "KEY",
            defaultValue = "space",
            description = "the key that starts and stops timing (default ${DEFAULT-VALUE})")
    private String trigger;

    @Override
    public Integer call() {
        Settings settings =
                rigside.settings(
                        Trigger.parse(trigger)
                                .orElseThrow(
                                        () ->
                                                new ParameterException(
                                                        spec.commandLine(),
                                                        Trigger.refusal(trigger))));
        Path named = rigside.folders().sessions().resolve(session);
        Path folder = Files.isDirectory(session) ? session : named;
        return AtTerminal.run(
                spec,
                console -> {
                    Bench.resume(console, folder, settings);
                    return Exit.DONE;
                });
    }
}
