package rigside.rig;

/**
 * What a rig is asked for, in plain words.
 *
 * @param kind which quantity
 * @param donning the number of the donning, from 1
 * @param condition the id of the condition worn
 * @param exercise the exercise's or trial's position, from 0
 * @param again how often the same was asked before: a retake gets a new answer
 */
public record Asked(Kind kind, int donning, String condition, int exercise, int again) {
    /** Which quantity is asked for. */
    public enum Kind {
        /** A concentration in ambient air, /m3. */
        AMBIENT,
        /** A concentration in the mask, /m3. */
        MASK,
        /** A peak inhalation pressure, Pa. */
        PRESSURE,
        /** How long an inhalation at the target pressure takes, s. */
        INHALATION
    }
}
