package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawingTest {

    /** Every scene after every seventh one, so that each follows some that are quite unlike it. */
    @ParameterizedTest
    @CsvSource({"80, 24", "200, 60", "60, 18"})
    void whatIsDrawnOverAnotherPictureIsWhatIsDrawnOnABlankOne(int columns, int rows) {
        List<View> views = new ArrayList<>(Scenes.steps().values());
        views.addAll(Scenes.pages().values());
        for (int at = 0; at < views.size(); at++) {
            View before = views.get((at + 7) % views.size());
            View after = views.get(at);
            assertEquals(
                    Drawn.of(after, columns, rows),
                    Drawn.over(before, after, columns, rows),
                    "scene " + at);
        }
    }

    @ParameterizedTest
    @CsvSource({"80, 24"})
    void anotherStyleIsDrawnWhole(int columns, int rows) {
        View view = Scenes.steps().values().iterator().next();
        View plain = Scenes.styled(view, Scenes.ASCII);
        assertEquals(Drawn.of(plain, columns, rows), Drawn.over(view, plain, columns, rows));
    }
}
