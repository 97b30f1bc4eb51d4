package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fact mistyped at the bench is amended by keyboard, the program killed, the record verified. */
class AmendIT {
    private static final String DEMO = Path.of("demo/prefilter-disc.yaml").toAbsolutePath() + "";

    @TempDir Path home;

    @Test
    void whatWasMistypedIsAmendedAndStaysOnRecord() {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", DEMO, "--simulated", "--seed", "3", "--mute")
                    .doesAsAskedUntil("Room temperature")
                    .answer("12")
                    .sees("Vital capacity")
                    .press("Enter")
                    .sees("it is so")
                    .press("e")
                    .sees("12 degC")
                    .press("Down", "Down", "Down")
                    .sees("amend it")
                    .press("a")
                    .sees("The right value")
                    .answer("warm")
                    .sees("'warm'")
                    .press("C-u")
                    .answer("21.5")
                    .sees("Why is it amended")
                    .answer("misread")
                    .sees("AMENDED 21.5 degC: misread")
                    .recorded("entry-amended")
                    .kill9()
                    .start("resume", journey.session().toString())
                    .sees("it is so")
                    .press("e")
                    .sees("AMENDED 21.5 degC: misread")
                    .press("Enter", "q")
                    .sees("left with 0")
                    .start("verify", journey.session().toString())
                    .sees("left with 0");
            assertEquals(1, journey.events("entry-amended"));
            assertTrue(
                    journey.line("entry-captured").contains("\"number\":12.0"),
                    "what was typed first stays");
        }
    }
}
