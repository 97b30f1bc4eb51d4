package rigside.desk;

import java.util.SplittableRandom;
import rigside.protocol.Protocol;
import rigside.rig.Rig;
import rigside.rig.SimulatedRig;
import rigside.runner.Rigs;
import rigside.session.Event;

/** How a session is opened. */
public final class Openings {
    /** Seeds short enough to be written down and typed again. */
    private static final int SEEDS = 1_000_000;

    private Openings() {}

    /** The first event of a session by a protocol. */
    public static Event.SessionOpened of(
            ProtocolFile file, Protocol protocol, Choice choice, long seed, String version) {
        String rigText = choice.simulated() ? file.rigText() : "";
        Rig rig =
                choice.simulated()
                        ? new SimulatedRig(Rigs.wearer(rigText, protocol), seed)
                        : Rig.typed();
        return new Event.SessionOpened(
                version,
                file.name(),
                file.text(),
                seed,
                rig.words(),
                rigText,
                choice.simulated(),
                choice.effectiveSpeed());
    }

    /** A seed nobody chose. */
    public static long anySeed() {
        return new SplittableRandom().nextInt(1, SEEDS);
    }
}
