package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration from its cautions to its recommendation, with a very fast simulated rig. */
class WholeSessionIT {
    @TempDir Path home;

    @Test
    void theDemonstrationIsLedToItsRecommendation() throws IOException {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", "prefilter-disc", "--simulated", "--speed", "1000", "--seed", "3")
                    .sees("read these cautions")
                    .sees("simulated rig x1000: invented values")
                    .doesAsAskedUntil("end the donnings")
                    .sees("Enough")
                    .doesAsAskedUntil("close the session")
                    .press("Enter")
                    .sees("home")
                    .press("Enter")
                    .sees("left with 0");
            assertTrue(journey.lastEvent().contains("session-closed"), journey.lastEvent());
            assertEquals(5, journey.events("look-taken"));
            assertEquals(10, journey.events("donning-completed"));
            List<String> readings = readings(journey.journal());
            journey.start("rehearse", "prefilter-disc", "--seed", "3", "--into", "rehearsed")
                    .sees("left with 0");
            Path rehearsed = Journey.onlyFolder(home.resolve("rehearsed"));
            assertEquals(
                    readings(Files.readAllLines(rehearsed.resolve("journal.jsonl"))), readings);
        }
    }

    /** What the rig answered, in order, without when it did and the number of the entry. */
    private static List<String> readings(List<String> journal) {
        return journal.stream()
                .filter(line -> line.contains("\"source\":\"simulated\""))
                .map(line -> line.substring(line.indexOf("\"slot\""), line.indexOf(",\"hash\"")))
                .toList();
    }
}
