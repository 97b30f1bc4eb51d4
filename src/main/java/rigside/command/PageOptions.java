package rigside.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import rigside.report.Page;

/** How a page about several sessions is given: as text, as JSON, or as an HTML file too. */
final class PageOptions {
    private static final int WIDTH = 80;

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            converter = Destination.class,
            description = "write the same as one HTML page to this file, too")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--replace",
            description = "write over a file of that name; otherwise it is not touched")
    private boolean replace;

    /** Prints it, and writes the file if one is wanted. */
    int give(CommandLine command, Page page, Supplier<String> asJson) {
        return give(command, page, page, asJson);
    }

    /** The same where text and HTML are not made of the same blocks. */
    int give(CommandLine command, Page text, Page page, Supplier<String> asJson) {
        command.getOut().print(json ? asJson.get() : text.text(WIDTH));
        command.getOut().flush();
        return html.isPresent() ? write(command, page, html.get()) : Exit.DONE;
    }

    private int write(CommandLine command, Page page, Path file) {
        byte[] bytes = page.html().getBytes(StandardCharsets.UTF_8);
        return ReportFiles.write(Map.of(file, bytes), replace, command) ? Exit.DONE : Exit.PROBLEMS;
    }
}
