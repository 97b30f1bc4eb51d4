package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CleanTest {

    @Test
    void whatTurnsMovesOrRingsATerminalIsReplacedVisibly() {
        assertEquals("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe", Clean.text("a\u202Eb\u0007c\u001Bd\u200Be"));
    }

    @Test
    void lineEndsAndTabsAreSpaces() {
        assertEquals("a b c", Clean.text("a\tb\nc"));
    }

    @Test
    void lettersAreComposedAndMarksThatStayAloneReplaced() {
        assertEquals("\u00E9 q\uFFFD", Clean.text("e\u0301 q\u0301"));
    }

    @Test
    void aCharacterBeyondTheBasicPlaneIsOneSign() {
        assertEquals("x\uFFFDy\uFFFD", Clean.text("x\uD83D\uDE00y\uD83D"));
    }

    @ParameterizedTest
    @CsvSource({
        "é, e",
        "ü, u",
        "×, x",
        "–, -",
        "’, ''''",
        "日本, ????",
        "½, ?",
        "Å, A",
        "plain ~, plain ~",
    })
    void asciiKeepsTheWidth(String text, String ascii) {
        assertEquals(ascii, Clean.ascii(text));
        assertEquals(Clean.width(text), ascii.length());
    }
}
