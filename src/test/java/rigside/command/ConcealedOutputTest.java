package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.Cut;
import rigside.journal.JournalReader;
import rigside.session.Activity;
import rigside.session.FedTwins;
import rigside.session.State;
import rigside.session.Twins;

/**
 * What every command says of an open session: of two that differ in what is concealed alone it says
 * the same. Commands that take no session are given its journal for the file they take.
 */
class ConcealedOutputTest {
    private static final String TABLE = "--fewest 2 --most 4 --meaningful 10%";

    /**
     * Each command, with {@code S} for the session, {@code J} for its journal, and {@code H} for a
     * home with nothing but it.
     */
    private static final Map<String, List<String>> COMMANDS =
            Map.ofEntries(
                    Map.entry(
                            "analyse",
                            List.of(
                                    "analyse S",
                                    "analyse --json S",
                                    "analyse --values J " + TABLE)),
                    Map.entry("amend", List.of("amend S", "amend S 2 22 --reason why")),
                    Map.entry("check", List.of("check J")),
                    Map.entry(
                            "compare",
                            List.of(
                                    "compare S:bare S:disc",
                                    "compare S:bare J:bare",
                                    "compare S:bare J:bare --json")),
                    Map.entry("draft", List.of("draft")),
                    Map.entry("enter", List.of("enter J --seed 7")),
                    Map.entry("entries", List.of("entries S")),
                    Map.entry("export", List.of("export S --replace")),
                    Map.entry("share", List.of("share S --to S/copy")),
                    Map.entry("explain", List.of("explain", "explain --all")),
                    Map.entry("feed", List.of("feed J --seconds 1")),
                    Map.entry(
                            "follow",
                            List.of(
                                    "follow --measure inhalation --condition bare --home H",
                                    "follow --measure inhalation --condition bare --simulated"
                                            + " --json --home H")),
                    Map.entry("outline", List.of("outline J", "outline J --html --seed 7")),
                    Map.entry(
                            "plan",
                            List.of(
                                    "plan J",
                                    "plan breathing-only --spread-on-record --home H",
                                    "plan breathing-only --spread-on-record --simulated --json"
                                            + " --home H")),
                    Map.entry(
                            "pool",
                            List.of(
                                    "pool S J",
                                    "pool S S --json",
                                    "pool --protocol a --home H",
                                    "pool --simulated --json --home H")),
                    Map.entry(
                            "rehearse",
                            List.of(
                                    "rehearse J --seed 7 --into S",
                                    "rehearse J --seed 7 --into S --screens --speed 100",
                                    "rehearse J --seed 7 --times 2 --json",
                                    "rehearse J --change a=1% --spread a=1% --fault odd-value")),
                    Map.entry("report", List.of("report S", "report S --width 120")),
                    Map.entry("resume", List.of("resume S")),
                    Map.entry("run", List.of("run J", "run J --simulated")),
                    Map.entry("schema", List.of("schema")),
                    Map.entry(
                            "sessions",
                            List.of(
                                    "sessions --home H",
                                    "sessions --home H --json",
                                    "sessions --home H --rebuild --verdict not-settled")),
                    Map.entry("selftest", List.of("selftest")),
                    Map.entry(
                            "spread",
                            List.of(
                                    "spread --measure inhalation --home H",
                                    "spread --measure fit --simulated --json --home H")),
                    Map.entry("verify", List.of("verify S", "verify --json S")),
                    Map.entry("watch", List.of("watch J")));

    @TempDir Path home;

    private static boolean isOpen(State state) {
        return state.opening().isPresent()
                && !(state.activity() instanceof Activity.Closing)
                && !(state.activity() instanceof Activity.Closed);
    }

    @Test
    void noCommandTellsTimesOfTrialsWhileADonningIsOpen() throws Exception {
        compare(Twins.inTimes(), state -> state.course().open().isPresent());
    }

    @Test
    void noCommandTellsAnythingUntilTheSessionEnds() throws Exception {
        compare(Twins.inEverything(), ConcealedOutputTest::isOpen);
    }

    @Test
    void noCommandTellsTheOrderOfWhatIsToCome() throws Exception {
        compare(
                Twins.inOrder(),
                state ->
                        state.course().donnings().size() == 4 && state.course().open().isPresent());
    }

    @Test
    void withInstrumentsNoCommandTellsPullsBreathsOrEarlierReadings() throws Exception {
        compare(FedTwins.untilDonningEnds(), state -> state.course().open().isPresent());
    }

    @Test
    void whereResultsAreShownNoCommandTellsTimesOfPullsBeforeTheirTime() throws Exception {
        compare(FedTwins.inClockAlone(), ConcealedOutputTest::isOpen);
    }

    @Test
    void whereTimesAreShownNoCommandTellsWhatInstrumentsGaveBeforeItsTime() throws Exception {
        compare(
                FedTwins.inResults(),
                ConcealedOutputTest::isOpen,
                state -> state.course().open().isPresent());
    }

    @Test
    void withInstrumentsNoCommandTellsAnythingUntilTheSessionEnds() throws Exception {
        compare(FedTwins.inEverything(), ConcealedOutputTest::isOpen);
    }

    /** Or the tests above would find nothing to be told anywhere. */
    @Test
    void onceItIsOutTheyDiffer() throws Exception {
        Twins twins = Twins.inEverything();
        int all = twins.first().size();
        Path one = Cut.of(home.resolve("one"), twins.first()).after(all);
        Path two = Cut.of(home.resolve("two"), twins.second()).after(all);
        assertNotEquals(said("analyse S", one), said("analyse S", two));
        assertNotEquals(said("analyse --json S", one), said("analyse --json S", two));
    }

    @Test
    void everyCommandIsAsked() {
        assertEquals(
                new TreeSet<>(Rigside.commandLine().getSubcommands().keySet()),
                new TreeSet<>(COMMANDS.keySet()));
    }

    private void compare(Twins twins, Predicate<State> concealed) throws Exception {
        compare(twins, concealed, state -> true);
    }

    /**
     * Late in the session, where there is most to tell: each kind of activity once. Every command
     * is asked at the last moment, and at the last one at which times of trials are concealed; what
     * is concealed then is said here, not asked of the program.
     */
    private void compare(Twins twins, Predicate<State> concealed, Predicate<State> timesConcealed)
            throws Exception {
        Predicate<State> late =
                state ->
                        state.opening().isPresent()
                                && state.course().donnings().size() >= 4
                                && concealed.test(state);
        List<Integer> moments = twins.moments(late);
        List<Integer> timeless = twins.moments(late.and(timesConcealed));
        assertTrue(timeless.size() > 10, () -> "only " + timeless.size() + " moments");
        Set<Integer> thorough = new TreeSet<>(List.of(last(moments), last(timeless)));
        Set<Integer> all = new TreeSet<>(moments);
        all.addAll(timeless);
        Cut first = Cut.of(home.resolve("first"), twins.first());
        Cut second = Cut.of(home.resolve("second"), twins.second());
        for (int count : all) {
            Path one = first.after(count);
            Path two = second.after(count);
            List<String> digits =
                    timesConcealed.test(JournalReader.read(one).state())
                            ? twins.timesInDigits()
                            : List.of();
            COMMANDS.values().stream()
                    .flatMap(List::stream)
                    .filter(
                            line ->
                                    thorough.contains(count)
                                            || line.startsWith("analyse S")
                                            || line.startsWith("sessions")
                                            || line.contains("json"))
                    .forEach(line -> compare(line, one, two, digits));
        }
    }

    private static int last(List<Integer> moments) {
        return moments.get(moments.size() - 1);
    }

    private static void compare(String line, Path one, Path two, List<String> digits) {
        String said = said(line, one);
        if (line.contains("S") || line.contains("H")) {
            assertEquals(said, said(line, two), line);
        }
        for (String each : digits) {
            assertFalse(Twins.tells(said, each), () -> line + " says\n" + said);
        }
    }

    /** What a command prints, to both its streams, with the session's folder under one name. */
    private static String said(String line, Path session) {
        Path home = line.contains("H") ? homeOf(session) : session;
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said, true);
        String[] words =
                Stream.of(line.split(" ", -1))
                        .map(word -> word.replaceFirst("^S(?=$|:)", session.toString()))
                        .map(word -> word.replaceFirst("^J(?=$|:)", session + "/journal.jsonl"))
                        .map(word -> word.equals("H") ? home.toString() : word)
                        .toArray(String[]::new);
        Rigside.commandLine().setOut(writer).setErr(writer).execute(words);
        return said.toString().replace(session.toString(), "SESSION");
    }

    private static Path homeOf(Path session) {
        Path all = session.getParent();
        Path home = all.resolveSibling("home-of-" + all.getFileName());
        try {
            if (!Files.exists(home)) {
                Files.createSymbolicLink(Files.createDirectory(home).resolve("sessions"), all);
            }
            return home;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
