package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.protocol.BenchTime;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.runner.Ledger;
import rigside.runner.Rehearsal;
import rigside.runner.Rigs;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Stage;
import rigside.session.State;

/**
 * What an outline says that a donning takes by its declared times is what a rehearsed session
 * really waits, on the session's own clock: countdowns, exercises, gates, lead-ins and rests.
 */
class DeclaredTimesTest {
    /** A rehearsal looks at the time twenty times a second, so each wait may end so much late. */
    private static final double TICK_SECONDS = 0.05;

    private static final double ROUNDING = 1e-6;

    static Stream<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String folder : List.of("protocols", "demo")) {
            try (Stream<Path> listed = Files.list(Path.of(folder))) {
                listed.filter(file -> file.toString().endsWith(".yaml"))
                        .filter(file -> !file.toString().endsWith(".rig.yaml"))
                        .forEach(files::add);
            }
        }
        return files.stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("files")
    void theOutlinesTimesAreTheRehearsedOnes(Path file) throws IOException {
        String text = Files.readString(file);
        Protocol protocol = Read.of(text);
        List<Recorded> journal = new ArrayList<>();
        State end = rehearsed(text, protocol, journal);
        Set<String> met = new HashSet<>();
        for (Donning donning : end.course().donnings()) {
            boolean whole =
                    donning.outcome() == Donning.Outcome.COMPLETE
                            && end.captured().entries().stream()
                                    .noneMatch(
                                            entry ->
                                                    entry.slot().place().donning()
                                                                    == donning.number()
                                                            && !entry.stands());
            if (whole) {
                met.add(donning.condition());
                Waits waits = Waits.of(end, during(journal, donning));
                double declared =
                        BenchTime.declared(
                                Applicable.steps(end, Stage.DONNING, donning.number()).stream()
                                        .map(protocol.donning()::get)
                                        .toList());
                String where = "donning " + donning.number() + " of " + donning.condition();
                assertTrue(waits.seconds() >= declared - ROUNDING, where + ": " + waits);
                assertTrue(
                        waits.seconds() <= declared + waits.count() * TICK_SECONDS + ROUNDING,
                        where + ": declared " + declared + ", " + waits);
                assertOutlineSays(protocol, donning.condition());
            }
        }
        assertEquals(
                Set.copyOf(protocol.conditions().stream().map(Condition::id).toList()),
                met,
                "every condition was met at least once");
    }

    /** With everything that may be done for a condition. */
    private static void assertOutlineSays(Protocol protocol, String condition) {
        double declared = BenchTime.declared(protocol, condition);
        String title = "Donning: " + Outline.title(protocol, condition);
        String row =
                Outline.of(protocol).lines(200).stream()
                        .filter(line -> line.strip().startsWith(title))
                        .findFirst()
                        .orElseThrow();
        assertTrue(row.contains("  " + Lengths.of(declared) + "  "), row);
    }

    private static State rehearsed(String text, Protocol protocol, List<Recorded> journal)
            throws IOException {
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "file.yaml", text, 3, "invented", "", true, 1);
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(
                                event ->
                                        journal.add(
                                                new Recorded(journal.size() + 1, wall, at, event)));
        ZonedDateTime start = ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
        return Rehearsal.run(ledger, Rigs.of(opening, protocol), start, opening);
    }

    private static List<Recorded> during(List<Recorded> journal, Donning donning) {
        int from = 0;
        int to = 0;
        for (int at = 0; at < journal.size(); at++) {
            Event event = journal.get(at).event();
            if (event instanceof Event.DonningStarted started
                    && started.donning() == donning.number()) {
                from = at;
            }
            if (event instanceof Event.DonningCompleted done
                    && done.donning() == donning.number()) {
                to = at;
            }
        }
        return journal.subList(from, to);
    }

    /**
     * What was waited for in one donning.
     *
     * @param count how many waits
     * @param seconds how long together
     */
    private record Waits(int count, double seconds) {

        static Waits of(State end, List<Recorded> events) {
            int count = 0;
            double seconds = 0;
            long begun = 0;
            long pulled = 0;
            double sincePull = 0;
            for (Recorded each : events) {
                Event event = each.event();
                if (isBegin(event)) {
                    begun = each.at();
                } else if (isEnd(event)) {
                    seconds += (each.at() - begun) / 1e9;
                    sincePull += (each.at() - begun) / 1e9;
                    count++;
                } else if (event instanceof Event.TrialStopped) {
                    pulled = each.at();
                    sincePull = 0;
                } else if (event instanceof Event.RestFinished rest) {
                    double asked =
                            ((rigside.protocol.Step.Trials)
                                            rigside.session.Procedure.step(end, rest.place()))
                                    .restSeconds();
                    double passed = (each.at() - pulled) / 1e9;
                    // A rest that was over before it was asked for was not waited for.
                    boolean waited = passed <= asked + TICK_SECONDS + ROUNDING;
                    seconds += waited ? Math.max(0, passed - sincePull) : 0;
                    count++;
                }
            }
            return new Waits(count, seconds);
        }

        private static boolean isBegin(Event event) {
            return event instanceof Event.CountdownStarted
                    || event instanceof Event.ExerciseStarted
                    || event instanceof Event.GateStarted
                    || event instanceof Event.LeadInStarted;
        }

        private static boolean isEnd(Event event) {
            return event instanceof Event.CountdownFinished
                    || event instanceof Event.ExerciseFinished
                    || event instanceof Event.GateFinished
                    || event instanceof Event.TrialStarted;
        }
    }
}
