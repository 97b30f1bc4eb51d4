package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The terminal itself: left as it was found, followed when it changes, drawn as far as it can. */
class TerminalIT {
    @TempDir Path home;

    @ParameterizedTest(name = "{0}")
    @CsvSource({"TERM, 143", "HUP, 129", "INT, 130"})
    void aProgramToldToEndLeavesTheTerminalAsItWas(String signal, int exit) throws IOException {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.shell("stty -a > before")
                    .start("run", "prefilter-disc", "--simulated")
                    .readsToTheEnd()
                    .press("Enter")
                    .sees("Wearer code")
                    .signal(signal)
                    .sees("left with " + exit)
                    .seesNo("Wearer code")
                    .shell("stty -a > after; echo com''pared")
                    .sees("compared");
            assertEquals(
                    Files.readString(home.resolve("before")),
                    Files.readString(home.resolve("after")));
            assertTrue(journey.lastEvent().contains("session-left"), journey.lastEvent());
        }
    }

    @Test
    void ctrlCLeavesInOrderAndCtrlZDoesNotSuspend() {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", "prefilter-disc")
                    .readsToTheEnd()
                    .press("C-z", "Enter")
                    .sees("Wearer code")
                    .press("C-c")
                    .sees("left with 0");
            assertTrue(journey.lastEvent().contains("session-left"), journey.lastEvent());
        }
    }

    @Test
    void aWindowTooSmallSaysSoAndIsDrawnAgainWhenItGrows() {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", "prefilter-disc")
                    .sees("read on")
                    .resize(30, 8)
                    .sees("Too small to show")
                    .sees("This terminal has 30 columns")
                    .resize(160, 48)
                    .seesNo("Too small to show")
                    .sees("read and understood")
                    .sees("not an occupational fit test")
                    .resize(80, 24)
                    .sees("read on")
                    .press("q")
                    .sees("left with 0");
        }
    }

    @Test
    void keysThatMeanNothingDoNothing() {
        try (Journey journey = Journey.at(home, 80, 24)) {
            journey.start("run", "prefilter-disc").readsToTheEnd();
            journey.press("x", "Space", "5", "F7", "Insert", "Home", "End", "Left", "M-x", "C-s")
                    .press("C-z", "BSpace", "Tab", "DC", "y", "n", "m", "d", "l", "u")
                    .press("Enter")
                    .sees("Wearer code");
            assertEquals(2, journey.journal().size());
            journey.press("C-q").sees("left with 0");
        }
    }

    @Test
    void aBareLocaleIsDrawnInPlainCharacters() {
        try (Journey journey = Journey.at(home, 80, 24, "LC_ALL=C", "NO_COLOR=1")) {
            journey.start().sees("Start from a protocol");
            assertTrue(journey.screen().chars().allMatch(each -> each < 127), journey.screen());
            journey.press("q").sees("left with 0");
        }
    }
}
