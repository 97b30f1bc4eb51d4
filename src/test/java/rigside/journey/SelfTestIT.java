package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A self-test in a real terminal, which answers where its cursor is; and a session after it. */
class SelfTestIT {
    @TempDir Path home;

    @Test
    void aSelfTestIsMadeAndTheNextSessionRecordsIt() throws Exception {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("selftest").sees("What is tried").press("Enter");
            for (int cue = 0; cue < 8; cue++) {
                journey.sees("Did you hear it?").press(cue == 1 ? "n" : "y");
            }
            journey.sees("Your reaction").press("Enter");
            while (!journey.screen().contains("What was found")) {
                if (journey.screen().contains("Press [Space].")) {
                    journey.hesitate().trigger().seesNo("Press [Space].");
                }
            }
            journey.sees("What was found").sees("there and back in").sees("Cues not heard: go");
            journey.press("Enter").sees("left with 0");
            assertTrue(Files.readString(home.resolve("self-test.json")).contains("\"answers\":50"));
            journey.start("run", "breathing-only").sees("read these cautions").press("C-q");
            journey.sees("left with 0");
            assertEquals(1, journey.events("self-tested"));
            assertTrue(journey.journal().get(1).contains("\"unheard\":\"go\""));
        }
    }
}
