package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.protocol.Protocol;
import rigside.session.Schedule;

class FormTest {
    private static final Protocol DEMONSTRATION = Read.shipped("/demo/prefilter-disc.yaml");

    @Test
    void theDemonstrationsFormIsThis() {
        Approved.matches(
                "prefilter-disc-form.txt", Form.of(DEMONSTRATION, "prefilter-disc", 7).text(80));
    }

    @Test
    void asAPageItIsThis() {
        Approved.matches(
                "prefilter-disc-form.html", Form.of(DEMONSTRATION, "prefilter-disc", 7).html());
    }

    /** What stands before the first round must not tell the order of any. */
    @Test
    void everyRoundHasAPageAndItsOrderStandsOnlyThere() {
        List<Block.Part> pages =
                Form.of(DEMONSTRATION, "prefilter-disc", 7).blocks().stream()
                        .filter(Block.Part.class::isInstance)
                        .map(Block.Part.class::cast)
                        .filter(part -> part.start() == Block.Start.NEW_PAGE)
                        .filter(part -> part.title().startsWith("Round "))
                        .toList();
        assertEquals(8, pages.size());
        for (int round = 1; round <= 8; round++) {
            List<String> order = Schedule.order(DEMONSTRATION, 7, round);
            List<String> titles =
                    pages.get(round - 1).blocks().stream()
                            .map(block -> ((Block.Part) block).title())
                            .toList();
            assertEquals("Round " + round, pages.get(round - 1).title());
            assertEquals(
                    List.of(
                            "first: " + Outline.title(DEMONSTRATION, order.get(0)),
                            "second: " + Outline.title(DEMONSTRATION, order.get(1))),
                    titles);
        }
        String text = Form.of(DEMONSTRATION, "prefilter-disc", 7).text(80);
        assertFalse(text.substring(0, text.indexOf("Round 1")).contains("Half mask with disc"));
    }

    @Test
    void itSaysWhatItIsAndHowToTypeItIn() {
        String text = Form.of(DEMONSTRATION, "prefilter-disc", 7).text(200);
        assertTrue(text.contains("not a certified fit test"));
        assertTrue(text.contains("'rigside enter prefilter-disc --seed 7 --on DAY'"));
        DEMONSTRATION.cautions().forEach(caution -> assertTrue(text.contains(caution), caution));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    breathing-only       | breathing-only
                    ~/rigside/masks.yaml | "~/rigside/masks.yaml"
                    own/two masks.yaml   | "own/two masks.yaml"
                    it's.yaml            | "it's.yaml"
                    $1`a\\b".yaml        | "\\$1\\`a\\\\b\\".yaml"
                    """)
    void theCommandThatTypesItInTakesTheNameAsOneWord(String name, String typed) {
        String text = Form.of(DEMONSTRATION, name, 7).text(200);
        assertTrue(text.contains("'rigside enter " + typed + " --seed 7 --on DAY'"), text);
    }

    /** Who fills it in sees no ids; a group's own condition is answered before the group. */
    @Test
    void aStepThatDependsOnAnAnswerNamesItAsItWasAsked() {
        String text = Form.of(Read.shipped("/session/groups.yaml"), "groups.yaml", 7).text(200);
        assertFalse(text.contains("seal-holds"), text);
        assertTrue(text.contains("Only if 'The seal holds when you breathe out' is no."), text);
        assertTrue(
                text.contains(
                        "Only if before this group of steps 'The seal holds when you breathe out'"
                                + " is no."),
                text);
        assertTrue(text.contains("Only if 'Is the wearer shaved?' is stubble."), text);
        assertTrue(text.contains("Only if 'Pressure drop at the end' is above 1 mbar."), text);
    }

    @Test
    void whereNothingIsWornNothingIsSaidOfDonnings() {
        String text =
                Form.of(Read.shipped("/protocols/instrument-check.yaml"), "my own/check $1.yaml", 7)
                        .text(80);
        String form = text.substring(text.indexOf("How to fill it in"));
        assertFalse(form.matches("(?s).*([Rr]ound is|donning|pull that).*"), form);
    }
}
