package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import rigside.desk.FolderWords;
import rigside.desk.WholeFile;
import rigside.report.Material;
import rigside.report.Page;
import rigside.report.SessionReport;

/** Files that a command was asked to write: all of them, or none where one is there already. */
final class ReportFiles {
    private ReportFiles() {}

    /** What a report is written as, by the ending of its file's name. */
    interface Form {
        String of(Page page);
    }

    /** Empty where the ending is neither {@code .html} nor {@code .md}. */
    static Optional<Form> form(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".html")) {
            return Optional.of(Page::html);
        }
        return name.endsWith(".md") ? Optional.of(Page::markdown) : Optional.empty();
    }

    /** Writes a whole report where there is no file yet; see the other. */
    static boolean write(Path file, Material of, CommandLine line) {
        String text = form(file).orElseThrow().of(SessionReport.of(of));
        return write(Map.of(file, text.getBytes(StandardCharsets.UTF_8)), false, line);
    }

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
            line.getErr()
                    .println(
                            "rigside: "
                                    + file.getKey()
                                    + " is not written: "
                                    + FolderWords.of(fault));
            return false;
        }
    }
}
