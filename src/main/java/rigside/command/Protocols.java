package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.desk.FileWords;
import rigside.desk.Folders;
import rigside.desk.ProtocolFile;
import rigside.desk.Shelf;
import rigside.yaml.Words;

/** Finds the protocol named on the command line. */
final class Protocols {
    private Protocols() {}

    /**
     * The protocol's file when it can be run; otherwise everything wrong was printed.
     *
     * @param simulated whether the rig file beside it is needed too
     */
    static Optional<ProtocolFile> sound(
            String word, boolean simulated, Folders folders, PrintWriter err) {
        try {
            Optional<ProtocolFile> file = Shelf.find(word, folders.protocols());
            if (file.isEmpty()) {
                List<String> names = Shelf.names(folders.protocols());
                err.println(
                        "rigside: there is no protocol '"
                                + word
                                + "'\n    "
                                + Words.nearest(word, names)
                                        .map(near -> "did you mean '" + near + "'?")
                                        .orElse(
                                                "name a file, or one of "
                                                        + String.join(", ", names)));
                return Optional.empty();
            }
            List<String> problems = new ArrayList<>(file.get().problems());
            problems.addAll(simulated ? file.get().rigProblems() : List.of());
            problems.forEach(err::println);
            return file.filter(each -> problems.isEmpty());
        } catch (IOException unreadable) {
            err.println("rigside: " + word + ": " + FileWords.of(Path.of(word), unreadable));
            return Optional.empty();
        }
    }
}
