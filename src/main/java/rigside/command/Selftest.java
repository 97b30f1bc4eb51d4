package rigside.command;

import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.SelfTests;
import rigside.bench.Settings;
import rigside.desk.Openings;
import rigside.session.Event;

/** {@code rigside selftest}: terminal, cues, and the tester's own reaction. */
@Command(
        name = "selftest",
        description =
                "Try the terminal's delay, whether each cue is heard, and how evenly you react;"
                        + " sessions record what was found.")
final class Selftest implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    private Optional<Event.SelfTested> found = Optional.empty();

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        int exit =
                AtTerminal.run(
                        spec,
                        console -> {
                            Random random = new Random(Openings.anySeed());
                            found =
                                    SelfTests.run(
                                            console, settings, rigside.folders().root(), random);
                            return Exit.DONE;
                        });
        found.map(SelfTests::words)
                .ifPresent(lines -> lines.forEach(spec.commandLine().getOut()::println));
        spec.commandLine().getOut().flush();
        return exit;
    }
}
