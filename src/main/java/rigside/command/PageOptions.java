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
        return give(command, () -> page, () -> page, asJson);
    }

    /**
     * The same where text and HTML are not made of the same blocks; only what is asked for is made.
     */
    int give(
            CommandLine command,
            Supplier<Page> asText,
            Supplier<Page> asHtml,
            Supplier<String> asJson) {
        command.getOut().print(json ? asJson.get() : asText.get().text(WIDTH));
        command.getOut().flush();
        return html.isPresent() ? write(command, asHtml, html.get()) : Exit.DONE;
    }

    private int write(CommandLine command, Supplier<Page> asHtml, Path file) {
        byte[] bytes = asHtml.get().html().getBytes(StandardCharsets.UTF_8);
        return ReportFiles.write(Map.of(file, bytes), replace, command) ? Exit.DONE : Exit.PROBLEMS;
    }
}
