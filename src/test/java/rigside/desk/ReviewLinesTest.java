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
                        "\nLeft out\n  donning 1, concentration in the mask, exercise 1 Normal"
                                + " breathing: counter froze\n"),
                review);
    }

    @Test
    void aFailedCheckIsSaidOnce() {
        Story story = Story.atFirstDonning().goOn().answer(false);
        String review = review(story);
        String check = story.state().captured().failedChecks().get(0).text();
        assertEquals(review.indexOf(check), review.lastIndexOf(check), review);
        assertTrue(review.contains("\nFailed checks\n  donning 1, " + check), review);
    }
}
