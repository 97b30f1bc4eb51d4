package rigside.session;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * What is going on this moment.
 *
 * @param running a countdown, exercise, trial or question under way; empty when the procedure says
 *     what comes next
 * @param halted why everything stands still, if it does
 * @param pulledAt when the last pull ended since the mask was put on
 * @param restedSeconds the longest rest that was finished since then; 0 when none was
 * @param doubt why the time of what is running cannot be trusted, if it cannot
 */
public record Doing(
        Optional<Activity> running,
        Optional<String> halted,
        OptionalLong pulledAt,
        double restedSeconds,
        Optional<String> doubt) {
    static final Doing START =
            new Doing(
                    Optional.empty(), Optional.empty(), OptionalLong.empty(), 0, Optional.empty());

    Doing running(Activity activity) {
        return new Doing(Optional.of(activity), halted, pulledAt, restedSeconds, doubt);
    }

    Doing idle() {
        return new Doing(Optional.empty(), halted, pulledAt, restedSeconds, Optional.empty());
    }

    Doing halted(String why) {
        return new Doing(running, Optional.of(why), pulledAt, restedSeconds, doubt);
    }

    Doing goingOn() {
        return new Doing(running, Optional.empty(), pulledAt, restedSeconds, doubt);
    }

    Doing doubted(String why) {
        return new Doing(running, halted, pulledAt, restedSeconds, Optional.of(why));
    }

    Doing pulledAt(long at) {
        return new Doing(running, halted, OptionalLong.of(at), 0, doubt);
    }

    Doing rested(double seconds) {
        return new Doing(running, halted, pulledAt, Math.max(restedSeconds, seconds), doubt);
    }

    /** A donning ends. */
    Doing ended() {
        return new Doing(
                Optional.empty(), Optional.empty(), pulledAt, restedSeconds, Optional.empty());
    }
}
