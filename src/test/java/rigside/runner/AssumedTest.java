package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.Analysis;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.protocol.Measure.Compared.Scale;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.RigFile;
import rigside.rig.Wearer;
import rigside.rig.WearerReader;
import rigside.rig.WearerWriter;
import rigside.session.Event;
import rigside.session.State;
import rigside.session.Story;

/** What a rehearsal is asked to assume is what comes out of its sessions. */
class AssumedTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final String FILE = "/rehearsal/four-measures.yaml";
    private static final String LEVERS = "/rehearsal/levers.yaml";
    private static final int SESSIONS = 15;

    /** The distance from the truth that is allowed, in standard errors of normal samples. */
    private static final double ERRORS = 4;

    @Test
    void askedChangesAndSpreadsComeOut() throws IOException {
        assertComesOut(
                FILE,
                List.of("seal=2 times", "breathing=15%", "peak=-20 Pa", "flow=6 L/min"),
                List.of(
                        "seal=1.5 times",
                        "breathing=4%",
                        "peak=10 Pa",
                        "flow=2 L/min",
                        "disc.breathing=8%"),
                Map.of(
                        "seal", new double[] {Math.log(2), Math.log(1.5), Math.log(1.5)},
                        "breathing", new double[] {Math.log(1.15), Math.log(1.04), Math.log(1.08)},
                        "peak", new double[] {-20, 10, 10},
                        "flow", new double[] {6, 2, 2}));
    }

    @Test
    void askedForNothingNothingDiffersAndValuesSpreadAsExpected() throws IOException {
        assertComesOut(
                FILE,
                List.of(),
                List.of(),
                Map.of(
                        "seal", new double[] {0, Math.log(1.3), Math.log(1.3)},
                        "breathing", new double[] {0, Math.log(1.05), Math.log(1.05)},
                        "peak", new double[] {0, 8, 8},
                        "flow", new double[] {0, 3, 3}));
    }

    @Test
    void whatIsCalculatedOrOnAScaleComesOutToo() throws IOException {
        assertComesOut(
                LEVERS,
                List.of("resistance=20%", "rise=-1.5 degC", "suction=4 mmH2O", "comfort=15"),
                List.of("suction=2 mmH2O"),
                Map.of(
                        "resistance", new double[] {Math.log(1.2), Math.log(1.06), Math.log(1.06)},
                        "rise", new double[] {-1.5, 0.5, 0.5},
                        "suction", new double[] {4, 2, 2},
                        "comfort", new double[] {15, 6, 6}));
    }

    @Test
    void aRangeIsBroughtAboutByNoSingleField() throws IOException {
        String text =
                Story.text(LEVERS)
                        .replace("function: median, of: suction", "function: range, of: suction");
        Protocol protocol = ((Read.Good) ProtocolReader.read("range.yaml", text)).protocol();
        AssumedReader.Read read =
                AssumedReader.read(protocol, List.of("suction=4 mmH2O"), List.of());
        assertEquals(1, read.problems().size(), read.problems().toString());
        assertTrue(read.problems().get(0).contains("no single field"), read.problems().get(0));
        Wearer wearer =
                AssumedWearer.of(
                        protocol,
                        Optional.empty(),
                        AssumedReader.read(protocol, List.of(), List.of()).assumed());
        assertEquals(3, Truth.of(protocol, wearer).size(), "nothing is told of the range");
    }

    @Test
    void theFieldsOfARangeVaryAllTheSame() throws IOException {
        String text =
                Story.text(LEVERS)
                        .replace("function: median, of: suction", "function: range, of: suction");
        Rehearsed first = Rehearsed.withoutDifference("range.yaml", text, 3);
        Rehearsed again = Rehearsed.withoutDifference("range.yaml", text, 3);
        List<Double> ranges =
                Analysis.of(first.end()).measures().stream()
                        .filter(each -> each.measure().id().equals("suction"))
                        .flatMap(each -> pairs(each).stream())
                        .flatMap(pair -> Arrays.stream(pair).boxed())
                        .distinct()
                        .toList();
        assertTrue(ranges.size() > 2, ranges.toString());
        assertEquals(first.end(), again.end());
    }

    /**
     * The mean change within rounds and the spread of values, over all rounds of all sessions,
     * within {@value #ERRORS} standard errors: of a mean sd / sqrt(n), of a standard deviation sd /
     * sqrt(2 (n - 1)).
     */
    private static void assertComesOut(
            String file, List<String> changes, List<String> spreads, Map<String, double[]> truths)
            throws IOException {
        Protocol protocol = protocol(file);
        AssumedReader.Read read = AssumedReader.read(protocol, changes, spreads);
        assertEquals(List.of(), read.problems());
        Wearer wearer = AssumedWearer.of(protocol, Optional.empty(), read.assumed());
        Map<String, List<double[]>> rounds = new TreeMap<>();
        for (int seed = 1; seed <= SESSIONS; seed++) {
            for (MeasureResult each : Analysis.of(session(file, wearer, seed)).measures()) {
                rounds.computeIfAbsent(each.measure().id(), id -> new ArrayList<>())
                        .addAll(pairs(each));
            }
        }
        assertEquals(truths.keySet(), rounds.keySet());
        truths.forEach((id, truth) -> assertComesOut(id, rounds.get(id), truth));
    }

    private static void assertComesOut(String id, List<double[]> rounds, double[] truth) {
        int n = rounds.size();
        assertEquals(SESSIONS * 12, n, id);
        double change = mean(rounds.stream().mapToDouble(pair -> pair[1] - pair[0]).toArray());
        double spread = Math.hypot(truth[1], truth[2]);
        assertEquals(truth[0], change, ERRORS * spread / Math.sqrt(n), id + ": change");
        for (int arm = 0; arm < 2; arm++) {
            int which = arm;
            double[] values = rounds.stream().mapToDouble(pair -> pair[which]).toArray();
            assertEquals(
                    truth[1 + arm],
                    deviation(values),
                    ERRORS * truth[1 + arm] / Math.sqrt(2 * (n - 1)),
                    id + ": spread in arm " + arm);
        }
    }

    private static List<double[]> pairs(MeasureResult result) {
        boolean ratio = result.measure().scale() == Scale.RATIO;
        Map<Integer, double[]> pairs = new TreeMap<>();
        for (DonningValue each : result.values()) {
            double value = each.value().orElseThrow();
            pairs.computeIfAbsent(each.round(), round -> new double[2])[
                            each.condition().equals("plain") ? 0 : 1] =
                    ratio ? Math.log(value) : value;
        }
        return List.copyOf(pairs.values());
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double each : values) {
            sum += each;
        }
        return sum / values.length;
    }

    private static double deviation(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double each : values) {
            squares += (each - mean) * (each - mean);
        }
        return Math.sqrt(squares / (values.length - 1));
    }

    @Test
    void theWearerIsReadBackFromItsText() throws IOException {
        AssumedReader.Read read =
                AssumedReader.read(
                        protocol(), List.of("seal=2 times", "flow=-6 L/min"), List.of("peak=9 Pa"));
        Wearer wearer = AssumedWearer.of(protocol(), Optional.empty(), read.assumed());
        Wearer again =
                WearerReader.read("rig.yaml", WearerWriter.text(wearer)).value().orElseThrow();
        assertEquals(WearerWriter.text(wearer), WearerWriter.text(again));
        List<Truth> before = Truth.of(protocol(), wearer);
        List<Truth> after = Truth.of(protocol(), again);
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).change(), after.get(i).change(), 1e-9);
            assertEquals(before.get(i).spread(), after.get(i).spread(), 1e-9);
        }
    }

    @Test
    void whatIsNotAskedForStaysAsTheRigFileTellsIt() throws IOException {
        Wearer told = Rigs.plain(protocol());
        Wearer same = AssumedWearer.of(protocol(), Optional.of(told), breathing("none"));
        Truth seal = Truth.of(protocol(), same).get(0);
        assertEquals(Math.log(0.9), seal.change(), 1e-9);
        assertEquals(0, Truth.of(protocol(), same).get(1).change(), 1e-9);
    }

    /** Nothing is compared, yet it is the spread that such a study is about. */
    @Test
    void aSpreadIsAssumedOfWhatIsOnlyRecordedToo() {
        Protocol study = shipped("/protocols/repeatability.yaml");
        AssumedReader.Read read =
                AssumedReader.read(study, List.of(), List.of("breathing=10%", "seal=2 times"));
        assertEquals(List.of(), read.problems());
        Wearer wearer = AssumedWearer.of(study, Optional.empty(), read.assumed());
        double[] truths = {Math.log(2), Math.log(1.1)};
        for (int at = 0; at < truths.length; at++) {
            assertEquals(
                    truths[at],
                    Truth.spread(study, wearer, study.measures().get(at), "plain").orElseThrow(),
                    1e-9);
        }
    }

    @Test
    void aSpreadOfOneConditionLeavesTheOthersAsTheyAre() throws IOException {
        Assumed read =
                AssumedReader.read(protocol(), List.of(), List.of("disc.flow=1 L/min")).assumed();
        Wearer wearer = AssumedWearer.of(protocol(), Optional.empty(), read);
        Truth flow = Truth.of(protocol(), wearer).get(3);
        assertEquals(1, flow.spread(), 1e-9);
        assertEquals(3, flow.reference(), 1e-9);
    }

    @Test
    void whereNothingIsWornNothingIsAssumed() {
        Protocol check = shipped("/protocols/instrument-check.yaml");
        assertEquals(
                List.of("nothing of this protocol takes a change\n    leave out '--change'"),
                AssumedReader.read(check, List.of("seal"), List.of()).problems());
        Wearer wearer = AssumedWearer.of(check, Optional.empty(), Assumed.NOTHING);
        String text = WearerWriter.text(wearer);
        assertEquals(List.of(), RigFile.read("rig", text, Path.of("")).problems());
    }

    private static Protocol shipped(String name) {
        return ((Read.Good) ProtocolReader.read(name, Story.text(name))).protocol();
    }

    private static Assumed breathing(String size) throws IOException {
        return AssumedReader.read(protocol(), List.of("breathing=" + size), List.of()).assumed();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "breathing=-15%|-0.1625189",
                "breathing=0.5 times|-0.6931472",
                "breathing=none|0",
                "disc.breathing=2times|0.6931472"
            })
    void aChangeIsReadAsItIsSaid(String text, double log) throws IOException {
        Assumed read = AssumedReader.read(protocol(), List.of(text), List.of()).assumed();
        assertEquals(log, read.change("disc", "breathing").orElseThrow(), 1e-7);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "breathin=15%|no measure has the id 'breathin'|did you mean 'breathing'?",
                "dics.breathing=15%|no condition has the id 'dics'|did you mean 'disc'?",
                "plain.breathing=15%|'plain' is the reference|name another condition",
                "breathing|has no '='|such as 'seal=15%'",
                "breathing=15 Pa|must be a percentage or a factor|write '15 %'",
                "breathing=-100%|too small|write '15 %'",
                "peak=15 %|must be a pressure|Pa",
                "peak=15|must be a pressure|Pa",
                "breathing=|is empty|"
            })
    void mistakesAreToldWithTheirCure(String text, String told, String cure) throws IOException {
        List<String> problems = AssumedReader.read(protocol(), List.of(text), List.of()).problems();
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains(told), problems.get(0));
        assertTrue(problems.get(0).contains(cure == null ? "" : cure), problems.get(0));
    }

    static Protocol protocol() throws IOException {
        return protocol(FILE);
    }

    private static Protocol protocol(String file) throws IOException {
        return ((Read.Good) ProtocolReader.read("four.yaml", Story.text(file))).protocol();
    }

    private static State session(String file, Wearer wearer, long seed) throws IOException {
        Event.SessionOpened opening = opening(file, wearer, seed);
        return Rehearsal.run(
                (events, wall, at) -> {}, Rigs.of(opening, protocol(file)), MORNING, opening);
    }

    static Event.SessionOpened opening(Wearer wearer, long seed) throws IOException {
        return opening(FILE, wearer, seed);
    }

    private static Event.SessionOpened opening(String file, Wearer wearer, long seed)
            throws IOException {
        String text = WearerWriter.text(wearer);
        assertTrue(RigFile.read("rig", text, Path.of("")).problems().isEmpty());
        return new Event.SessionOpened(
                "test", "four.yaml", Story.text(file), seed, wearer.title(), text, true, 1);
    }
}
