package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A protocol is drafted from the home screen by the keyboard alone, and a session is begun by it.
 */
class DraftIT {
    @TempDir Path home;

    @Test
    void aProtocolIsDraftedSavedAndStarted() throws IOException {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start().sees("draft a new one").press("d").sees("What is compared?");
            journey.type("Straps (invented)").sees("Straps (invented)").press("Enter");
            journey.sees("How many ways").press("Enter").sees("Name of condition 1");
            journey.type("loose").press("Enter").sees("Which piece").press("Enter");
            journey.sees("worn before").press("Enter").sees("Name of condition 2");
            journey.type("tight").press("Enter").sees("Which piece").press("Enter");
            journey.sees("worn before").press("Enter").sees("What is measured?");
            journey.press("Space").sees("[ ] how well it seals").press("Enter");
            journey.sees("Which suction").press("Enter").sees("How many timed").press("Enter");
            journey.sees("inhalation time would matter").press("Enter");
            journey.sees("Which way").press("Left").sees("would matter").press("Enter");
            journey.sees("Which way").press("Enter").sees("spread").press("Enter");
            journey.sees("looked at first").press("Enter").sees("How much time").press("Enter");
            journey.sees("rounds at most").press("Enter").sees("concealed").press("Enter");
            journey.sees("Which question").press("Enter").sees("no problems");
            journey.press("Enter").sees("Under which name").press("Enter").sees("saved as");
            assertTrue(Files.exists(home.resolve("protocols/straps-invented.yaml")));
            journey.press("r").sees("simulated rig x30").press("Enter").sees("Stop at once");
            journey.press("C-c").sees("Straps").press("q").sees("left with 0");
        }
    }
}
