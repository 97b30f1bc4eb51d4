package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.session.Event;

class SelfTestFileTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    @TempDir Path home;

    private static Event.SelfTested found(String terminal) {
        return new Event.SelfTested(
                "2026-01-05T08:00:00Z",
                terminal,
                50,
                0.001,
                0.002,
                0.003,
                "bell",
                List.of(0.21, 0.25),
                List.of("go", "stop"),
                List.of("half-way"));
    }

    @Test
    void theLastOneIsKept() throws IOException {
        Path below = home.resolve("not/there/yet");
        SelfTestFile.write(below, found("first"), MORNING);
        Path file = SelfTestFile.write(below, found("second"), MORNING);
        assertEquals(Optional.of(found("second")), SelfTestFile.read(below));
        try (Stream<Path> files = Files.list(below)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void nothingIsReadWhereThereIsNone() {
        assertEquals(Optional.empty(), SelfTestFile.read(home));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "not json",
                "{\"n\":1,\"wall\":\"2026-01-05T08:00:00Z\",\"at\":0,\"event\":\"session-left\"}",
                "{\"n\":1,\"wall\":\"2026-01-05T08:00:00Z\",\"at\":0,\"event\":\"self-tested\"}"
            })
    void nothingIsReadWhereItMakesNoSense(String text) throws IOException {
        Files.writeString(home.resolve("self-test.json"), text);
        assertEquals(Optional.empty(), SelfTestFile.read(home));
    }
}
