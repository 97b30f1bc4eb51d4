package rigside.session;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * What is going on this moment.
 *
 * @param running a countdown, exercise, trial or question under way; empty when the procedure says
 *     what comes next
 * @param halted why everything stands still, if it does
 * @param restSince when the last pull of this donning ended, while no rest has followed it
 * @param left whether the program was left
 */
public record Doing(
        Optional<Activity> running, Optional<String> halted, OptionalLong restSince, boolean left) {
    static final Doing START =
            new Doing(Optional.empty(), Optional.empty(), OptionalLong.empty(), false);

    Doing running(Activity activity) {
        return new Doing(Optional.of(activity), halted, restSince, left);
    }

    Doing idle() {
        return new Doing(Optional.empty(), halted, restSince, left);
    }

    Doing halted(String why) {
        return new Doing(running, Optional.of(why), restSince, left);
    }

    Doing goingOn() {
        return new Doing(running, Optional.empty(), restSince, left);
    }

    Doing restSince(long at) {
        return new Doing(running, halted, OptionalLong.of(at), left);
    }

    Doing rested() {
        return new Doing(running, halted, OptionalLong.empty(), left);
    }

    Doing left(boolean isLeft) {
        return new Doing(running, halted, restSince, isLeft);
    }
}
