package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed in the middle of an exercise, of a trial and of a rest, and taken up. */
class KilledIT {
    @TempDir Path home;

    @Test
    void nothingThatWasCapturedIsLost() throws IOException {
        Path protocol = Journey.resource("/journey/short.yaml", home);
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", protocol.toString(), "--simulated", "--speed", "1", "--seed", "3")
                    .doesAsAskedUntil("start the exercise")
                    .press("Enter")
                    .sees("Stand still");
            broken(journey, "exercise-started");
            journey.sees("the mask stayed on")
                    .press("Enter")
                    .sees("start the exercise")
                    .doesAsAskedUntil("my lungs are full");
            broken(journey, "trial-started");
            journey.sees("the mask stayed on")
                    .press("Enter")
                    .doesAsAskedUntil("it was held")
                    .press("y")
                    .sees("leave the next out");
            broken(journey, "entry-captured");
            journey.sees("the mask stayed on")
                    .press("Enter")
                    .doesAsAskedUntil("complete this donning")
                    .press("q")
                    .sees("left with 0");
            assertEquals(1, journey.events("exercise-interrupted"));
            assertEquals(1, journey.events("trial-interrupted"));
            assertEquals(3, journey.events("session-reopened"));
            assertEquals(6, journey.events("entry-captured"));
        }
    }

    /** Kills the program, takes the session up again, and finds all that was there. */
    private static void broken(Journey journey, String lastEvent) {
        journey.recorded(lastEvent).kill9();
        List<String> before = journey.journal();
        journey.start("resume", journey.session().toString()).sees("stayed on");
        assertEquals(before, journey.journal().subList(0, before.size()));
    }
}
