package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Settings;
import rigside.desk.FileWords;
import rigside.desk.ProtocolFile;
import rigside.desk.Shelf;
import rigside.desk.Watch;

/** {@code rigside watch FILE}: a protocol or rig file beside an editor. */
@Command(
        name = "watch",
        description =
                "Show a protocol or rig file beside an editor, anew at each save: its problems, its"
                        + " outline, and what its plan can be expected to bring.")
final class Watching implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(paramLabel = "FILE", description = "a file, or the name of a protocol of your own")
    private String word;

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        PrintWriter err = spec.commandLine().getErr();
        try {
            Optional<Path> file = file();
            if (file.isEmpty()) {
                err.println(
                        "rigside: there is no file '"
                                + word
                                + "', nor a protocol of your own of that name\n    write one with"
                                + " 'rigside draft', or copy one that is shipped on the home"
                                + " screen");
                return Exit.PROBLEMS;
            }
            return AtTerminal.run(
                    spec,
                    console -> {
                        Watch.run(console, file.get(), settings);
                        return Exit.DONE;
                    });
        } catch (IOException unreadable) {
            err.println("rigside: " + word + ": " + FileWords.of(Path.of(word), unreadable));
            return Exit.PROBLEMS;
        }
    }

    private Optional<Path> file() throws IOException {
        Path named = Path.of(word);
        return Files.isRegularFile(named)
                ? Optional.of(named)
                : Shelf.find(word, rigside.folders().protocols()).flatMap(ProtocolFile::at);
    }
}
