package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.session.Input;
import rigside.session.Story;

class ReviewLinesTest {
    private static String review(Story story) {
        Shown shown = Shown.of(story.state(), Analysis.of(story.state()));
        List<String> lines = new ReviewLines(story.state(), shown, story.journal()).all();
        return String.join("\n", lines);
    }

    @Test
    void anOpenDonningKeepsItsTimesConcealed() {
        Story open = Story.atFirstDonning().purged().exercised("23.4").inhaled(6.125);
        String review = review(open);
        assertFalse(review.contains("6.125"), review);
        assertTrue(review.contains("concealed"), review);
    }

    @Test
    void aCompleteDonningShowsThem() {
        String review = review(Story.atFirstDonning().donning("23.4", 6.125));
        assertTrue(review.contains("6.125"), review);
        assertTrue(review.contains("23.4"), review);
    }

    @Test
    void whatWasStruckOutIsThereWithItsReason() {
        Story story = Story.atFirstDonning().donning("23.4", 6.125);
        story.send(new Input.VoidAsked(3, "door was open"));
        assertTrue(review(story).contains("struck out: door was open"));
    }

    @Test
    void notesAreThere() {
        Story story = Story.atFirstDonning().send(new Input.NoteTyped("a cold room"));
        assertTrue(review(story).contains("\nNotes\n  a cold room\n"), review(story));
    }

    @Test
    void whatWasLeftOutIsThereWithItsReason() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000");
        story.send(new Input.LeaveOutAsked("counter froze"));
        String review = review(story);
        assertTrue(
                review.contains(
                        "\nLeft out\n  donning 1 (Mask as it is), concentration in the mask, exercise 1 Normal"
                                + " breathing: counter froze\n"),
                review);
    }

    @Test
    void aFailedCheckIsSaidOnce() {
        Story story = Story.atFirstDonning().goOn().answer(false);
        String review = review(story);
        String check = story.state().captured().failedChecks().get(0).text();
        assertEquals(review.indexOf(check), review.lastIndexOf(check), review);
        assertTrue(
                review.contains("\nFailed checks\n  donning 1 (Mask as it is), " + check), review);
    }

    @Test
    void anEntryOfAStepThatNoLongerAppliesIsMarkedWhereverItStands() {
        Story story = Story.of("/session/groups.yaml").goOn().type("60").type("shaved").goOn();
        story.goOn().goOn().type("50").type("51").type("52").type("101").type("wet");
        String before = review(story);
        assertFalse(before.contains("no longer applies"), before);
        story.send(new Input.VoidAsked(6, "misread"));
        String review = review(story);
        assertTrue(
                review.contains(
                        "\nNot counted\n  donning 1 (Mask as it is), entry 7, Why so much?: of a step that no longer"
                                + " applies\n"),
                review);
        assertTrue(
                review.contains("Why so much?: wet, not counted: of a step that no longer applies"),
                review);
    }

    /** Kept as a note: an outcome never goes silently. */
    @Test
    void anAnswerTakenBackIsANote() {
        Story story = Story.of("/session/groups.yaml").goOn().type("60").type("shaved").goOn();
        String review = review(story.answer(false).send(new Input.UndoAsked()));
        assertFalse(review.contains("Failed checks"), review);
        assertTrue(
                review.contains(
                        "\nNotes\n  donning 1 (Mask as it is), taken back: a no at \"The seal holds when you breathe"
                                + " out\"\n"),
                review);
    }
}
