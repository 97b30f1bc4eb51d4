package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rigside.session.Event;
import rigside.session.Story;

class FitListTest {
    private static final String GRIMACE =
"""
    exercises:
      - title: Grimace
        say: Smile and frown.
        for: 15 s
        counted: no
""";

    @Test
    void anExerciseWithoutAMaskSampleDoesNotShiftTheFitFactorsOfTheOthers() {
        String text = Story.text("/session/small.yaml").replace("    exercises:\n", GRIMACE);
        Story story =
                Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1))
                        .goOn()
                        .type("W1")
                        .type("21")
                        .goOn()
                        .purged()
                        .goOn()
                        .pass(15)
                        .goOn()
                        .pass(20)
                        .type("4000")
                        .type("40");
        String picture = Drawn.of(Scenes.step(story), 80, 24);
        assertTrue(line(picture, "2 Normal breathing").contains("fit factor 100"), picture);
        assertTrue(line(picture, "1 Grimace").endsWith("fit factor of exercise 2"), picture);
        assertFalse(line(picture, "1 Grimace").contains("100"), picture);
    }

    private static String line(String picture, String part) {
        return picture.lines().filter(line -> line.contains(part)).findFirst().orElse("");
    }
}
