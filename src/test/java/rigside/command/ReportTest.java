package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rigside report}: what is printed, and what is written where. */
class ReportTest {
    private static final String DEMO = "demo/recorded-session";

    @TempDir Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(
                        Stream.concat(Stream.of(args), Stream.of("--home", folder.toString()))
                                .toArray(String[]::new));
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(each -> folder.relativize(each).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void withoutOptionsItIsPrintedNoWiderThanAsked() {
        assertEquals(Exit.DONE, run("report", DEMO, "--width", "70"));
        String said = out.toString();
        assertTrue(said.startsWith("Simulated, every value is invented: "), said);
        assertTrue(said.contains("Inhalation time: a meaningful increase."), said);
        assertTrue(said.lines().allMatch(line -> line.length() <= 70), said);
    }

    @Test
    void whatIsWrittenIsWhole() throws IOException {
        assertEquals(
                Exit.DONE,
                run("report", DEMO, "--html", file("a.html"), "--markdown", file("new/a.md")));
        assertEquals(List.of("a.html", "new/a.md"), names());
        assertEquals("", out.toString());
        assertTrue(Files.readString(folder.resolve("a.html")).endsWith("</html>\n"));
        assertTrue(Files.readString(folder.resolve("new/a.md")).startsWith("# Simulated"));
    }

    @Test
    void nothingIsWrittenWhereOneFileIsThereAlready() throws IOException {
        Files.writeString(folder.resolve("a.md"), "mine");
        assertEquals(
                Exit.PROBLEMS,
                run("report", DEMO, "--html", file("a.html"), "--markdown", file("a.md")));
        assertEquals(List.of("a.md"), names());
        assertEquals("mine", Files.readString(folder.resolve("a.md")));
        assertEquals(
                "rigside: "
                        + file("a.md")
                        + " is there already and is left as it is\n"
                        + "    name another file, or write over it with --replace\n",
                err.toString());
        assertEquals(Exit.DONE, run("report", DEMO, "--markdown", file("a.md"), "--replace"));
        assertTrue(Files.readString(folder.resolve("a.md")).startsWith("# "));
    }

    @Test
    void figuresComeAsTwoFilesEach() throws IOException {
        assertEquals(Exit.DONE, run("report", DEMO, "--figure", file("figures")));
        List<String> names = names();
        assertTrue(names.size() >= 4, names::toString);
        for (String name : names) {
            assertTrue(name.matches("figures/[a-z0-9-]+\\.(svg|png)"), name);
        }
    }

    /** Addresses as RFC 3986 has them, seen from the folder of the Markdown file. */
    @Test
    void markdownShowsTheFiguresThatAreWrittenWithIt() throws IOException {
        run("report", DEMO, "--markdown", file("a/b.md"), "--figure", file("my (figures) %"));
        String written = Files.readString(folder.resolve("a/b.md"));
        List<String> shown =
                Pattern.compile("!\\[[^]]+]\\(([^)]+)\\)")
                        .matcher(written)
                        .results()
                        .map(found -> found.group(1))
                        .toList();
        assertTrue(shown.size() >= 4, written);
        for (String address : shown) {
            assertTrue(address.startsWith("../my%20%28figures%29%20%25/"), address);
            String path = URI.create(address).getPath();
            assertTrue(Files.exists(folder.resolve("a").resolve(path)), address);
        }
        run("report", DEMO, "--markdown", file("alone.md"));
        assertFalse(Files.readString(folder.resolve("alone.md")).contains("!["));
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws IOException {
        Files.writeString(folder.resolve("file"), "");
        assertEquals(Exit.PROBLEMS, run("report", DEMO, "--html", file("file/a.html")));
        assertTrue(err.toString().contains("a.html is not written: "), err.toString());
        assertFalse(err.toString().contains("Exception"), err.toString());
        assertEquals(Exit.PROBLEMS, run("report", DEMO, "--html", folder.toString()));
        assertTrue(err.toString().contains("is a folder; name a file in it"), err.toString());
    }

    @Test
    void aTornLineIsToldWithoutTheFolder() throws IOException {
        Path session = Files.createDirectories(folder.resolve("sessions/cut"));
        List<String> lines = Files.readAllLines(Path.of(DEMO, "journal.jsonl"));
        Files.writeString(
                session.resolve("journal.jsonl"),
                String.join("\n", lines.subList(0, 200)) + "\n{\"no");
        assertEquals(Exit.DONE, run("report", "cut"));
        String said = out.toString().replaceAll("\\s+", " ");
        assertTrue(said.contains("- journal.jsonl:201: the last line was cut off"), said);
        assertTrue(err.toString().contains("cut/journal.jsonl:201"), err.toString());
    }

    @Test
    void aDamagedSessionIsReportedAsFarAsItCanBeRead() throws IOException {
        Path session = Files.createDirectories(folder.resolve("sessions/torn"));
        List<String> lines = Files.readAllLines(Path.of(DEMO, "journal.jsonl"));
        Files.write(
                session.resolve("journal.jsonl"),
                Stream.concat(lines.subList(0, 200).stream(), Stream.of("no line", "nor this"))
                        .toList());
        assertEquals(Exit.PROBLEMS, run("report", "torn"));
        assertTrue(
                out.toString().contains("The journal of this session is damaged."), out.toString());
        assertTrue(out.toString().contains("This session is not closed"), out.toString());
        assertFalse(out.toString().contains("Go on with"), out.toString());
        String said = out.toString().replaceAll("\\s+", " ");
        assertTrue(said.contains("- journal.jsonl:201: not a line"), said);
        assertTrue(said.contains("cannot be gone on with: its journal is damaged."), said);
        assertTrue(said.contains("not a line of a journal; what comes before it can be"), said);
        assertTrue(err.toString().contains("journal.jsonl:201"), err.toString());
    }

    @Test
    void whatIsNoSessionHasProblemsOnly() {
        assertEquals(Exit.PROBLEMS, run("report", "nowhere"));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("nowhere"), err.toString());
        assertEquals(Exit.USAGE, run("report", DEMO, "--width", "7"));
        assertTrue(err.toString().contains("width '7' is not from 40 to 400"), err.toString());
    }

    @Test
    void aRehearsalEndsWithTheAnswerAndWritesAReport() throws IOException {
        String html = file("r.html");
        assertEquals(
                Exit.DONE,
                run(
                        "rehearse",
                        "breathing-only",
                        "--seed",
                        "5",
                        "--into",
                        file("s"),
                        "--report",
                        html));
        String said = out.toString();
        assertTrue(said.contains("What was found"), said);
        assertTrue(said.contains("What that says, and what it does not"), said);
        assertFalse(said.contains("Method"), said);
        assertTrue(Files.readString(Path.of(html)).contains("<h2>Method"), said);
        assertEquals(Exit.USAGE, run("rehearse", "breathing-only", "--report", file("r.pdf")));
        assertTrue(err.toString().contains("must end with .html or .md"), err.toString());
    }
}
