package rigside.desk;

import java.util.Optional;
import java.util.SplittableRandom;
import rigside.protocol.Protocol;
import rigside.rig.Rig;
import rigside.rig.RigFile;
import rigside.rig.Wearer;
import rigside.rig.WearerWriter;
import rigside.runner.Assumed;
import rigside.runner.AssumedWearer;
import rigside.runner.Rigs;
import rigside.session.Event;

/** How a session is opened. */
public final class Openings {
    /** Seeds short enough to be written down and typed again. */
    private static final int SEEDS = 1_000_000;

    private Openings() {}

    /**
     * The first event of a session by a protocol.
     *
     * @param choice if it names a rig file, one without problems
     */
    public static Event.SessionOpened of(
            ProtocolFile file, Protocol protocol, Choice choice, long seed, String version) {
        Optional<RigOnDisk> named = choice.named();
        boolean wearer = named.isEmpty() && choice.simulated();
        return new Event.SessionOpened(
                version,
                file.name(),
                file.text(),
                seed,
                named.map(Openings::words)
                        .orElseGet(() -> wearer ? words(file, protocol) : Rig.typed().words()),
                named.map(RigOnDisk::text).orElse(wearer ? file.wearerText() : ""),
                choice.isInvented(),
                choice.effectiveSpeed(),
                named.map(rig -> rig.folder().toString()).orElse(""));
    }

    /** A session that is to be rehearsed, and who is invented for it. */
    public record Rehearsed(Event.SessionOpened opening, Wearer wearer) {}

    /**
     * The first event of a rehearsal. Its wearer is the one of the rig file named, or else of the
     * file beside the protocol, or else invented, with what is assumed made true; the journal keeps
     * the whole of it.
     *
     * @param named describes a wearer
     */
    public static Rehearsed rehearsed(
            ProtocolFile file,
            Protocol protocol,
            Optional<RigOnDisk> named,
            Assumed assumed,
            long seed,
            String version) {
        Optional<Wearer> told =
                named.isPresent()
                        ? named.flatMap(RigOnDisk::file)
                                .filter(RigFile.Simulated.class::isInstance)
                                .map(rig -> ((RigFile.Simulated) rig).wearer())
                        : file.wearer();
        Wearer wearer = AssumedWearer.of(protocol, told, assumed);
        String text =
                told.equals(Optional.of(wearer))
                        ? named.map(RigOnDisk::text).orElse(file.rigText())
                        : WearerWriter.text(wearer);
        return new Rehearsed(
                new Event.SessionOpened(
                        version,
                        file.name(),
                        file.text(),
                        seed,
                        "simulated: " + wearer.title(),
                        text,
                        true,
                        1),
                wearer);
    }

    /** The first event of a session typed in from a form that was filled in by hand. */
    public static Event.SessionOpened ofPaper(
            ProtocolFile file, Event.Paper paper, long seed, String version) {
        return new Event.SessionOpened(
                version,
                file.name(),
                file.text(),
                seed,
                Rig.typed().words(),
                "",
                false,
                1,
                "",
                Optional.of(paper));
    }

    private static String words(RigOnDisk named) {
        RigFile file = named.file().orElseThrow();
        return (file instanceof RigFile.Attached ? "instruments: " : "simulated: ") + file.title();
    }

    private static String words(ProtocolFile file, Protocol protocol) {
        return "simulated: " + file.wearer().orElseGet(() -> Rigs.plain(protocol)).title();
    }

    /** A seed nobody chose. */
    public static long anySeed() {
        return new SplittableRandom().nextInt(1, SEEDS);
    }
}
