package rigside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Settings;
import rigside.desk.Drafting;

/** {@code rigside draft}: a protocol of one's own, by answering questions. */
@Command(
        name = "draft",
        description =
                "Write a protocol of your own by answering questions; it is checked, planned and"
                        + " rehearsed before it is saved.")
final class Draft implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    private Optional<Path> saved = Optional.empty();

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        int exit =
                AtTerminal.run(
                        spec,
                        console -> {
                            saved = Drafting.run(console, rigside.folders(), settings);
                            return Exit.DONE;
                        });
        if (exit == Exit.DONE) {
            PrintWriter out = spec.commandLine().getOut();
            out.println(
                    saved.map(file -> file + "\n    change it beside 'rigside watch " + file + "'")
                            .orElse("nothing was written"));
            out.flush();
        }
        return exit;
    }
}
