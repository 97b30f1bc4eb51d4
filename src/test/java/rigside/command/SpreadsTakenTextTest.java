package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rigside.archive.Archived;
import rigside.archive.Scaled;
import rigside.archive.SpreadOnRecord;
import rigside.decide.Limits;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

class SpreadsTakenTextTest {
    private static final String INVENTED = "Simulated: every value is invented.";
    private static final String BOUNDED = "1 session is left out.";

    private Protocol protocol;

    @BeforeEach
    void readTheDemonstration() throws Exception {
        String text = Files.readString(Path.of("demo", "prefilter-disc.yaml"));
        protocol = ((Read.Good) ProtocolReader.read("disc.yaml", text)).protocol();
    }

    @Test
    void aRemarkOfOneMeasureNamesItAndOneOfAllIsSaidOnce() {
        SpreadsTaken taken =
                new SpreadsTaken(
                        List.of(of("seal", INVENTED, BOUNDED), of("breathing", INVENTED)),
                        protocol.plan().design(),
                        false,
                        Optional.of("Left out: 1 open session."));
        List<String> lines = SpreadsTakenText.lines(taken);
        assertEquals(
                List.of("- " + INVENTED, "- seal: " + BOUNDED, "- Left out: 1 open session."),
                lines.subList(3, lines.size()));
    }

    private SpreadsTaken.OfMeasure of(String id, String... remarks) {
        Measure measure = protocol.measure(id).orElseThrow();
        SpreadOnRecord.Found found =
                new SpreadOnRecord.Found(0.05, new Limits(0.03, 0.09), 0.06, 6, 2, 8, 0.5);
        return new SpreadsTaken.OfMeasure(
                measure,
                Optional.of(
                        new SpreadOnRecord(
                                new Archived.Measured(id, id, "any", "", true, Optional.empty()),
                                new Scaled(true, ""),
                                Optional.of(found),
                                Optional.empty(),
                                List.of(remarks))));
    }
}
