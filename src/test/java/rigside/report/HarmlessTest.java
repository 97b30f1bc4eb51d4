package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Beginnings that a spreadsheet runs: OWASP, CSV Injection, and full-width forms of the signs. */
class HarmlessTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+2",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =1",
                "\u00A0=1",
                "\uFF1D1+2",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20A1",
                "\u3000\uFF1D1",
                "'already marked",
                "-"
            })
    void whatASpreadsheetWouldRunIsSaidToBeText(String text) {
        String written = Harmless.text(text);
        assertEquals('\'', written.charAt(0));
        assertEquals(Harmless.visible(text), written.substring(1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "plain", "a = b", "3 - 2", "it's", "(=1)", "\u00FCber", "#1", "\"=1\""})
    void whatItWouldNotStaysAsItIs(String text) {
        assertEquals(text, Harmless.text(text));
    }

    @Test
    void whatATerminalObeysAndNobodySeesIsReplaced() {
        assertEquals("a\uFFFD[31mb", Harmless.text("a\u001B[31mb"));
        assertEquals("\uFFFD\uFFFD", Harmless.text("\0\u202E"));
        assertEquals("a\uFFFDb", Harmless.text("a\uD800b"));
        assertEquals("a\nb\nc\td", Harmless.text("a\r\nb\rc\td"));
        assertEquals("\uD83D\uDE00", Harmless.text("\uD83D\uDE00"));
    }
}
