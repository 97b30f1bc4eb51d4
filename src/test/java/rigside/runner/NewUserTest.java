package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.decide.Verdict;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.Wearer;
import rigside.rig.WearerWriter;
import rigside.session.Applicable;
import rigside.session.Event;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Story;
import rigside.yaml.Problem;

/**
 * Protocols that a new user wrote from the guide alone, for questions no shipped protocol asks:
 * they are read, rehearsed to their close, and analysed; a change of three times what matters is
 * found, and where there is none nothing is claimed.
 */
class NewUserTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SEED = 11;

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "voice-cover    | seal=0.125 times                  | seal=1.3 times",
                "wet-straps     | resistance=33 %;peak=9 mmH2O      | resistance=4 %",
                "strap-lengths  | breath=-25 %                      | breath=3 %",
                "work-loosens   | seal=0.296 times;slip=12 mm       | seal=1.2 times",
                "two-valves     | comfort=6;warming=-3 degC         | comfort=1;warming=0.3 degC"
            })
    void whatMattersIsFoundAndWhatIsNotIsNot(String name, String changes, String spreads)
            throws IOException {
        List<Comparison> changed =
                compared(rehearsed(name, parts(changes), parts(spreads), List.of()));
        assertTrue(changed.stream().anyMatch(Comparison::decides));
        for (Comparison each : changed) {
            if (each.decides()) {
                assertEquals(Verdict.MEANINGFUL_DIFFERENCE, each.verdict(), each.toString());
            }
            assertTrue(each.interval().isPresent(), each.measure());
        }
        for (Comparison each : compared(rehearsed(name, List.of(), parts(spreads), List.of()))) {
            assertTrue(each.verdict() != Verdict.MEANINGFUL_DIFFERENCE, each.toString());
        }
    }

    @Test
    void aFailedSealCheckLeadsToTheExtraSteps() throws IOException {
        Fault fault = Fault.FAILED_SEAL_CHECK;
        State state = rehearsed("voice-cover", List.of(), List.of(), List.of(fault));
        assertEquals(1, state.captured().failedChecks().size());
        assertFalse(titles(state, 1).contains("Second seal check (1 of 2)"));
        assertTrue(titles(state, 2).contains("Second seal check (1 of 2)"));
        assertFalse(titles(state, 2).contains("Go on or begin again"), "the second one held");
    }

    /** The steps that were done in a donning. */
    private static List<String> titles(State state, int donning) {
        return Applicable.steps(state, Stage.DONNING, donning).stream()
                .map(at -> state.protocol().donning().get(at).title())
                .toList();
    }

    private static List<Comparison> compared(State state) {
        return Analysis.of(state).measures().stream()
                .flatMap(each -> each.comparisons().stream())
                .toList();
    }

    private static List<String> parts(String text) {
        return Stream.of(text.split(";", -1)).map(String::strip).toList();
    }

    private static State rehearsed(
            String name, List<String> changes, List<String> spreads, List<Fault> faults)
            throws IOException {
        String text = Story.text("/protocols-written-by-a-new-user/" + name + ".yaml");
        Read read = ProtocolReader.read(name, text);
        assertEquals(List.<Problem>of(), read instanceof Read.Bad bad ? bad.problems() : List.of());
        Protocol protocol = ((Read.Good) read).protocol();
        AssumedReader.Read assumed = AssumedReader.read(protocol, changes, spreads);
        assertEquals(List.of(), assumed.problems());
        Wearer wearer = AssumedWearer.of(protocol, Optional.empty(), assumed.assumed());
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        name,
                        text,
                        SEED,
                        wearer.title(),
                        WearerWriter.text(wearer),
                        true,
                        1);
        List<Faults.Asked> asked =
                faults.stream().map(each -> new Faults.Asked(each, OptionalInt.of(2))).toList();
        Tester tester = new Tester(Rigs.of(opening, protocol), Faults.of(protocol, asked, SEED));
        return Rehearsal.run((events, wall, at) -> {}, tester, MORNING, opening);
    }
}
