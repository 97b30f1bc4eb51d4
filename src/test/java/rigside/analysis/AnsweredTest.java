package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.decide.Verdict;
import rigside.protocol.Measure;
import rigside.session.Activity;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Slot;
import rigside.session.Story;
import rigside.session.Value;

/** Answers that decide which readings enter, struck out after a look had used them. */
class AnsweredTest {
    private static final String READINGS =
            """
              - step: group
                group: reading
                times: 3
            """;

    /** Another reading is taken when the hose was shaken, or when the wearer is not shaved. */
    private static Story opened(String onlyIf) {
        String asked =
                """
                  - step: form
                    title: Hose
                    fields:
                      - id: hose
                        ask: Was the hose shaken?
                        choices: [shaken, still]
                """;
        String again =
                """
                  - step: group
                    group: reading
                    only-if: %s
                """
                        .formatted(onlyIf);
        String text = Story.text("/session/groups.yaml");
        assertTrue(text.contains(READINGS));
        String changed = text.replace(READINGS, READINGS + asked + again);
        return Story.opened(
                        new Event.SessionOpened(
                                "test", "groups.yaml", changed, 7, "typed", "", false, 1))
                .goOn()
                .type("60")
                .type("stubble")
                .goOn();
    }

    /** A donning of either condition with its pressure drops, and the one read again. */
    private static void donning(Story story, double bare, double disc, double again) {
        story.goOn();
        boolean worn = open(story).condition().equals("disc");
        String drop = String.valueOf(worn ? disc : bare);
        story.goOn().goOn().type(drop).type(drop).type(drop).type(worn ? "shaken" : "still");
        if (asksAgain(story)) {
            story.type(worn ? String.valueOf(again) : drop);
        }
        story.type("60");
        if (worn) {
            story.type("4");
        }
        assertEquals(new Activity.DonningDone(open(story).number()), story.activity());
        story.goOn();
    }

    private static boolean asksAgain(Story story) {
        return story.activity() instanceof Activity.Filling filling
                && filling.slot().equals(new Slot.Field(filling.slot().place(), "drop-read"));
    }

    private static Donning open(Story story) {
        return story.state().course().open().orElseThrow();
    }

    private static Story round(Story story, double bare, double disc, double again) {
        donning(story, bare, disc, again);
        donning(story, bare, disc, again);
        return look(story);
    }

    private static Story look(Story story) {
        return story.send(
                new Input.LookArrived(Looks.of(Analysis.of(story.state()), story.state())));
    }

    private static Comparison comparison(Story story) {
        return Analysis.of(story.state())
                .measure("drop")
                .orElseThrow()
                .comparison("disc")
                .orElseThrow();
    }

    /** Three rounds; the reading taken again in the last spoils it. */
    private static Story spoilt(String onlyIf) {
        Story story = round(round(opened(onlyIf), 50, 75, 75), 50, 80, 80);
        return round(story, 50, 77.6, 300);
    }

    private static Entry last(Story story, String id) {
        return story.state().captured().entries().stream()
                .filter(entry -> entry.slot() instanceof Slot.Field field && field.id().equals(id))
                .filter(entry -> id.equals("beard") || isWord(entry, "shaken"))
                .reduce((first, next) -> next)
                .orElseThrow();
    }

    private static boolean isWord(Entry entry, String word) {
        return entry.value().equals(new Value.Said(word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{answer: hose, is: shaken}", "{answer: beard, is: stubble}"})
    void anAnswerStruckOutAfterItsLookCannotSettleTheQuestion(String onlyIf) {
        Story story = spoilt(onlyIf);
        assertEquals(Verdict.NOT_SETTLED, comparison(story).verdict());
        Entry answer = last(story, onlyIf.contains("hose") ? "hose" : "beard");
        story.send(new Input.VoidAsked(answer.number(), "mistaken"));
        Comparison without = comparison(look(story));
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, without.present());
        assertEquals(Verdict.NOT_SETTLED, without.verdict());
        assertTrue(without.dependsOnStruck());
        assertTrue(Bench.says(without.remarks(), "depends on a struck entry"));
    }

    /** The answer decides nothing the measure is made of. */
    @Test
    void anAnswerThatDecidesOtherStepsCostsTheMeasureNothing() {
        Story story = spoilt("{answer: hose, is: shaken}");
        story.send(new Input.VoidAsked(last(story, "beard").number(), "mistaken"));
        assertFalse(comparison(story).dependsOnStruck());
    }

    /** One is a number calculated with, the other decides about a step. */
    @Test
    void aFactThatValuesRestOnIsAmendedWithALook() {
        Story story = spoilt("{answer: beard, is: stubble}");
        assertFalse(story.state().lookDue());
        story.send(new Input.AmendAsked(1, "50", "misread", false));
        assertTrue(story.state().lookDue());
        assertFalse(look(story).state().lookDue());
        Entry answer = last(story, "beard");
        story.send(new Input.AmendAsked(answer.number(), "shaved", "mistaken", false));
        assertTrue(story.state().lookDue());
    }

    @Test
    void anAnswerStruckOutBeforeItsLookCostsNothing() {
        String onlyIf = "{answer: hose, is: shaken}";
        Story story = round(round(opened(onlyIf), 50, 75, 75), 50, 80, 80);
        donning(story, 50, 77.6, 300);
        donning(story, 50, 77.6, 300);
        story.send(new Input.VoidAsked(last(story, "hose").number(), "mistaken"));
        Comparison comparison = comparison(look(story));
        assertFalse(comparison.dependsOnStruck());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.verdict());
    }

    /** It is kept, named as what it is, and enters nothing. */
    @Test
    void anEntryOfAStepThatNoLongerAppliesDoesNotCount() {
        Story story = spoilt("{answer: hose, is: shaken}");
        assertEquals(Set.of(), Applicable.noLonger(story.state()));
        Entry answer = last(story, "hose");
        Entry again = story.state().captured().entry(answer.number() + 1).orElseThrow();
        story.send(new Input.VoidAsked(answer.number(), "mistaken"));
        assertEquals(Set.of(again.number()), Applicable.noLonger(story.state()));
        Measure drop = story.state().protocol().measure("drop").orElseThrow();
        int donning = again.slot().place().donning();
        DonningValue value =
                Values.of(Evidence.of(story.state()), drop).stream()
                        .filter(each -> each.donning() == donning)
                        .findFirst()
                        .orElseThrow();
        assertEquals(77.6, value.value().orElseThrow(), 1e-9);
        assertFalse(value.entries().contains(again.number()));
        assertEquals(List.of(), value.missing());
    }
}
