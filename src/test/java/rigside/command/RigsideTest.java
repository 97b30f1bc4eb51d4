package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class RigsideTest {
    @TempDir Path home;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final CommandLine line =
            Rigside.commandLine()
                    .addSubcommand(new Fault())
                    .setOut(new PrintWriter(out, true))
                    .setErr(new PrintWriter(err, true));

    @Command(name = "fault")
    private static final class Fault implements Callable<Integer> {
        @Override
        public Integer call() {
            throw new IllegalStateException("something impossible");
        }
    }

    private int run(String... args) {
        return line.execute(args);
    }

    @Test
    void theVersionIsTheOneBuilt() {
        assertEquals(Exit.DONE, run("--version"));
        assertTrue(out.toString().matches("rigside \\d+\\.\\d+\\.\\d+\\R"), out.toString());
    }

    @Test
    void helpNamesEveryCommandAndExitCode() {
        assertEquals(Exit.DONE, run("--help"));
        for (String word : new String[] {"run", "resume", "rehearse", "check", "Exit codes"}) {
            assertTrue(out.toString().contains(word), word);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "check, --home",
        "outline, --home",
        "feed, --home",
        "plan, --home",
        "analyse, --home",
        "explain,",
        "schema,",
        "draft, --home --ascii --bounce",
        "watch, --home --ascii",
        "enter, --home --ascii --mute --speak --trigger --bounce",
        "rehearse, --home --ascii --mute --speak --trigger --bounce --screens",
        "run, --home --ascii --mute --speak --trigger --bounce"
    })
    void helpTellsOptionsThatDoSomething(String command, String told) {
        assertEquals(Exit.DONE, run(command, "--help"));
        List<String> expected = told == null ? List.of() : List.of(told.split(" "));
        assertTrue(out.toString().contains("--debug"), out.toString());
        for (String option :
                List.of("--home", "--ascii", "--mute", "--speak", "--trigger", "--bounce")) {
            assertEquals(
                    expected.contains(option), out.toString().contains(option), out.toString());
        }
        expected.forEach(option -> assertTrue(out.toString().contains(option), option));
    }

    @Test
    void optionsThatDoNothingInACommandAreTakenAllTheSame() {
        String[] options = {"--mute", "--ascii", "--trigger", "enter", "--home", home.toString()};
        assertEquals(Exit.DONE, line.execute(with("schema", options)), err.toString());
        assertEquals(Exit.DONE, line.execute(with("check", options, "breathing-only")));
        assertEquals("", err.toString());
    }

    private static String[] with(String command, String[] options, String... rest) {
        return Stream.of(new String[] {command}, options, rest)
                .flatMap(Stream::of)
                .toArray(String[]::new);
    }

    static Stream<Arguments> misuses() {
        return Stream.of(
                Arguments.of("an unknown option", "--nothing", "Unknown option: '--nothing'"),
                Arguments.of(
                        "a paper form without its seed",
                        "enter breathing-only",
                        "--seed: the seed printed on the form"),
                Arguments.of(
                        "a form to print without a seed",
                        "outline breathing-only --form",
                        "any whole number does; it stands on the form"),
                Arguments.of("no protocol", "run", "Missing required parameter: 'PROTOCOL'"),
                Arguments.of(
                        "a speed of 0",
                        "run x --simulated --speed 0",
                        "speed '0.0' is not above 0"),
                Arguments.of(
                        "a fast bench", "run x --speed 9", "--speed goes with --simulated only"),
                Arguments.of("a letter as trigger", "run x --trigger q", "'q' cannot be"),
                Arguments.of(
                        "presses that would be lost",
                        "run x --bounce 1",
                        "bounce '1.0' is not from 0 to 0.7 seconds"),
                Arguments.of("a bounce below 0", "run x --bounce=-1", "bounce '-1.0' is not"),
                Arguments.of("no sessions", "rehearse x --times 0", "must be from 1 to 100000"),
                Arguments.of("many kept", "rehearse x --times 2 --into y", "of many nothing is"),
                Arguments.of("a seed of words", "run x --seed two", "'two' is not a whole number"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("misuses")
    void wrongUsageIsToldInWords(String name, String args, String words) {
        assertEquals(Exit.USAGE, run(args.split(" ", -1)));
        assertTrue(err.toString().startsWith("rigside: "), err.toString());
        assertTrue(err.toString().contains(words), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void allProblemsOfAProtocolArePrinted() throws IOException {
        Path file = Files.writeString(home.resolve("bad.yaml"), "format: 1\ntitle: t\n");
        assertEquals(Exit.PROBLEMS, run("run", file.toString(), "--home", home.toString()));
        long lines = err.toString().lines().filter(each -> each.startsWith(file + ":")).count();
        assertTrue(lines > 2, err.toString());
    }

    @Test
    void aProtocolThatIsNotThereIsAProblem() {
        assertEquals(Exit.PROBLEMS, run("run", "nowhere", "--home", home.toString()));
        assertTrue(err.toString().startsWith("rigside: there is no protocol 'nowhere'"));
    }

    @Test
    void aProtocolWhoseNameIsMisspeltIsGuessed() {
        assertEquals(Exit.PROBLEMS, run("run", "breathing-onyl", "--home", home.toString()));
        assertEquals(
                """
                rigside: there is no protocol 'breathing-onyl'
                    did you mean 'breathing-only'?
                """,
                err.toString().replace(System.lineSeparator(), "\n"));
    }

    @Test
    void aProtocolThatComesWithTheProgramIsCheckedByItsName() {
        assertEquals(Exit.DONE, run("check", "breathing-only", "--home", home.toString()));
        assertTrue(out.toString().startsWith("breathing-only: ok, "), out.toString());
    }

    @Test
    void aFaultIsToldWithoutAStackTrace() {
        assertEquals(Exit.FAULT, run("fault"));
        assertEquals(
                """
                rigside: a fault of the program: something impossible
                    the same command with --debug tells where
                """,
                err.toString());
    }

    @Test
    void aStackTraceCanBeAskedFor() {
        assertEquals(Exit.FAULT, run("--debug", "fault"));
        assertTrue(err.toString().contains("at rigside.command.RigsideTest"), err.toString());
    }

    @Test
    void aRehearsalLeavesAClosedSession() throws IOException {
        assertEquals(
                Exit.DONE,
                run("rehearse", "breathing-only", "--seed", "5", "--into", home.toString()));
        String said = out.toString();
        assertTrue(said.startsWith("A rehearsal with seed 5, kept in " + home), said);
        assertTrue(said.contains("Simulated: every value of this session is invented."), said);
        assertTrue(said.strip().endsWith("come first."), said);
        String journal = Files.readString(rehearsed().resolve("journal.jsonl"));
        assertTrue(
                journal.strip().matches("(?s).*\"event\":\"session-closed\",\"hash\":\"[^\"]+\"}"),
                said);
    }

    @Test
    void aRehearsalInWhichAFaultDidNotHappenHasProblems() throws IOException {
        assertEquals(
                Exit.PROBLEMS,
                run(
                        "rehearse",
                        "breathing-only",
                        "--seed",
                        "5",
                        "--json",
                        "--change",
                        "breathing=2times",
                        "--fault",
                        "not-held:99",
                        "--into",
                        home.toString()));
        assertTrue(out.toString().startsWith("{"), out.toString());
        assertTrue(err.toString().contains("'not-held:99' did not happen"), err.toString());
    }

    @Test
    void manyRehearsalsAreToldBesideWhatThePlanLetsExpect() {
        assertEquals(Exit.DONE, run("rehearse", "breathing-only", "--seed", "5", "--times", "2"));
        assertTrue(out.toString().contains("2 sessions, seeds 5 to 6"), out.toString());
        assertTrue(out.toString().contains("to expect"), out.toString());
    }

    @Test
    void aSessionInWhichNothingIsWornIsRehearsedToo() {
        String into = home.toString();
        assertEquals(Exit.DONE, run("rehearse", "instrument-check", "--seed", "1", "--into", into));
        assertTrue(out.toString().contains("All 3 gates are met"), out.toString());
        assertEquals(Exit.PROBLEMS, run("rehearse", "instrument-check", "--fault", "ended-early"));
        assertTrue(err.toString().contains("'ended-early' cannot happen"), err.toString());
    }

    private Path rehearsed() throws IOException {
        try (Stream<Path> folders = Files.list(home)) {
            return folders.filter(each -> each.toString().contains("breathing-only"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
