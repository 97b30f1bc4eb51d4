package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypingTest {
    private static final Story AT_TEMPERATURE = Story.of("/session/small.yaml").goOn().type("W1");

    @ParameterizedTest(name = "{0} is taken as {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "21|21 degC",
                "21.5|21.5 degC",
                "21,5|21.5 degC",
                " 21 |21 degC",
                "+21|21 degC",
                "2.1e1|21 degC",
                "21.|21 degC",
                "294.15 K|21 degC",
                "21 degC|21 degC"
            })
    void commaAndPointAndUnitsAreUnderstood(String typed, String taken) {
        Typing.Meaning meaning =
                Typing.meaning(AT_TEMPERATURE.state(), slot(AT_TEMPERATURE), typed);
        assertEquals(
                taken, assertInstanceOf(Typing.Meaning.Taken.class, meaning).value().toString());
    }

    @ParameterizedTest(name = "{0} is refused")
    @ValueSource(
            strings = {
                "",
                " ",
                "warm",
                "1,234.5",
                "1.2.3",
                "--4",
                "NaN",
                "Infinity",
                "1e999",
                "21 Pa",
                "0x15",
                "21\u0007",
                "1e",
                ",",
                "9999999999999999999999999999999999999999999999"
            })
    void whatIsNoNumberIsRefusedInWords(String typed) {
        Typing.Meaning meaning =
                Typing.meaning(AT_TEMPERATURE.state(), slot(AT_TEMPERATURE), typed);
        assertTrue(assertInstanceOf(Typing.Meaning.Refused.class, meaning).why().length() > 10);
    }

    @Test
    void aMaskReadingOfMoreThanHalfTheAmbientIsDoubted() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000").type("2001");
        assertEquals(
                "2001 /cm3 in the mask is more than half the ambient 4000 /cm3",
                assertInstanceOf(Activity.Doubting.class, story.activity()).why());
    }

    @Test
    void readingsThatGiveNoFitFactorAreRefused() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20);
        assertTrue(story.type("0").refusal().contains("gives no fit factor"));
        assertTrue(story.type("4000").type("0").refusal().contains("no detection limit"));
        assertTrue(story.type("-1").refusal().contains("below 0"));
    }

    @ParameterizedTest(name = "{0} on a scale of 1 to 5: {1}")
    @CsvSource({"1,true", "5,true", "0,false", "6,false", "2.5,false", "x,false"})
    void aScaleTakesItsWholeNumbers(String typed, boolean taken) {
        Story story = Story.atFirstDonning();
        while (!(story.activity() instanceof Activity.NextDonning next
                && next.condition().equals("disc"))) {
            story.donning("40", 6);
        }
        story.purged().exercised("40").inhaled(6).pass(30).inhaled(6);
        story.type(typed);
        assertEquals(taken, story.refusal().isEmpty(), story.refusal());
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"1,1", "2,2", "0,0", "3,2", "on,on the nose"})
    void theWordingOfAChoiceGoesBeforeItsPosition(String typed, String taken) {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
                                "    unit: degC\n    from: 10\n    to: 35\n",
                                "    choices: [\"0\", \"1\", \"2\", on the nose]\n");
        Story story =
                Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1))
                        .goOn()
                        .type("W1");
        Typing.Meaning meaning = Typing.meaning(story.state(), slot(story), typed);
        assertEquals(
                taken, assertInstanceOf(Typing.Meaning.Taken.class, meaning).value().toString());
    }

    @Test
    void sizesNoBenchKnowsAreRefused() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20);
        assertTrue(story.type("4e304").refusal().contains("too large or too small"));
        assertTrue(story.type("1e-300").refusal().contains("too large or too small"));
    }

    @Test
    void anAmbientFarFromTheLastIsDoubted() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000").type("40");
        story.goOn().pass(20).type("40").type("11");
        assertEquals(
                "11 /cm3 is far from the last ambient 4000 /cm3",
                assertInstanceOf(Activity.Doubting.class, story.activity()).why());
    }

    private static Slot slot(Story story) {
        return ((Activity.Filling) story.activity()).slot();
    }
}
