package rigside.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.LongSupplier;
import rigside.analysis.Looks;
import rigside.journal.Journal;
import rigside.journal.NotOpened;
import rigside.journal.RawReadings;
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
            Moment begun = Moment.now();
            SessionTime time = new SessionTime(begun.nanos(), 0, opening.speed());
            Starting starting =
                    rig ->
                            Runner.open(
                                    new JournalLedger(journal),
                                    rig,
                                    Wall::now,
                                    opening,
                                    begun.wall(),
                                    opening.paper().isPresent()
                                            ? Optional.empty()
                                            : settings.selfTest());
            sit(console, journal, opening, protocol, time, starting, settings, Optional.empty());
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
            Moment resumed = Moment.now();
            long at = SessionClock.resumedAt(last, resumed.wall());
            Protocol protocol = journal.state().protocol();
            SessionTime time = new SessionTime(resumed.nanos(), at, opening.speed());
            Starting starting =
                    rig ->
                            Runner.reopen(
                                    new JournalLedger(journal),
                                    rig,
                                    Wall::now,
                                    journal.state(),
                                    at,
                                    settings.version());
            Optional<String> torn = journal.torn().map(TornLine::toString);
            sit(console, journal, opening, protocol, time, starting, settings, torn);
        } catch (IOException trouble) {
            throw new NotOpened(
                    "the session cannot be gone on with: " + trouble.getMessage(),
                    "mend that, then try again",
                    trouble);
        }
    }

    /**
     * Shows the entries of a closed session, to amend or strike out what was entered wrong, until
     * it is left.
     *
     * @param folder the session's folder
     * @throws NotOpened if it is open still, open elsewhere, damaged, or cannot be written
     */
    public static void correct(Console console, Path folder, Settings settings) throws NotOpened {
        try (Journal journal = Journal.correct(folder)) {
            if (!journal.state().course().closed()) {
                throw new NotOpened(
                        "this session is open",
                        "go on with it; what was entered wrong is amended on its page of entries");
            }
            Recorded last = journal.events().get(journal.events().size() - 1);
            Moment now = Moment.now();
            long at = SessionClock.resumedAt(last, now.wall());
            Runner runner =
                    Runner.correcting(new JournalLedger(journal), Wall::now, journal.state(), at);
            Sitting.correct(console, runner, new SessionTime(now.nanos(), at, 1), settings);
        }
    }

    /** How a runner comes to be, once its rig is there. */
    private interface Starting {
        Runner with(Rig rig) throws IOException;
    }

    /** With the rig for as long as the session lasts; its lines are packed when it is closed. */
    private static void sit(
            Console console,
            Journal journal,
            Event.SessionOpened opening,
            Protocol protocol,
            SessionTime time,
            Starting starting,
            Settings settings,
            Optional<String> message)
            throws IOException {
        Thread looks = new Thread(() -> Looks.prepare(protocol), "looks");
        looks.setDaemon(true);
        looks.start();
        try (RawReadings raw = RawReadings.in(journal.folder())) {
            LongSupplier now = () -> time.of(System.nanoTime());
            try (Rig rig = Rigs.open(opening, protocol, now, raw)) {
                Sitting.run(console, starting.with(rig), time, settings, message);
            }
            if (journal.state().course().closed()) {
                raw.compress();
            }
        }
    }
}
