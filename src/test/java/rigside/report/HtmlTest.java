package rigside.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.report.Block.Head;

/** How tables keep their words together. */
class HtmlTest {
    private static final String FEW = "Half mask with disc";
    private static final String MANY = "broken off: a strap came loose while bending over";

    private static String table(String... row) {
        List<Head> heads = Stream.of(row).map(each -> new Head("What", false)).toList();
        Block table = new Block.Table("", heads, List.of(Cell.texts(List.of(row))));
        return Html.of(new Page("Page", "", List.of(table), false));
    }

    @Test
    void fewWordsOfACellStayOnOneLineAndManyGetRoom() {
        String html = table("1", FEW, MANY);
        assertTrue(html.contains("<td class=\"terse\">" + FEW + "</td>"), html);
        assertTrue(html.contains("<td class=\"long\">" + MANY + "</td>"), html);
    }

    /** Signs as wide as two letters, by Unicode Standard Annex 11. */
    @Test
    void wideSignsCountTwice() {
        String few = "\u9762\u4F53".repeat(6);
        assertTrue(table("1", few).contains("<td class=\"terse\">" + few + "</td>"));
        assertFalse(table("1", few + few).contains("<td class=\"terse\">" + few));
    }

    @Test
    void onPaperTheyDoOnlyWhereAllColumnsHaveTheirPlace() {
        assertTrue(table("1", FEW, MANY).contains("<table class=\"narrow\">"));
        assertFalse(table(FEW, FEW, FEW, FEW, FEW).contains("<table class=\"narrow\">"));
    }
}
