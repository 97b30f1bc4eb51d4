package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine;
import rigside.desk.WholeFile;

/** Files that a command was asked to write: all of them, or none where one is there already. */
final class ReportFiles {
    private ReportFiles() {}

    /**
     * Writes them and says so.
     *
     * @param replacing whether files that are there may be replaced
     * @return whether all are written; what was wrong was printed
     */
    static boolean write(Map<Path, byte[]> files, boolean replacing, CommandLine line) {
        PrintWriter err = line.getErr();
        boolean free = true;
        for (Path file : files.keySet()) {
            if (Files.isDirectory(file)) {
                err.println("rigside: " + file + " is a folder; name a file in it");
                free = false;
            } else if (!replacing && Files.exists(file)) {
                err.println("rigside: " + file + " is there already and is left as it is");
                err.println("    name another file, or write over it with --replace");
                free = false;
            }
        }
        return free && files.entrySet().stream().allMatch(each -> write(each, replacing, line));
    }

    private static boolean write(
            Map.Entry<Path, byte[]> file, boolean replacing, CommandLine line) {
        try {
            Files.createDirectories(file.getKey().toAbsolutePath().getParent());
            WholeFile.write(file.getKey(), file.getValue(), replacing);
            line.getErr().println("written: " + file.getKey());
            return true;
        } catch (IOException fault) {
            line.getErr().println("rigside: " + file.getKey() + " is not written: " + words(fault));
            return false;
        }
    }

    private static String words(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "its folder may not be written to";
        }
        if (fault instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        return fault instanceof FileAlreadyExistsException
                ? "a file stands where its folder would be"
                : String.valueOf(fault.getMessage());
    }
}
