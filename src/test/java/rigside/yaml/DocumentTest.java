package rigside.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts, numbers and limits. */
class DocumentTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "-3, -3", "12.50, 12.5", "1e3, 1000", "2.5E-2, 0.025", "+4, 4"})
    void aNumberIsReadAsWritten(String written, double number) {
        assertEquals(Optional.of(number), number(written).value());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "010",
                "1_000",
                "1,5",
                ".5",
                "5.",
                "0x1F",
                "0b11",
                "1:30",
                ".inf",
                "-.INF",
                ".NaN",
                "NaN",
                "Infinity",
                "1e",
                "1e+",
                "--1",
                "1 2",
                "\u0661\u0662",
                "\"1\"",
                "1e16",
                "1e999",
                "0.0000000000000000000000000000001",
                "true",
                "null",
                "~",
                "[]",
                "{}"
            })
    void whatIsNotPlainlyANumberIsRefused(String written) {
        assertEquals(1, number(written).problems().size());
    }

    @ParameterizedTest
    @CsvSource({
        "90 s, 90, s",
        "90s, 90, s",
        "10 %, 10, %",
        "-0.5 Pa s/L, -0.5, Pa s/L",
        "0.02 /cm3, 0.02, /cm3",
        "1e3 Pa, 1000, Pa",
        "7, 7, ''"
    })
    void anAmountIsANumberWithItsUnit(String written, double number, String unit) {
        Document<Amount> read =
                Document.read(
                        "x",
                        "a: " + written,
                        fields -> {
                            Value<Amount> amount = Amount.read(fields.required("a").line(), "90 s");
                            return fields.make(amount::get);
                        });
        assertEquals(Optional.of(new Amount(number, unit)), read.value());
    }

    @Test
    void aTextIsTakenUpToItsLimitInCharacters() {
        // outside the basic plane, so two Java chars each
        String most = "\uD83D\uDCA7".repeat(Entry.LONGEST_LINE);
        assertEquals(Optional.of(most), line("a: " + most).value());
        assertEquals(
                List.of("x:1:4: 'a' is 121 characters long\n    shorten it to 120 characters"),
                told(line("a: " + most + "x")));
    }

    @Test
    void aLineHasNoLineBreaksAndATextMay() {
        assertEquals(Optional.of("b c"), line("a: >\n  b\n  c\n").value());
        assertEquals(
                List.of("x:1:4: 'a' runs over several lines\n    write it on one line"),
                told(line("a: |\n  b\n  c\n")));
        Document<String> text =
                Document.read(
                        "x",
                        "a: |\n  b\n  c\n",
                        fields -> {
                            Value<String> value = fields.required("a").text();
                            return fields.make(value::get);
                        });
        assertEquals(Optional.of("b\nc"), text.value());
    }

    @ParameterizedTest
    @CsvSource({"20, ''", "21, lists and groups are nested deeper than 20 levels"})
    void depthHasALimit(int depth, String what) {
        // the outermost group is level 0
        String text = "a: " + "[".repeat(depth - 1) + "x" + "]".repeat(depth - 1);
        List<String> told =
                Document.read(
                                "x",
                                text,
                                fields -> {
                                    fields.optional("a");
                                    return fields.make(() -> 1);
                                })
                        .problems()
                        .stream()
                        .map(Problem::what)
                        .toList();
        assertEquals(what.isEmpty() ? List.of() : List.of(what), told);
    }

    @Test
    void aFileMayBeExactlyAsLargeAsTheLimit() {
        String text = "a: b\n#";
        String full = text + "x".repeat(Document.MOST_BYTES - text.length());
        assertEquals(Optional.of("b"), line(full).value());
        assertEquals(
                List.of("the file is larger than 256 KiB"),
                line(full + "x").problems().stream().map(Problem::what).toList());
    }

    @Test
    void commentsQuotesAndFlowAreAllTheSameFile() {
        Document<String> plain = line("a: b c\n");
        assertEquals(plain, line("# first\na: 'b c' # last\n"));
        assertEquals(plain, line("{\"a\": \"b c\"}"));
        assertEquals(plain, line("---\na: b\n  c\n...\n"));
    }

    private static Document<Double> number(String written) {
        return Document.read(
                "x",
                "a: " + written,
                fields -> {
                    Value<Double> value = fields.required("a").number();
                    return fields.make(value::get);
                });
    }

    private static Document<String> line(String text) {
        return Document.read(
                "x",
                text,
                fields -> {
                    Value<String> value = fields.required("a").line();
                    return fields.make(value::get);
                });
    }

    private static List<String> told(Document<?> document) {
        return document.problems().stream().map(Problem::toString).toList();
    }
}
