package rigside.rig;

/**
 * What a rig is asked for, in plain words.
 *
 * @param kind which quantity
 * @param donning the number of the donning, from 1
 * @param condition the id of the condition worn
 * @param step the position of the step in the donning, from 0
 * @param exercise the exercise's or trial's position in the step, from 0
 * @param window which of the exercise's ambient samples, from 0; 0 for everything else
 * @param again how often the same was asked before: a retake gets a new answer
 */
public record Asked(
        Kind kind, int donning, String condition, int step, int exercise, int window, int again) {
    /** Which quantity is asked for. */
    public enum Kind {
        /** A concentration in ambient air, /m3. */
        AMBIENT(1),
        /** A concentration in the mask, /m3. */
        MASK(2),
        /** A peak inhalation pressure, Pa. */
        PRESSURE(3),
        /** How long an inhalation at the target pressure takes, s. */
        INHALATION(4);

        private final int code;

        Kind(int code) {
            this.code = code;
        }

        /**
         * Sets the kinds apart in what a simulated rig answers; never changed, or resumed sessions
         * would differ.
         */
        int code() {
            return code;
        }
    }
}
