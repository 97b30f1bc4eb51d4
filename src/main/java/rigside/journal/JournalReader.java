package rigside.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.session.DoesNotApply;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * Reads a journal back. Whatever is in the file, reading gives all events before the first thing
 * wrong, changes nothing on disk and throws nothing.
 */
public final class JournalReader {
    /** The journal's file in a session's folder. */
    static final String FILE = "journal.jsonl";

    /**
     * Bytes of the longest line, more than enough for the longest protocol (256 KiB) with every
     * character escaped.
     */
    static final int LONGEST_LINE = 4 << 20;

    /** Bytes of the longest journal: some hundred thousand events. */
    static final int LONGEST_FILE = 64 << 20;

    private static final String LEFT_AS_IT_IS =
            "what comes before it can be read and reported; the file is left as it is";

    private final Path file;
    private final String name;
    private final List<Recorded> events = new ArrayList<>();
    private State state = State.START;
    private Kept kept = new Kept(0, 0, State.START, Optional.empty());
    private HashTrail hashes = new HashTrail(new byte[0]);

    /** How far the journal counts: up to the last line that was not waiting for another one. */
    private record Kept(int events, int bytes, State state, Optional<Fingerprint> hashed) {}

    private JournalReader(Path file, String name) {
        this.file = file;
        this.name = name;
    }

    /**
     * What a journal holds; a file that cannot be read at all is damage too.
     *
     * @param place a session's folder, or a journal's file
     */
    public static Reading read(Path place) {
        Path file = fileOf(place);
        return new JournalReader(file, nameOf(file)).read();
    }

    /** The same, with the place as it was given in what is said about it. */
    public static Reading readAsGiven(Path place) {
        Path file = fileOf(place);
        return new JournalReader(file, file.toString()).read();
    }

    /** The journal's file in a session's folder, whether it is there or not. */
    public static Path fileIn(Path folder) {
        return folder.resolve(FILE);
    }

    private static Path fileOf(Path place) {
        return Files.isDirectory(place) ? fileIn(place) : place;
    }

    private Reading read() {
        if (!Files.isRegularFile(file)) {
            return unread("there is no such file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LONGEST_FILE + 1);
            return bytes.length > LONGEST_FILE
                    ? unread("far too long for a journal")
                    : lines(bytes);
        } catch (IOException cannotBeRead) {
            return unread("cannot be read: " + Trouble.words(cannotBeRead));
        }
    }

    /** With the folder, so that it is clear which session's journal is meant. */
    private static String nameOf(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        return folder == null || folder.getFileName() == null
                ? file.getFileName().toString()
                : folder.getFileName() + "/" + file.getFileName();
    }

    private Reading unread(String what) {
        return reading(Optional.empty(), List.of(new Damage(name, 0, what, "")), Optional.empty());
    }

    private Reading lines(byte[] bytes) {
        hashes = new HashTrail(bytes);
        int from = 0;
        for (int line = 1; from < bytes.length; line++) {
            int end = endOfLine(bytes, from);
            boolean last = end >= bytes.length - 1;
            Optional<ObjectNode> object =
                    end < bytes.length ? json(bytes, from, end) : Optional.empty();
            if (object.isEmpty() && (last || isHole(bytes, from, end))) {
                return whole(bytes.length);
            }
            try {
                add(
                        line,
                        object.orElseThrow(() -> new Unreadable("not a line of a journal")),
                        from,
                        end);
            } catch (Unreadable unreadable) {
                return damaged(line, unreadable.getMessage(), unreadable.help());
            } catch (DoesNotApply doesNotApply) {
                return damaged(line, doesNotApply.getMessage(), "");
            }
            from = end + 1;
            if (!EventReader.goesOn(object.get())) {
                kept = new Kept(events.size(), from, state, hashes.last());
            }
        }
        return whole(bytes.length);
    }

    /** Read to the end; what was written together with a line that is not there does not count. */
    private Reading whole(int length) {
        events.subList(kept.events(), events.size()).clear();
        state = kept.state();
        Optional<TornLine> torn =
                kept.bytes() < length
                        ? Optional.of(
                                new TornLine(
                                        name,
                                        kept.events() + 1,
                                        kept.bytes(),
                                        length - kept.bytes()))
                        : Optional.empty();
        List<Damage> damage =
                events.isEmpty()
                        ? List.of(
                                new Damage(name, 0, "nothing was recorded", "start a new session"))
                        : List.of();
        return reading(torn, damage, kept.hashed());
    }

    /** Where the line's end stands; the length of the bytes when it has none. */
    private static int endOfLine(byte[] bytes, int from) {
        int end = from;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end;
    }

    /**
     * A power cut can leave zeros where a page of what was written last never reached the disk. All
     * that was written before is synced; so with more after the zeros than the rest of one writing
     * somebody changed the file, and what follows is not to be set aside as if it had been torn.
     */
    private static boolean isHole(byte[] bytes, int from, int end) {
        if (!holdsZero(bytes, from, end)) {
            return false;
        }
        boolean ended = false;
        int next;
        for (int at = end + 1; at < bytes.length; at = next + 1) {
            next = endOfLine(bytes, at);
            Optional<ObjectNode> object =
                    next < bytes.length ? json(bytes, at, next) : Optional.empty();
            if (object.isPresent()) {
                if (ended) {
                    return false;
                }
                ended = !EventReader.goesOn(object.get());
            }
        }
        return true;
    }

    private static boolean holdsZero(byte[] bytes, int from, int end) {
        for (int at = from; at < end; at++) {
            if (bytes[at] == 0) {
                return true;
            }
        }
        return false;
    }

    private static Optional<ObjectNode> json(byte[] bytes, int from, int end) {
        if (end - from > LONGEST_LINE) {
            return Optional.empty();
        }
        try {
            ByteBuffer line = ByteBuffer.wrap(bytes, from, end - from);
            return Json.read(StandardCharsets.UTF_8.newDecoder().decode(line).toString());
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }

    private void add(int line, ObjectNode object, int from, int end) {
        if (line == 1) {
            hashes.isOf(EventReader.format(object));
        }
        hashes.take(line, object, from, end);
        Recorded next = EventReader.read(object);
        long before = events.isEmpty() ? 0 : events.get(events.size() - 1).at();
        if (next.number() != line) {
            throw new Unreadable(
                    "event " + next.number() + " stands where event " + line + " must");
        }
        if (next.at() < before) {
            throw new Unreadable("time runs backwards, from " + before + " to " + next.at());
        }
        state = Evolve.step(state, next.event(), next.at());
        events.add(next);
    }

    private Reading damaged(int line, String what, String help) {
        String advice = help.isEmpty() && line > 1 ? LEFT_AS_IT_IS : help;
        return reading(
                Optional.empty(), List.of(new Damage(name, line, what, advice)), hashes.last());
    }

    private Reading reading(
            Optional<TornLine> torn, List<Damage> damage, Optional<Fingerprint> hashed) {
        return new Reading(file, events, state, torn, damage, hashed);
    }
}
