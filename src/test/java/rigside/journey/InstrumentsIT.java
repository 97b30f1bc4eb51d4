package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole session with three instruments: a gauge on a pipe, the room's counter that appends to a
 * file, and the mask's counter on a serial line that is torn out in the middle and put back.
 */
class InstrumentsIT {
    @TempDir Path home;

    @Test
    void theSessionGoesOnWhileAnInstrumentIsTornOut() throws Exception {
        Path protocol = Journey.resource("/journey/instruments.yaml", home);
        Path pipe = Instrument.pipe(home.resolve("gauge"));
        Path log = Files.createFile(home.resolve("room.csv"));
        Path ours = home.resolve("ours");
        Path theirs = home.resolve("theirs");
        Process line = Instrument.line(ours, theirs);
        Path rig = Files.writeString(home.resolve("bench.rig.yaml"), rig(ours));
        try (Journey journey = Journey.at(home, 100, 30);
                Instrument gauge = Instrument.writing(pipe, "P -12.5\n");
                Instrument room = Instrument.writing(log, "5;4000,5\n");
                Instrument mask = Instrument.writing(theirs, "40.5\r\n")) {
            journey.start("feed", rig.toString(), "--seconds", "2").sees("left with 0");
            journey.start("run", protocol.toString(), "--rig", rig.toString(), "--seed", "3")
                    .doesAsAskedUntil("complete this donning")
                    .press("Enter");
            assertEquals(0, journey.events("feed-failed"));
            Instrument.end(line);
            journey.sees("mask: serial port")
                    .doesAsAskedUntil("Concentration in the mask")
                    .answer("40.5");
            line = Instrument.line(ours, theirs);
            journey.sees("mask: reads well again")
                    .doesAsAskedUntil("close the session")
                    .press("Enter")
                    .sees("home")
                    .press("Enter")
                    .sees("left with 0");
            assertEquals(1, journey.events("feed-failed"));
            assertEquals(1, journey.events("feed-back"));
            assertEquals(1, sources(journey, "typed"));
            assertEquals(15, sources(journey, "instrument"));
            assertTrue(gauge.isWell() && room.isWell() && mask.isWell());
            for (String feed : List.of("gauge", "room", "mask")) {
                assertFalse(Files.exists(journey.session().resolve("raw-" + feed + ".tsv")));
                aligned(journey, unpacked(journey.session().resolve("raw-" + feed + ".tsv.gz")));
            }
        } finally {
            Instrument.end(line);
        }
    }

    private static String rig(Path serial) {
        return """
        format: 1
        title: three instruments (invented)
        feeds:
          - {id: gauge, quantity: mask-pressure, pipe: gauge, pattern: 'P (?<value>[-.0-9]+)',
             unit: Pa}
          - {id: room, quantity: ambient-concentration, file: room.csv, column: 2,
             separator: semicolon, decimal: comma, unit: /cm3}
          - {id: mask, quantity: mask-concentration, serial: %s, column: 1, unit: /cm3}
        """
                .formatted(serial);
    }

    private static long sources(Journey journey, String source) {
        return journey.journal().stream()
                .filter(line -> line.contains("\"source\":\"" + source + "\""))
                .count();
    }

    private static List<String> unpacked(Path file) {
        try (GZIPInputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII).lines().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Every line carries a session time, none earlier than the one before or after the end. */
    private static void aligned(Journey journey, List<String> lines) {
        String last = journey.lastEvent();
        double end = Double.parseDouble(last.replaceAll(".*\"at\":([0-9]+).*", "$1")) / 1e9;
        double before = 0;
        assertTrue(lines.size() > 100, () -> lines.toString());
        for (String line : lines.subList(1, lines.size())) {
            double at = Double.parseDouble(line.substring(0, line.indexOf('\t')));
            assertTrue(before <= at && at <= end + 60, line);
            before = at;
        }
    }
}
