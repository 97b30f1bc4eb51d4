package rigside.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import rigside.journal.Journal;
import rigside.journal.NotOpened;
import rigside.journal.SessionClock;
import rigside.journal.TornLine;
import rigside.protocol.Protocol;
import rigside.rig.Rig;
import rigside.runner.JournalLedger;
import rigside.runner.Rigs;
import rigside.runner.Runner;
import rigside.runner.SessionTime;
import rigside.session.Event;
import rigside.session.Recorded;

/** Sessions at the terminal: a new one, or one taken up again. */
public final class Bench {
    private Bench() {}

    /**
     * Runs a new session until it is left.
     *
     * @param sessions the folder of all sessions
     * @param protocol the one the opening names, read
     * @throws NotOpened if no session can be made there
     * @throws IOException if its first event cannot be kept; the message is for the tester
     */
    public static void begin(
            Console console,
            Path sessions,
            Event.SessionOpened opening,
            Protocol protocol,
            Settings settings)
            throws NotOpened, IOException {
        try (Journal journal = Journal.create(sessions, opening.protocolName(), Wall.now())) {
            Rig rig = Rigs.of(opening, protocol);
            // The opening's wall clock is read right after: the two tell the same moment.
            SessionTime time = new SessionTime(System.nanoTime(), 0, opening.speed());
            Runner runner = Runner.open(new JournalLedger(journal), rig, Wall::now, opening);
            Sitting.run(console, runner, time, settings, Optional.empty());
        }
    }

    /**
     * Goes on with a session until it is left.
     *
     * @param folder the session's folder
     * @throws NotOpened if it is closed, open elsewhere, damaged, or cannot be written
     */
    public static void resume(Console console, Path folder, Settings settings) throws NotOpened {
        try (Journal journal = Journal.open(folder)) {
            Recorded last = journal.events().get(journal.events().size() - 1);
            Event.SessionOpened opening = journal.state().opening().orElseThrow().event();
            long origin = System.nanoTime();
            long at = SessionClock.resumedAt(last, Wall.now());
            Runner runner =
                    Runner.reopen(
                            new JournalLedger(journal),
                            Rigs.of(opening, journal.state().protocol()),
                            Wall::now,
                            journal.state(),
                            at,
                            settings.version());
            SessionTime time = new SessionTime(origin, at, opening.speed());
            Optional<String> torn = journal.torn().map(TornLine::toString);
            Sitting.run(console, runner, time, settings, torn);
        } catch (IOException trouble) {
            throw new NotOpened(
                    "the session cannot be gone on with: " + trouble.getMessage(),
                    "mend that, then try again",
                    trouble);
        }
    }
}
