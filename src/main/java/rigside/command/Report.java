package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Archive;
import rigside.bench.Columns;
import rigside.desk.Reports;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.report.Figure;
import rigside.report.Figures;
import rigside.report.Material;
import rigside.report.Page;
import rigside.report.SessionReport;

/** {@code rigside report SESSION}: what a session found, and all that it rests on. */
@Command(
        name = "report",
        description =
                "Report a session: what was found and how far that reaches, figures, values,"
                        + " deviations, method and origin. Without options it is printed as text.")
final class Report implements Callable<Integer> {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 400;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @Option(
            names = "--html",
            paramLabel = "FILE",
            converter = Destination.class,
            description = "write one HTML file: nothing is fetched, it prints well")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--markdown",
            paramLabel = "FILE",
            converter = Destination.class,
            description = "write it as Markdown; with --figure it shows the figures written")
    private Optional<Path> markdown = Optional.empty();

    @Option(
            names = "--figure",
            paramLabel = "FOLDER",
            converter = Destination.class,
            description = "write each figure into a folder as SVG and PNG, for publishing")
    private Optional<Path> figures = Optional.empty();

    @Option(names = "--text", description = "print it as text beside the files written")
    private boolean text;

    @Option(
            names = "--replace",
            description = "write over files of that name; otherwise none is touched")
    private boolean replace;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "how wide the text may be (as the terminal is, or 80)")
    private Optional<Integer> width = Optional.empty();

    @Override
    public Integer call() throws IOException {
        if (width.isPresent() && (width.get() < NARROWEST || width.get() > WIDEST)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "width '" + width.get() + "' is not from " + NARROWEST + " to " + WIDEST);
        }
        Path named = rigside.session(session);
        Reading reading = JournalReader.readAsGiven(named);
        reading.torn().ifPresent(torn -> err().println(torn));
        reading.damage().forEach(damage -> err().println(damage));
        Path folder = reading.file().toAbsolutePath().getParent();
        Archive archive = new Archive(rigside.folders().sessions(), Version.number());
        Optional<Material> material = Reports.material(folder, reading, archive);
        if (material.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Map<Path, byte[]> files = files(material.get());
        boolean drawn = figures.isEmpty() || areDrawn(material.get(), figures.get(), files);
        if (!files.isEmpty() && !ReportFiles.write(files, replace, spec.commandLine())) {
            return Exit.PROBLEMS;
        }
        if (text || files.isEmpty()) {
            out().print(
                            SessionReport.withoutTexts(material.get())
                                    .text(width.orElseGet(Report::columns)));
            out().flush();
        }
        return reading.damage().isEmpty() && drawn ? Exit.DONE : Exit.PROBLEMS;
    }

    private static int columns() {
        return Math.max(NARROWEST, Math.min(WIDEST, Columns.now()));
    }

    private Map<Path, byte[]> files(Material of) {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        html.ifPresent(file -> files.put(file, bytes(SessionReport.of(of).html())));
        markdown.ifPresent(file -> files.put(file, bytes(markdown(SessionReport.of(of), file))));
        return files;
    }

    /**
     * With the figures that are written beside it, where one folder can be reached from the other.
     */
    private String markdown(Page page, Path file) {
        Path from = file.toAbsolutePath().normalize().getParent();
        return figures.map(folder -> folder.toAbsolutePath().normalize())
                .filter(folder -> folder.getRoot().equals(from.getRoot()))
                .map(folder -> page.markdown(from.relativize(folder)))
                .orElseGet(page::markdown);
    }

    /** Figures as SVG always, as PNG where this machine can draw them; says why where it cannot. */
    private boolean areDrawn(Material of, Path folder, Map<Path, byte[]> files) {
        boolean drawn = true;
        for (Figure figure : Figures.of(of)) {
            files.put(folder.resolve(figure.name() + ".svg"), bytes(figure.svg()));
            try {
                if (drawn) {
                    files.put(folder.resolve(figure.name() + ".png"), Figures.png(figure));
                }
            } catch (IOException notDrawn) {
                err().println("rigside: " + notDrawn.getMessage());
                drawn = false;
            }
        }
        return drawn;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
