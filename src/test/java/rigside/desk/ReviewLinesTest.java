package rigside.desk;

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
    void anOpenDonningKeepsItsValuesConcealed() {
        Story open = Story.atFirstDonning().purged().exercised("23.4").inhaled(6.125);
        String review = review(open);
        assertFalse(review.contains("6.125"), review);
        assertFalse(review.contains("23.4"), review);
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
        assertTrue(review(story).contains("a cold room"));
    }
}
