package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.session.FedTwins;
import rigside.session.State;
import rigside.session.Twins;

class CountingJsonTest {

    private static JsonNode counting(Twins twins) throws IOException {
        State state = Twins.after(twins.first(), twins.first().size());
        String json = AnalysisJson.of(state, Shown.of(state, Analysis.of(state)));
        return new ObjectMapper().readTree(json).path("counting");
    }

    /**
     * In a mask sample of 5 s at 0.1 L/min some 40 /cm3 are 333 particles, 667 in the two exercises
     * of a donning: so few leave 1.96/sqrt(667) = 7.6 % open to either side (normal approximation
     * of a Poisson count).
     */
    @Test
    void eachDonningsFitFactorHasWhatCountingLeavesOpenOfIt() throws IOException {
        JsonNode counting = counting(FedTwins.inResults());
        assertEquals(5, counting.size());
        for (JsonNode each : counting) {
            double value = each.get("value").doubleValue();
            assertEquals("fit", each.get("measure").textValue());
            assertEquals(0.924, each.get("limits").get(0).doubleValue() / value, 0.015);
            assertEquals(1.076, each.get("limits").get(1).doubleValue() / value, 0.015);
        }
        assertEquals(3, counting.get(2).get("donning").intValue());
        assertTrue(counting.get(2).get("counts").isBoolean());
    }

    @Test
    void withoutAVolumeThereIsNone() throws IOException {
        assertEquals(0, counting(Twins.inEverything()).size());
    }
}
