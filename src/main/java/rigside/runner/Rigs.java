package rigside.runner;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.LongSupplier;
import rigside.journal.RawReadings;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.rig.Feed;
import rigside.rig.Feeds;
import rigside.rig.Instruments;
import rigside.rig.Rig;
import rigside.rig.RigFile;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.session.Event;
import rigside.yaml.Document;

/** The rig a session was opened with, made again from what its journal says. */
public final class Rigs {
    private Rigs() {}

    /**
     * The rig of a session. Instruments are followed from now on, until it is closed; what they
     * sent in earlier parts of the session counts too.
     *
     * @param now session time now, in nanoseconds; asked by threads of the rig
     * @param raw where the lines of instruments are kept
     * @throws IllegalArgumentException if the rig file kept in the journal cannot be read
     */
    public static Rig open(
            Event.SessionOpened opening, Protocol protocol, LongSupplier now, RawReadings raw) {
        if (opening.rigText().isEmpty()) {
            return of(opening, protocol);
        }
        RigFile file = read(opening);
        return file instanceof RigFile.Attached attached
                ? follow(attached.instruments(), now, raw)
                : of(opening, protocol);
    }

    private static Feeds follow(Instruments instruments, LongSupplier now, RawReadings raw) {
        long begin = now.getAsLong();
        Feeds feeds = Feeds.open(instruments, now, raw::keep);
        for (Feed feed : instruments.feeds()) {
            raw.read(
                    feed.id(),
                    (at, line) -> {
                        if (at < begin) {
                            feeds.recall(feed.id(), at, line);
                        }
                    });
        }
        return feeds;
    }

    /**
     * The rig of a session without instruments.
     *
     * @throws IllegalArgumentException if the rig file kept in the journal cannot be read, or
     *     declares instruments
     */
    public static Rig of(Event.SessionOpened opening, Protocol protocol) {
        return opening.simulated()
                ? new SimulatedRig(
                        wearer(opening, protocol), opening.seed(), new MeasureOf(protocol))
                : Rig.typed();
    }

    private static Wearer wearer(Event.SessionOpened opening, Protocol protocol) {
        if (opening.rigText().isEmpty()) {
            return plain(protocol);
        }
        if (read(opening) instanceof RigFile.Simulated simulated) {
            return simulated.wearer();
        }
        throw new IllegalArgumentException("the session's rig file declares instruments");
    }

    /** Somebody for a protocol without a rig file of its own. */
    public static Wearer plain(Protocol protocol) {
        return Wearer.plain(protocol.conditions().stream().map(Condition::id).toList());
    }

    /**
     * The instruments a session was opened with; empty without any, and where what its journal says
     * of them cannot be read any more.
     */
    public static Optional<Instruments> instruments(Event.SessionOpened opening) {
        if (opening.rigText().isEmpty()) {
            return Optional.empty();
        }
        try {
            return document(opening)
                    .value()
                    .filter(RigFile.Attached.class::isInstance)
                    .map(file -> ((RigFile.Attached) file).instruments());
        } catch (InvalidPathException ofAnotherSystem) {
            return Optional.empty();
        }
    }

    private static RigFile read(Event.SessionOpened opening) {
        return document(opening)
                .value()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "the session's rig file cannot be read"));
    }

    private static Document<RigFile> document(Event.SessionOpened opening) {
        return RigFile.read(
                "the session's rig file", opening.rigText(), Path.of(opening.rigFolder()));
    }
}
