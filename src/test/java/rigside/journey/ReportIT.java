package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report is written by the program as it is packaged, and opened by a browser. */
class ReportIT {
    private static final long MOST_SECONDS = 120;

    @TempDir Path folder;

    @Test
    void theBrowserHasNothingToComplainOfAndEveryPartALabel() throws Exception {
        Needed.toRun("chromium", "--version");
        Path file = folder.resolve("report.html");
        assertEquals(
                "",
                run(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-jar",
                                Path.of("target/rigside.jar").toAbsolutePath().toString(),
                                "report",
                                Path.of("demo/recorded-session").toAbsolutePath().toString(),
                                "--html",
                                file.toString(),
                                "--home",
                                folder.toString()),
                        "out"));
        Document page = Jsoup.parse(run(browser("--dump-dom", file), "dom"));
        String said = Files.readString(folder.resolve("dom.err"));
        assertFalse(said.contains("CONSOLE"), said);
        assertTrue(page.select("figure").size() >= 4, page::outerHtml);
        page.select("figure")
                .forEach(
                        each ->
                                assertFalse(
                                        each.select("figcaption").text().isBlank()
                                                || each.select("svg > title").text().isBlank(),
                                        each::outerHtml));
        assertFalse(page.select("table").isEmpty());
        page.select("table")
                .forEach(
                        each ->
                                assertFalse(
                                        each.select("caption").text().isBlank(), each::outerHtml));
        page.select("h1, h2, h3, h4")
                .forEach(each -> assertFalse(each.text().isBlank(), page::outerHtml));
    }

    private List<String> browser(String what, Path file) {
        return List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("browser"),
                "--enable-logging=stderr",
                "--v=0",
                what,
                file.toUri().toString());
    }

    /** What a program prints; what it complains of goes to a file beside it. */
    private String run(List<String> command, String name) throws IOException, InterruptedException {
        Path out = folder.resolve(name + ".out");
        Process process =
                new ProcessBuilder(new ArrayList<>(command))
                        .redirectOutput(out.toFile())
                        .redirectError(folder.resolve(name + ".err").toFile())
                        .start();
        if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException(command.get(0) + " did not end");
        }
        String complaint = Files.readString(folder.resolve(name + ".err"));
        assertEquals(0, process.exitValue(), complaint);
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
