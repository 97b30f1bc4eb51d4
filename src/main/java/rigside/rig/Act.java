package rigside.rig;

/**
 * What the tester does now, in a rig's plain words, so that a simulated one can make up what
 * instruments would read meanwhile.
 *
 * @param kind what it is
 * @param since when it began, in nanoseconds of session time
 * @param donning the number of the donning, from 1; 0 without a mask
 * @param condition the id of the condition worn; empty without a mask
 * @param step the position of the step in the donning, from 0
 * @param position the exercise's or trial's position in the step, from 0
 * @param again how often the same was done before
 * @param targetPa the suction to hold in a pull; 0 otherwise
 */
public record Act(
        Kind kind,
        long since,
        int donning,
        String condition,
        int step,
        int position,
        int again,
        double targetPa) {
    /** Without a mask. */
    public static final Act NOTHING = new Act(Kind.NOTHING, 0, 0, "", 0, 0, 0, 0);

    /** What can be done. */
    public enum Kind {
        /** No mask is worn. */
        NOTHING,
        /** The mask's sample tube draws filtered air. */
        FILTERED,
        /** The mask is worn, breathing freely. */
        WEARING,
        /** An exercise. */
        EXERCISE,
        /** Breathing out fully before a timed inhalation. */
        EMPTYING,
        /** A timed inhalation, until its trace was read. */
        PULL
    }

    Asked asked(Asked.Kind about) {
        return new Asked(about, donning, condition, step, position, 0, again);
    }
}
