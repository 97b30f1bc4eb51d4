package rigside.rig;

import java.util.OptionalDouble;

/**
 * One instrument as a rig file declares it.
 *
 * @param id its word in messages, in the journal and in the name of its raw file
 * @param sampled what it measures
 * @param origin where its lines come from
 * @param form how a line is read
 * @param scale from the number in a line to the SI unit
 * @param perSecond how many readings a second are expected; empty when that is not checked
 * @param lostAfter after how many seconds of silence it counts as lost
 * @param settling how many seconds after a switch of the tube are left out; 0 for none
 */
public record Feed(
        String id,
        Sampled sampled,
        Origin origin,
        LineForm form,
        Scale scale,
        OptionalDouble perSecond,
        double lostAfter,
        double settling) {

    /** Whether its lines say which side the tube is on. */
    public boolean tellsSide() {
        return !form.sides().isEmpty();
    }

    /** Whether its readings are of another time than the session's. */
    public boolean isReplayed() {
        return origin instanceof Origin.Replayed;
    }
}
