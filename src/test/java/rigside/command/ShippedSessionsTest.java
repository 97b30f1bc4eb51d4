package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.analysis.InstrumentCheck;
import rigside.analysis.Shown;
import rigside.decide.ExactLimits;
import rigside.decide.Verdict;
import rigside.protocol.Protocol;
import rigside.protocol.Shipped;
import rigside.runner.Rehearsed;
import rigside.session.Donning;
import rigside.session.Evolve;
import rigside.session.Place;
import rigside.session.Stage;
import rigside.session.State;

/** Every protocol that comes with the program, rehearsed to its end and analysed. */
class ShippedSessionsTest {

    private static final List<Long> SEEDS = List.of(1L, 2L, 3L);

    static Stream<String> names() {
        return Shipped.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyShippedProtocolRunsToItsEndAndSaysWhatCameOfIt(String name) throws IOException {
        for (long seed : SEEDS) {
            Rehearsed session = session(name, seed);
            State end = session.end();
            assertTrue(end.course().closed());
            assertEquals(end, Evolve.fold(session.events()));
            Shown shown = Shown.of(end, Analysis.of(end));
            String text = AnalysisText.of(end, shown);
            JsonNode json = new ObjectMapper().readTree(AnalysisJson.of(end, shown));
            assertTrue(text.contains("not a certified fit test"), text);
            assertFalse(text.contains("NaN") || text.contains("null"), text);
            switch (end.protocol().purpose()) {
                case COMPARISON -> compared(end, json);
                case REPEATABILITY -> repeated(end, json, text);
                case INSTRUMENT_CHECK -> checked(end, json, text);
            }
        }
    }

    private static void compared(State end, JsonNode json) {
        Protocol protocol = end.protocol();
        assertTrue(end.captured().lastLook().orElseThrow().round() >= protocol.plan().fewest());
        long measures =
                protocol.measures().stream().filter(each -> each.compared().isPresent()).count();
        assertEquals(measures * (protocol.conditions().size() - 1), json.get("comparisons").size());
        for (JsonNode each : json.get("comparisons")) {
            assertTrue(each.get("n").asInt() >= protocol.plan().fewest(), each::toString);
            assertTrue(each.get("estimate").isNumber(), each::toString);
        }
        assertFalse(json.has("repeatability") || json.has("instrument_check"));
    }

    private static void repeated(State end, JsonNode json, String text) {
        int most = end.protocol().plan().most();
        assertEquals(0, json.get("comparisons").size());
        assertEquals(end.protocol().measures().size(), json.get("repeatability").size());
        for (JsonNode each : json.get("repeatability")) {
            assertEquals(most, each.get("n").asInt());
            double spread = each.get("spread").asDouble();
            assertTrue(each.get("spread_limits").get(0).asDouble() < spread);
            assertTrue(each.get("spread_limits").get(1).asDouble() > spread);
        }
        assertTrue(text.contains(most + " of " + most + " donnings complete"), text);
        assertTrue(text.contains("no verdict"), text);
    }

    private static void checked(State end, JsonNode json, String text) {
        assertTrue(end.course().donnings().isEmpty());
        assertEquals(0, json.get("comparisons").size());
        boolean met = InstrumentCheck.of(end).orElseThrow().isMet();
        assertEquals(met, json.get("instrument_check").get("met").asBoolean());
        assertTrue(text.contains(met ? "gates are met" : "Not met: "), text);
    }

    /** The chance of so many wrong claims is below 1 in 1000 where each has one of 0.05. */
    @Test
    void whereNothingDiffersVerdictsOfADifferenceAreAsRareAsPromised() throws IOException {
        int all = 0;
        int wrong = 0;
        for (String name : names().toList()) {
            for (long seed : SEEDS) {
                State end = session(name, seed).end();
                for (Comparison each : Analysis.of(end).comparisons()) {
                    all++;
                    wrong += each.verdict() == Verdict.MEANINGFUL_DIFFERENCE ? 1 : 0;
                }
            }
        }
        int claims = wrong;
        int comparisons = all;
        assertTrue(comparisons >= 30, () -> comparisons + " comparisons");
        assertTrue(
                claims == 0 || ExactLimits.binomialLower(claims, comparisons, 0.999) < 0.05,
                () -> claims + " of " + comparisons);
    }

    @Test
    void settingsOfOneDonningPutTheMaskOnOnceARound() throws IOException {
        State end = session("protocols/strap-adjustment.yaml", 1).end();
        int settings = end.protocol().conditions().size();
        for (Donning donning : end.course().donnings()) {
            assertEquals(Donning.Outcome.COMPLETE, donning.outcome());
            boolean confirmed =
                    end.course().progress(new Place(Stage.DONNING, donning.number(), 0)) > 0;
            assertEquals(donning.number() % settings == 1, confirmed, donning::toString);
        }
    }

    private static Rehearsed session(String name, long seed) throws IOException {
        return Rehearsed.withoutDifference(name, Shipped.text(name), seed);
    }
}
