package rigside.rig;

import java.util.Optional;

/**
 * What a rig is asked for, in plain words.
 *
 * @param kind which quantity
 * @param donning the number of the donning, from 1
 * @param condition the id of the condition worn
 * @param step the position of the step in the donning, from 0
 * @param exercise the exercise's, trial's or field's position in the step, from 0
 * @param window which of the exercise's ambient samples, from 0; 0 for everything else
 * @param again how often the same was asked before: a retake gets a new answer
 * @param span when the sample was taken; empty for an inhalation, or when that is not known
 */
public record Asked(
        Kind kind,
        int donning,
        String condition,
        int step,
        int exercise,
        int window,
        int again,
        Optional<Span> span) {

    /** What is asked without saying when the sample was taken. */
    public Asked(
            Kind kind,
            int donning,
            String condition,
            int step,
            int exercise,
            int window,
            int again) {
        this(kind, donning, condition, step, exercise, window, again, Optional.empty());
    }

    /** Which quantity is asked for. */
    public enum Kind {
        /** A concentration in ambient air, /m3. */
        AMBIENT(1, Optional.of(Signal.AMBIENT)),
        /** A concentration in the mask, /m3. */
        MASK(2, Optional.of(Signal.MASK)),
        /** A peak inhalation pressure, Pa. */
        PRESSURE(3, Optional.of(Signal.PRESSURE)),
        /** How long an inhalation at the target pressure takes, s. */
        INHALATION(4, Optional.empty()),
        /** What a counter shows of filtered air in the mask's sample tube, /m3. */
        ZERO(5, Optional.of(Signal.MASK)),
        /** A concentration of the room before a test, /m3. */
        ROOM(6, Optional.of(Signal.AMBIENT)),
        /** A number read off an instrument and typed by a rehearsed tester, SI. */
        TYPED(7, Optional.empty());

        private final int code;
        private final Optional<Signal> signal;

        Kind(int code, Optional<Signal> signal) {
            this.code = code;
            this.signal = signal;
        }

        /** The signal it is taken from; empty for what is timed. */
        Optional<Signal> signal() {
            return signal;
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
