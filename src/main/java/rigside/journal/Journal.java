package rigside.journal;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * The journal of one session, open for appending. While it is open, its folder belongs to this
 * program alone. For one thread at a time; interrupting that thread while it appends fails the
 * append.
 */
public final class Journal implements AutoCloseable {
    private static final String TRY_AGAIN = "mend that, then try again; nothing is lost so far";

    private final Path folder;
    private final FolderLock lock;
    private final JournalFile file;
    private final Optional<TornLine> torn;
    private final List<Recorded> events;
    private State state;
    private RunningHash hash;
    private boolean closed;

    private Journal(
            Path folder, FolderLock lock, JournalFile file, Reading before, RunningHash hash) {
        this.hash = hash;
        this.folder = folder;
        this.lock = lock;
        this.file = file;
        this.torn = before.torn();
        this.events = new ArrayList<>(before.events());
        this.state = before.state();
    }

    /**
     * A new session in a new folder below {@code sessions}, which is made if need be: {@code
     * 2026-11-25-0916-disc}. Its first event is still to be appended; closed before that, no folder
     * is left.
     *
     * @param protocolName the protocol's file name, for the name of the folder
     * @param wall the wall clock now, for the name of the folder
     * @throws NotOpened if the folder cannot be made
     */
    public static Journal create(Path sessions, String protocolName, ZonedDateTime wall)
            throws NotOpened {
        return create(sessions, protocolName, wall, Disk::open);
    }

    static Journal create(
            Path sessions, String protocolName, ZonedDateTime wall, Disk.Opener opener)
            throws NotOpened {
        try {
            Path folder = SessionFolder.create(sessions, wall, protocolName);
            SessionFolder.force(sessions);
            return begin(folder, opener);
        } catch (IOException trouble) {
            throw cannotBeMade(sessions, trouble);
        }
    }

    private static Journal begin(Path folder, Disk.Opener opener) throws IOException {
        FolderLock lock =
                FolderLock.claim(folder)
                        .orElseThrow(() -> new IOException("the new folder is taken already"));
        Path file = folder.resolve(JournalReader.FILE);
        Reading none =
                new Reading(
                        file,
                        List.of(),
                        State.START,
                        Optional.empty(),
                        List.of(),
                        Optional.empty());
        Journal journal =
                new Journal(
                        folder, lock, new JournalFile(file, 0, opener), none, RunningHash.START);
        try {
            Files.createFile(file);
            SessionFolder.force(folder);
            return journal;
        } catch (IOException trouble) {
            journal.close();
            throw trouble;
        }
    }

    private static NotOpened cannotBeMade(Path sessions, IOException trouble) {
        return new NotOpened(
                "no session can be started in '" + sessions + "': " + Trouble.words(trouble),
                "mend that, or choose another folder for the sessions",
                trouble);
    }

    /**
     * A session that is there, to go on with. A line that was cut off is moved out of the way
     * first.
     *
     * @param folder the session's folder
     * @throws NotOpened if the session is open already, here or in another program, is damaged, or
     *     cannot be written
     */
    public static Journal open(Path folder) throws NotOpened {
        return open(folder, Disk::open);
    }

    static Journal open(Path folder, Disk.Opener opener) throws NotOpened {
        return open(folder, opener, false);
    }

    /**
     * A session that is there, closed or not, to put right what was entered wrong.
     *
     * @throws NotOpened as {@link #open}, but not for being closed
     */
    public static Journal correct(Path folder) throws NotOpened {
        return open(folder, Disk::open, true);
    }

    private static Journal open(Path folder, Disk.Opener opener, boolean closedToo)
            throws NotOpened {
        if (!Files.isRegularFile(folder.resolve(JournalReader.FILE))) {
            throw new NotOpened(
                    "there is no session in '" + folder + "'",
                    "name the folder of a session, the one that holds " + JournalReader.FILE);
        }
        try {
            FolderLock lock =
                    FolderLock.claim(folder)
                            .orElseThrow(
                                    () ->
                                            new NotOpened(
                                                    "this session is open in another program",
                                                    "close it there, then try again"));
            return open(folder, lock, opener, closedToo);
        } catch (IOException trouble) {
            throw new NotOpened(
                    "the session in '"
                            + folder
                            + "' cannot be gone on with: "
                            + Trouble.words(trouble),
                    "mend that, then try again; it can still be looked at",
                    trouble);
        }
    }

    private static Journal open(Path folder, FolderLock lock, Disk.Opener opener, boolean closedToo)
            throws NotOpened, IOException {
        boolean opened = false;
        try {
            Reading reading = sound(JournalReader.read(folder), closedToo);
            if (reading.torn().isPresent()) {
                JournalFile.setAside(reading.file(), reading.torn().get());
                SessionFolder.force(folder);
            }
            JournalFile file = new JournalFile(reading.file(), Files.size(reading.file()), opener);
            Journal journal = new Journal(folder, lock, file, reading, hash(reading));
            opened = true;
            return journal;
        } finally {
            if (!opened) {
                lock.close();
            }
        }
    }

    /** Lines written without a hash are all taken in by the next one. */
    private static RunningHash hash(Reading reading) throws IOException {
        if (reading.hashed().isPresent()) {
            return reading.hashed().get().hash();
        }
        byte[] bytes = Files.readAllBytes(reading.file());
        return RunningHash.of(bytes, bytes.length);
    }

    private static Reading sound(Reading reading, boolean closedToo) throws NotOpened {
        if (reading.isReadOnly()) {
            Damage first = reading.damage().get(0);
            throw new NotOpened(
                    "this session is damaged and cannot be gone on with\n" + first,
                    "look at it or report on it, and start a new session");
        }
        if (reading.state().course().closed() && !closedToo) {
            throw new NotOpened(
                    "this session is closed; it is not gone on with any more",
                    "review or amend it, or start a new session");
        }
        return reading;
    }

    /**
     * Records events that happened at one time. They are on the disk itself when this returns; when
     * it throws, none of them count and the same call can be made again.
     *
     * @return them as recorded, in order
     * @throws NotWritten if the disk is full, gone or the like
     * @throws rigside.session.DoesNotApply if they cannot follow what is recorded; nothing is
     *     written then
     */
    public List<Recorded> append(List<Event> happened, Stamp stamp) throws NotWritten {
        checkMayFollow(stamp);
        List<Recorded> added = new ArrayList<>();
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        State next = state;
        RunningHash running = hash;
        for (Event event : happened) {
            long number = events.size() + added.size() + 1L;
            Recorded recorded = new Recorded(number, stamp.wall(), stamp.at(), event);
            next = Evolve.step(next, event, stamp.at());
            added.add(recorded);
            String line = EventWriter.write(recorded, added.size() < happened.size());
            running = running.after(line);
            lines.writeBytes(bytes(running.putOn(line)));
        }
        write(lines.toByteArray());
        events.addAll(added);
        state = next;
        hash = running;
        return List.copyOf(added);
    }

    private void checkMayFollow(Stamp stamp) {
        if (closed) {
            throw new IllegalStateException("the journal is closed");
        }
        long before = events.isEmpty() ? 0 : events.get(events.size() - 1).at();
        if (stamp.at() < before) {
            throw new IllegalArgumentException(
                    "session time " + stamp.at() + ", must be " + before + " or more");
        }
    }

    private static byte[] bytes(String text) throws NotWritten {
        byte[] line = (text + "\n").getBytes(StandardCharsets.UTF_8);
        if (line.length > JournalReader.LONGEST_LINE) {
            throw new NotWritten("the journal cannot be written: a text is too long", "shorten it");
        }
        return line;
    }

    private void write(byte[] bytes) throws NotWritten {
        if (file.length() + bytes.length > JournalReader.LONGEST_FILE) {
            throw new NotWritten("the journal is full", "go on in a new session");
        }
        try {
            file.append(bytes);
        } catch (IOException trouble) {
            throw new NotWritten(
                    "the journal cannot be written: " + Trouble.words(trouble), TRY_AGAIN, trouble);
        }
    }

    public Path folder() {
        return folder;
    }

    /** Everything recorded, in order; a copy. */
    public List<Recorded> events() {
        return List.copyOf(events);
    }

    /** What the events recorded lead to. */
    public State state() {
        return state;
    }

    /** The line that was moved out of the way when the session was opened, if there was one. */
    public Optional<TornLine> torn() {
        return torn;
    }

    /**
     * Gives the folder free. What was appended is on disk already; when nothing ever was, the
     * folder goes.
     */
    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        release(file);
        release(lock);
        if (events.isEmpty()) {
            SessionFolder.remove(folder);
        }
    }

    /** A failure harms nothing here: all that was appended is on disk. */
    private static void release(Closeable held) {
        try {
            held.close();
        } catch (IOException harmless) {
            return;
        }
    }
}
