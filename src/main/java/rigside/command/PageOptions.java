package rigside.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import picocli.CommandLine;
import rigside.report.Page;

/** How a page about several sessions is given: as text, as JSON, or as an HTML file too. */
final class PageOptions {
    private static final int WIDTH = 80;

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "write the same as one HTML page to this file, too")
    private Optional<Path> html = Optional.empty();

    /** Prints it, and writes the file if one is wanted. */
    int give(CommandLine command, Page page, Supplier<String> asJson) {
        command.getOut().print(json ? asJson.get() : page.text(WIDTH));
        command.getOut().flush();
        return html.isPresent() ? write(command, page, html.get()) : Exit.DONE;
    }

    private static int write(CommandLine command, Page page, Path file) {
        try {
            Files.write(file, page.html().getBytes(StandardCharsets.UTF_8));
            command.getErr().println("written: " + file);
            return Exit.DONE;
        } catch (IOException notWritten) {
            command.getErr()
                    .println("rigside: " + file + " cannot be written: " + notWritten.getMessage());
            command.getErr().println("    name a file in a folder that may be written to");
            return Exit.PROBLEMS;
        }
    }
}
