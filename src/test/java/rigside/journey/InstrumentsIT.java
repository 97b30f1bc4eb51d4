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
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole session with all its readings from instruments: a gauge on a pipe, the room's counter
 * that appends to a file, and the mask's counter on a serial line, a pair of pseudo terminals. A
 * gate that is not met, the fit factor while an exercise runs, and the serial line torn out in the
 * middle and put back.
 */
class InstrumentsIT {
    private static final int DONNINGS = 4;

    @TempDir Path home;

    /** Breaths of 1.5 s, 60 Pa deep. */
    private static String breathing(double seconds) {
        return String.format(Locale.ROOT, "P %.2f%n", -60 * Math.sin(2 * Math.PI * seconds / 1.5));
    }

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
                Instrument gauge = Instrument.writing(pipe, InstrumentsIT::breathing);
                Instrument room = Instrument.writing(log, "5;4000,5\n");
                Instrument mask = Instrument.writing(theirs, "40.5\r\n")) {
            journey.start("feed", rig.toString(), "--seconds", "2").sees("left with 0");
            journey.start("run", protocol.toString(), "--rig", rig.toString(), "--seed", "3")
                    .doesAsAskedUntil("needed at most 0.05 /cm3.");
            mask.shows("0.0\r\n");
            mask.writes(4);
            journey.press("Enter").sees("start reading").press("Enter").sees("gate 2 of 2");
            mask.shows("40.5\r\n");
            journey.doesAsAskedUntil("fit factor so far 98").sees("counting alone leaves");
            inhales(journey, gauge);
            assertEquals(0, journey.events("feed-failed"));

            journey.doesAsAskedUntil("start the exercise").press("Enter").sees("it reads 4000");
            Instrument.end(line);
            journey.sees("mask: serial port")
                    .doesAsAskedUntil("Concentration in the mask")
                    .answer("40.5");
            line = Instrument.line(ours, theirs);
            journey.sees("mask: reads well again");
            inhales(journey, gauge);
            inhales(journey, gauge);
            inhales(journey, gauge);
            journey.doesAsAskedUntil("close the session")
                    .press("Enter")
                    .sees("home")
                    .press("Enter")
                    .sees("left with 0");
            nothingIsLost(journey);
            assertTrue(gauge.isWell() && room.isWell() && mask.isWell());
            journey.start("analyse", journey.session().toString())
                    .sees("needed at most 0.05 /cm3: NOT MET")
                    .sees("left with 0");
        } finally {
            Instrument.end(line);
        }
    }

    /** The trial of a donning: the gauge is held at its target, then the donning is completed. */
    private static void inhales(Journey journey, Instrument gauge) {
        journey.doesAsAskedUntil("my lungs are full");
        gauge.shows("P -100.0\n");
        gauge.writes(40);
        journey.trigger();
        gauge.shows("P 0.0\n");
        journey.doesAsAskedUntil("complete this donning");
        gauge.shows(InstrumentsIT::breathing);
        journey.press("Enter").seesNo("complete this donning");
    }

    /**
     * Of each donning two ambient and two mask concentrations and a peak pressure, all but one from
     * instruments, and a traced inhalation; before them the gate of filtered air twice, and that of
     * the room.
     */
    private static void nothingIsLost(Journey journey) {
        assertEquals(1, journey.events("feed-failed"));
        assertEquals(1, journey.events("feed-back"));
        assertEquals(3 + DONNINGS * 6, journey.events("entry-captured"));
        assertEquals(1, sources(journey, "typed"));
        assertEquals(3 + DONNINGS * 6 - 1, sources(journey, "instrument"));
        assertEquals(2 * DONNINGS, journey.events("entry-traced"));
        assertEquals(0, journey.events("void-offered"));
        for (String feed : List.of("gauge", "room", "mask")) {
            assertFalse(Files.exists(journey.session().resolve("raw-" + feed + ".tsv")));
            aligned(journey, unpacked(journey.session().resolve("raw-" + feed + ".tsv.gz")));
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
