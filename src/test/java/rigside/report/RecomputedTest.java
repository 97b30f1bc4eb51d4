package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigside.journal.JournalReader;
import rigside.journal.Reading;

/**
 * The comparisons of the recorded session against what R made of its package: {@code
 * check-package.R}, whose output with its version and call is kept beside it.
 */
class RecomputedTest {
    private static final Path FROM_R = Path.of("src/test/resources/report/check-package.R.out");

    /** Both reckon in doubles; R prints 17 digits. */
    private static final double RELATIVE = 1e-9;

    private static final List<String> COLUMNS =
            List.of("estimate", "standard_error", "degrees_of_freedom", "critical", "low", "high");

    @Test
    void everyLookIsWhatRMadeOfIt() throws IOException {
        Reading reading = JournalReader.read(Path.of("demo", "recorded-session"));
        Map<String, byte[]> files =
                DataPackageTest.written(reading.state(), reading.events()).files();
        List<List<String>> table = CsvTest.read(files.get("comparisons.csv"));
        List<String> lines =
                Files.readAllLines(FROM_R).stream().filter(line -> !line.startsWith("#")).toList();
        assertEquals(table.size() - 1, lines.size());
        List<String> header = table.get(0);
        for (int at = 0; at < lines.size(); at++) {
            List<String> row = table.get(at + 1);
            String[] words = lines.get(at).split(" ", -1);
            List<String> key = new ArrayList<>();
            for (String name : List.of("measure", "condition", "look")) {
                key.add(row.get(header.indexOf(name)));
            }
            assertEquals(key, List.of(words).subList(0, 3));
            for (int column = 0; column < COLUMNS.size(); column++) {
                double ours = Double.parseDouble(row.get(header.indexOf(COLUMNS.get(column))));
                double theirs = Double.parseDouble(words[3 + column]);
                assertEquals(theirs, ours, RELATIVE * Math.abs(theirs), COLUMNS.get(column));
            }
        }
    }
}
