package rigside.journey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the home screen into a session, out of it, into it again, and through its review. */
class HomeIT {
    @TempDir Path home;

    @Test
    void aSessionIsStartedLeftResumedAndReviewed() throws IOException {
        Files.createDirectories(home.resolve("protocols"));
        Journey.resource("/journey/short.yaml", home.resolve("protocols"));
        Files.writeString(home.resolve("protocols/unfinished.yaml"), "format: 1\ntitle: t\n");
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start()
                    .sees("Short comparison (invented)")
                    .press("Down")
                    .sees("see the problems")
                    .press("Enter")
                    .sees("unfinished.yaml:")
                    .press("Enter", "Up")
                    .sees("start a session")
                    .press("r")
                    .sees("simulated rig x30")
                    .press("Enter")
                    .sees("read and understood")
                    .press("Enter")
                    .sees("begin this donning")
                    .press("q")
                    .sees("open, 0 rounds")
                    .sees("go on with it")
                    .press("Enter")
                    .sees("begin this donning")
                    .press("q")
                    .sees("open, 0 rounds")
                    .press("v")
                    .sees("Tally  0 rounds complete")
                    .press("Enter")
                    .sees("go on with it")
                    .press("q")
                    .sees("left with 0");
        }
    }

    @Test
    void oneSessionIsNotWrittenByTwoPrograms() {
        try (Journey first = Journey.at(home, 80, 24);
                Journey second = Journey.at(home, 80, 24)) {
            first.start("run", "prefilter-disc").readsToTheEnd();
            second.start("resume", first.session().toString())
                    .sees("this session is open in another program")
                    .sees("left with 1");
            first.press("Enter").sees("Wearer code").press("C-q").sees("left with 0");
        }
    }
}
