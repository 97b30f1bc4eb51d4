package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * What R gives for the three sessions {@code seconds} of {@code across.R} (metafor, lm, qchisq).
 */
final class Expected {
    /** The sessions of the script. */
    static final SomeValues ONE =
            SomeValues.on("2026-03-02", new double[] {6.1, 6.3, 5.9}, new double[] {7.2, 7.9, 7.1});

    static final SomeValues TWO =
            SomeValues.on(
                    "2026-03-09",
                    new double[] {5.6, 5.9, 5.5, 5.8},
                    new double[] {7.0, 6.8, 7.1, 7.2});
    static final SomeValues THREE =
            SomeValues.on("2026-03-16", new double[] {6.6, 6.4}, new double[] {7.3, 7.5});

    private Expected() {}

    static void near(String name, double actual) {
        double value = read().get(name).doubleValue();
        assertEquals(value, actual, 1e-9 * Math.abs(value), name);
    }

    private static JsonNode read() {
        try (InputStream in = Expected.class.getResourceAsStream("/rigside/decide/across.json")) {
            return new ObjectMapper().readTree(in).get("seconds");
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
