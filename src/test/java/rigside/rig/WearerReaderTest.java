package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.yaml.Document;

class WearerReaderTest {
    @Test
    void theRigOfTheDemonstrationIsReadInSi() throws IOException {
        Wearer wearer = WearerReader.read("demo", demo()).value().orElseThrow();
        assertEquals(3.8e9, wearer.ambient(), 1);
        assertEquals(7.8, wearer.behaviour("with-disc").inhalation().median(), 1e-12);
        assertEquals(Math.log(1.2), wearer.behaviour("plain").fitFactor().between(), 1e-12);
    }

    @Test
    void aConditionNotListedFaresLikeTheFirst() throws IOException {
        Wearer wearer = WearerReader.read("demo", demo()).value().orElseThrow();
        assertEquals(wearer.behaviour("plain"), wearer.behaviour("other"));
    }

    @Test
    void aGaugeIsFollowedWhereTheFileSaysSo() throws IOException {
        assertFalse(WearerReader.read("demo", demo()).value().orElseThrow().gauge());
        String with = demo().replace("\nambient:", "\ngauge: yes\nambient:");
        assertTrue(WearerReader.read("demo", with).value().orElseThrow().gauge());
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "ambient: 3800 /cm3|ambient: 3800 Pa|'3800 Pa', a pressure, must be a particle concentration",
                "ambient: 3800 /cm3|ambient: 0 /cm3|must be above 0",
                "ambient-varies: 3 %|ambient-varies: 3|'3', a plain number, must be a percentage",
                "ambient-varies: 3 %|ambient-varies: 950 %|'950 %', must be from 0 to 900 %",
                "median: 6.1 s|median: 6.1|must be a time",
                "title: |titel: |unknown key 'titel'",
                "format: 1|format: 2|write a number from 1 to 1"
            })
    void mistakesAreToldWithTheirCure(String right, String wrong, String told) throws IOException {
        String text = demo();
        assertTrue(text.contains(right));
        int at =
                text.indexOf("\n" + right) < 0
                        ? text.indexOf(right)
                        : text.indexOf("\n" + right) + 1;
        Document<Wearer> read =
                WearerReader.read(
                        "rig.yaml",
                        text.substring(0, at) + wrong + text.substring(at + right.length()));
        assertEquals(1, read.problems().size(), read.problems().toString());
        assertTrue(read.problems().get(0).toString().contains(told), read.problems().toString());
    }

    private static String demo() throws IOException {
        try (InputStream in =
                WearerReaderTest.class.getResourceAsStream("/demo/prefilter-disc.rig.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
