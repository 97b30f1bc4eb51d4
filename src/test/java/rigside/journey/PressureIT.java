package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Timed inhalations with a gauge that appends to a file, and after it has fallen silent. */
class PressureIT {
    @TempDir Path home;

    @Test
    void thePullIsJudgedByItsTraceAndByTheTesterOnceTheGaugeIsSilent() throws Exception {
        Path protocol = Journey.resource("/journey/pulls.yaml", home);
        Path log = Files.createFile(home.resolve("gauge.txt"));
        Path rig =
                Files.writeString(
                        home.resolve("gauge.rig.yaml"),
                        """
                        format: 1
                        title: a gauge (invented)
                        feeds:
                          - {id: gauge, quantity: mask-pressure, file: gauge.txt,
                             pattern: 'P (?<value>[-.0-9]+)', unit: Pa, lost-after: 2 s}
                        """);
        try (Journey journey = Journey.at(home, 80, 24);
                Instrument gauge = Instrument.writing(log, "P 0\n")) {
            journey.start("run", protocol.toString(), "--rig", rig.toString(), "--seed", "3")
                    .doesAsAskedUntil("start the lead-in")
                    .sees("Gauge now: 0 Pa.")
                    .trigger()
                    .sees("breathe in and hold it there")
                    .sees("too weak");
            gauge.shows("P -104\n");
            journey.trigger().sees("hold it there   1.").sees("too hard");
            gauge.shows("P 0\n");
            journey.trigger()
                    .sees("complete this donning")
                    .press("e")
                    .sees("% in band")
                    .press("Enter")
                    .sees("complete this donning");
            assertEquals(1, journey.events("entry-traced"));
            String traced = journey.line("entry-traced");
            double mean = Double.parseDouble(traced.replaceAll(".*\"mean\":([-.0-9]+).*", "$1"));
            assertEquals(104, mean, 10, "its rise and fall are part of it");
            assertTrue(
                    journey.line("\"event\":\"entry-captured\"")
                            .contains("\"source\":\"instrument\""));
            gauge.fallsSilent();
            journey.doesAsAskedUntil("start the lead-in")
                    .sees("GAUGE SILENT")
                    .trigger()
                    .sees("breathe in and hold it there");
            // No pull is shorter than 0.75 s: presses within it end nothing.
            for (int press = 0; press < 20 && !journey.screen().contains("it was held"); press++) {
                journey.trigger();
            }
            journey.sees("it was held").press("y").sees("complete this donning");
            assertEquals(1, journey.events("entry-traced"));
            journey.press("C-c").sees("left with 0");
        }
    }
}
