package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import rigside.desk.FileWords;
import rigside.desk.Folders;
import rigside.desk.RigOnDisk;
import rigside.desk.Shelf;

/** Finds the rig file named on the command line. */
final class RigFiles {
    private RigFiles() {}

    /** The rig file when nothing is wrong with it; otherwise everything wrong was printed. */
    static Optional<RigOnDisk> sound(String word, Folders folders, PrintWriter err) {
        try {
            Optional<RigOnDisk> rig = Shelf.findRig(word, folders.rigs());
            if (rig.isEmpty()) {
                err.println(
                        "rigside: there is no rig file '"
                                + word
                                + "'\n    name a file, or one in "
                                + folders.rigs());
                return Optional.empty();
            }
            rig.get().problems().forEach(err::println);
            return rig.filter(each -> each.problems().isEmpty());
        } catch (InvalidPathException noPath) {
            err.println("rigside: '" + word + "' is no path of a file");
            return Optional.empty();
        } catch (IOException unreadable) {
            err.println("rigside: " + word + ": " + FileWords.of(Path.of(word), unreadable));
            return Optional.empty();
        }
    }
}
