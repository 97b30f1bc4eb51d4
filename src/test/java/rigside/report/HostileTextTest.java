package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of a file somebody else wrote cannot do anything but be read. */
class HostileTextTest {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9!]+)");

    private static Page page(String text) {
        return new Page(
                text,
                text,
                List.of(
                        new Block.Words(text),
                        new Block.Caution(text),
                        new Block.Points(List.of(text)),
                        new Block.Table(
                                Block.Head.of(text, text, text),
                                List.of(
                                        List.of(
                                                Cell.of(text),
                                                new Cell.Blank(8, text),
                                                Cell.Ticks.of(text)))),
                        Block.Table.pairs(List.of(List.of(text, text))),
                        Block.Part.of(text, text, List.of(new Block.Room(text, 2)))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "' onmouseover='alert(1)",
                "</style></title><svg/onload=alert(1)>",
                "&lt;b&gt; &#x3c;i&#x3e;",
                "<!-- -->"
            })
    void markupIsWords(String text) {
        String html = page(text).html();
        String plain = page("words").html();
        assertEquals(tags(plain), tags(html));
        assertTrue(html.contains(Html.escaped(text)));
        assertFalse(html.contains(text), html);
    }

    private static List<String> tags(String html) {
        return TAG.matcher(html).results().map(each -> each.group()).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "red \u001B[31m and back", "bell \u0007", "\u009B2J", "\u202Egnirts",
                        "\u2066x\u2069",
                "\u200Fright to left", "zero\u200Bwidth", "line\u2028end", "\uD800", "nul \u0000"
            })
    void whatATerminalObeysOrNobodySeesIsReplaced(String text) {
        for (String written : List.of(page(text).html(), page(text).text(60))) {
            assertTrue(written.contains("\uFFFD"));
            assertTrue(
                    written.codePoints()
                            .noneMatch(
                                    point ->
                                            point != '\n'
                                                    && (Character.isISOControl(point)
                                                            || Character.getType(point)
                                                                    == Character.FORMAT)),
                    written);
        }
    }

    @Test
    void lettersThatRunFromTheRightAreKept() {
        assertEquals("\u05E9\u05DC\u05D5\u05DD", Legible.of("\u05E9\u05DC\u05D5\u05DD"));
    }

    @Test
    void nothingIsFetchedAndNoScriptMayRun() {
        String html = Outline.of(Read.shipped("/protocols/seal-and-breathing.yaml")).html();
        assertTrue(html.contains("default-src 'none'"));
        assertFalse(html.contains("http://") || html.contains("https://"));
        assertFalse(html.contains("<script") || html.contains("<link") || html.contains("@import"));
        assertFalse(html.contains("url("));
    }

    @Test
    void wideLettersTakeTwoColumns() {
        List<String> lines =
                new Page("t", "", List.of(new Block.Words("\u6F22\u5B57\u6F22\u5B57"))).lines(4);
        assertEquals(List.of("t", "=", "", "\u6F22\u5B57", "\u6F22\u5B57"), lines);
    }
}
