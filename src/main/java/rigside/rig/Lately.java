package rigside.rig;

import java.util.List;
import java.util.OptionalDouble;

/** The last moments of a signal, as a live gauge needs them. */
final class Lately {
    /** A reading younger than that is part of what is read now; ours, no source. */
    static final double SECONDS = 0.3;

    /** So many readings missed, and there is nothing to be read now; ours, no source. */
    private static final double MISSED = 5;

    /** A feed of many readings a second may pause so long without being called silent. */
    private static final double PAUSE_SECONDS = 0.5;

    private Lately() {}

    /** How long a signal may be silent until its last reading is old, in seconds. */
    static double patience(double perSecond, double lostAfter) {
        double missed = perSecond > 0 ? MISSED / perSecond : lostAfter;
        return Math.min(lostAfter, Math.max(PAUSE_SECONDS, missed));
    }

    /** The mean of readings; empty without any. */
    static OptionalDouble mean(List<Reading> readings) {
        return readings.stream().mapToDouble(Reading::si).average();
    }
}
