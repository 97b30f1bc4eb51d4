package rigside.desk;

import java.util.Optional;
import java.util.SplittableRandom;
import rigside.protocol.Protocol;
import rigside.rig.Rig;
import rigside.rig.RigFile;
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
