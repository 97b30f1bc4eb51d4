package rigside.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

/** Tables are read back by another reader (Commons CSV, its format RFC4180). */
class CsvTest {
    private static final String[] PIECES = {
        "a",
        "b c",
        "\"",
        "\"\"",
        ",",
        ";",
        "\n",
        "\r\n",
        "\r",
        "\t",
        " ",
        "=",
        "'",
        "\0",
        "\u001B",
        "\uD800",
        "\uD83D\uDE00",
        "\u00E9",
        "\u202E",
        "\uFEFF",
        "NA",
        "NULL",
        "0",
        "-1",
        "#",
        "\\",
        "\u2028",
        "\uFF1D",
        "|",
        "x".repeat(40)
    };

    private record Row(String text, OptionalDouble number) {}

    private static Resource<Row> table(List<Row> rows) {
        return new Resource<>(
                "table",
                "Table",
                "",
                List.of(
                        Column.text("text", "", Row::text),
                        Column.number("number", "", "", Row::number),
                        Column.yesOrNo("there", "", row -> row.number().isPresent())),
                List.of("text"),
                List.of(),
                rows);
    }

    @Test
    void randomTextsAndNumbersSurviveWritingAndReading() throws IOException {
        Random random = new Random(7);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int piece = random.nextInt(6); piece > 0; piece--) {
                text.append(PIECES[random.nextInt(PIECES.length)]);
            }
            rows.add(
                    new Row(
                            text.toString(),
                            random.nextBoolean()
                                    ? OptionalDouble.of(random.nextGaussian())
                                    : OptionalDouble.empty()));
        }
        List<List<String>> read = read(Csv.bytes(table(rows)));
        assertEquals(List.of("text", "number", "there"), read.get(0));
        assertEquals(rows.size() + 1, read.size());
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            List<String> cells = read.get(i + 1);
            assertEquals(Harmless.text(row.text()), cells.get(0));
            assertEquals(
                    row.number(),
                    cells.get(1).isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Double.parseDouble(cells.get(1))));
            assertEquals(String.valueOf(row.number().isPresent()), cells.get(2));
        }
    }

    @Test
    void aTableIsPlainToReadAndEndsItsLinesAsTheStandardSays() {
        byte[] bytes =
                Csv.bytes(
                        table(
                                List.of(
                                        new Row("it fits, mostly", OptionalDouble.of(0.1)),
                                        new Row("", OptionalDouble.empty()),
                                        new Row("say \"so\"", OptionalDouble.of(Double.NaN)))));
        assertEquals(
                "text,number,there\r\n\"it fits, mostly\",0.1,true\r\n,,false\r\n\"say"
                        + " \"\"so\"\"\",,true\r\n",
                new String(bytes, StandardCharsets.UTF_8));
    }

    @Test
    void aTableWithoutRowsHasItsFirstLine() {
        assertArrayEquals(
                "text,number,there\r\n".getBytes(StandardCharsets.UTF_8),
                Csv.bytes(table(List.of())));
    }

    @Test
    void numbersAndWordsOfOursAreNeverMarkedAsText() throws IOException {
        Resource<Row> table =
                new Resource<>(
                        "table",
                        "",
                        "",
                        List.of(
                                Column.number("number", "", "", Row::number),
                                new Column<Row>(
                                        "word",
                                        Column.Type.STRING,
                                        "",
                                        "",
                                        false,
                                        false,
                                        List.of("-x"),
                                        row -> Optional.of("-x"))),
                        List.of(),
                        List.of(),
                        List.of(new Row("", OptionalDouble.of(-1.5))));
        assertEquals(List.of("-1.5", "-x"), read(Csv.bytes(table)).get(1));
    }

    static List<List<String>> read(byte[] bytes) throws IOException {
        try (CSVParser parser =
                CSVParser.builder()
                        .setReader(
                                new InputStreamReader(
                                        new ByteArrayInputStream(bytes), StandardCharsets.UTF_8))
                        .setFormat(CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get())
                        .get()) {
            return parser.getRecords().stream().map(each -> each.toList()).toList();
        }
    }
}
