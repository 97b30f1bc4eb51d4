package rigside.runner;

import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.rig.Rig;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.rig.WearerReader;
import rigside.session.Event;

/** The rig a session was opened with, made again from what its journal says. */
public final class Rigs {
    private Rigs() {}

    /**
     * The rig of a session.
     *
     * @throws IllegalArgumentException if the rig file kept in the journal cannot be read
     */
    public static Rig of(Event.SessionOpened opening, Protocol protocol) {
        return opening.simulated()
                ? new SimulatedRig(wearer(opening.rigText(), protocol), opening.seed())
                : Rig.typed();
    }

    /**
     * The wearer a rig file describes; a plain one for an empty text.
     *
     * @throws IllegalArgumentException if the text cannot be read
     */
    public static Wearer wearer(String rigText, Protocol protocol) {
        if (rigText.isEmpty()) {
            return Wearer.plain(protocol.conditions().stream().map(Condition::id).toList());
        }
        return WearerReader.read("the session's rig file", rigText)
                .value()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "the session's rig file cannot be read"));
    }
}
