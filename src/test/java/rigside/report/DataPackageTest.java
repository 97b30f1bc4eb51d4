package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.protocol.Shipped;
import rigside.runner.Rehearsed;
import rigside.session.Activity;
import rigside.session.Evolve;
import rigside.session.FedTwins;
import rigside.session.Recorded;
import rigside.session.State;
import rigside.session.Twins;

class DataPackageTest {
    private static final Path DEMONSTRATION = Path.of("demo", "recorded-session");

    /** So many moments are as good as all of them, and sooner compared. */
    private static final int EVERY = 3;

    static Stream<String> names() {
        return Shipped.names();
    }

    /**
     * Values are as captured; a fit factor's steps are relative, and no protocol here meets them.
     */
    @ParameterizedTest
    @MethodSource("names")
    void aPackageIsWhatItSaysItIsAndGivesTheSameComparisonsAgain(String name) throws Exception {
        for (long seed : List.of(1L, 2L)) {
            Rehearsed session = Rehearsed.withoutDifference(name, Shipped.text(name), seed);
            DataPackage written = written(session.end(), session.events());
            assertEquals(List.of(), DescribedPackage.faults(written.files()), name);
            for (Again again : written.again()) {
                assertEquals(List.of(), again.differs(), again.measure().id());
            }
        }
    }

    @Test
    void everyEventEntryDonningAndLookOfASessionIsInIt() throws Exception {
        Reading reading = JournalReader.read(DEMONSTRATION);
        State state = reading.state();
        Map<String, byte[]> files = written(state, reading.events()).files();
        assertEquals(List.of(), DescribedPackage.faults(files));
        assertEquals(reading.events().size(), rows(files, "events"));
        assertEquals(state.captured().entries().size(), rows(files, "entries"));
        assertEquals(state.course().donnings().size(), rows(files, "donnings"));
        assertEquals(
                state.course().donnings().size() * state.protocol().measures().size(),
                rows(files, "values"));
        assertEquals(
                Analysis.of(state).comparisons().stream()
                        .mapToInt(each -> each.looks().size())
                        .sum(),
                rows(files, "comparisons"));
        JsonNode description = new ObjectMapper().readTree(files.get("datapackage.json"));
        assertTrue(description.get("description").asText().startsWith("Simulated: every value"));
        assertTrue(description.get("description").asText().contains("not a certified fit test"));
        assertTrue(description.get("rigside-simulated").asBoolean());
        assertFalse(description.has("licenses") || description.has("sources"));
    }

    @Test
    void ofASessionJustOpenedThereIsAPackageToo() throws Exception {
        List<Recorded> one = JournalReader.read(DEMONSTRATION).events().subList(0, 1);
        DataPackage written = written(Evolve.fold(one), one);
        assertEquals(List.of(), DescribedPackage.faults(written.files()));
        for (Again again : written.again()) {
            assertEquals(List.of("there are not values of two conditions yet."), again.differs());
        }
    }

    @Test
    void ofTwinsThatDifferInWhatIsConcealedNoByteDiffers() throws Exception {
        Predicate<State> worn = state -> state.course().open().isPresent();
        compare(Twins.inTimes(), worn);
        compare(Twins.inEverything(), DataPackageTest::isOpen);
        compare(Twins.inOrder(), worn.and(state -> state.course().donnings().size() == 4));
        compare(FedTwins.untilDonningEnds(), worn);
        compare(FedTwins.inClockAlone(), DataPackageTest::isOpen);
        compare(FedTwins.inResults(), DataPackageTest::isOpen);
        compare(FedTwins.inEverything(), DataPackageTest::isOpen);
    }

    private static boolean isOpen(State state) {
        return !(state.activity() instanceof Activity.Closing)
                && !(state.activity() instanceof Activity.Closed);
    }

    private static void compare(Twins twins, Predicate<State> concealed) throws Exception {
        List<Integer> moments =
                twins.moments(
                        state ->
                                state.opening().isPresent()
                                        && state.course().donnings().size() >= 4
                                        && concealed.test(state));
        assertTrue(moments.size() > 10, () -> "only " + moments.size() + " moments");
        for (int at = 0; at < moments.size(); at += EVERY) {
            int count = moments.get(at);
            Map<String, byte[]> first = written(twins.first().subList(0, count));
            Map<String, byte[]> second = written(twins.second().subList(0, count));
            assertEquals(first.keySet(), second.keySet());
            List<String> tablesFirst = new ArrayList<>(first.keySet());
            Collections.reverse(tablesFirst);
            for (String name : tablesFirst) {
                assertEquals(
                        new String(first.get(name), StandardCharsets.UTF_8),
                        new String(second.get(name), StandardCharsets.UTF_8),
                        name + " after " + count);
            }
        }
    }

    private static Map<String, byte[]> written(List<Recorded> events) {
        return written(Evolve.fold(events), events).files();
    }

    private static int rows(Map<String, byte[]> files, String name) throws IOException {
        return CsvTest.read(files.get(name + ".csv")).size() - 1;
    }

    static DataPackage written(State state, List<Recorded> events) {
        return DataPackage.of(
                "Session One", state, Shown.of(state, Analysis.of(state)), events, "");
    }
}
