package rigside.desk;

import java.util.List;
import rigside.screen.HomeView;

/**
 * What will answer for the instruments in the next session.
 *
 * @param simulated whether an invented wearer does
 * @param speed how many seconds of session time pass in one second when simulated
 */
public record Choice(boolean simulated, double speed) {
    /** The speed of a simulated rig unless another is chosen: a whole session in some minutes. */
    public static final double USUAL_SPEED = 30;

    /** Faster, a countdown would be over before it is seen. */
    public static final double FASTEST = 1000;

    private static final List<Double> SPEEDS = List.of(1.0, 5.0, 30.0, 120.0);

    /** Everything is typed and timed by the tester. */
    public static final Choice TYPED = new Choice(false, USUAL_SPEED);

    public Choice {
        if (!(speed > 0 && speed <= FASTEST)) {
            throw new IllegalArgumentException(
                    "speed " + speed + ", must be above 0, at most " + FASTEST);
        }
    }

    Choice other() {
        return new Choice(!simulated, speed);
    }

    /** The next faster speed, after the fastest the slowest. */
    Choice faster() {
        double next =
                SPEEDS.stream().filter(each -> each > speed).findFirst().orElse(SPEEDS.get(0));
        return new Choice(simulated, next);
    }

    /** The speed a session runs at. */
    public double effectiveSpeed() {
        return simulated ? speed : 1;
    }

    HomeView.Rig shown() {
        return simulated
                ? new HomeView.Rig("from a simulated rig, every value invented", true, speed)
                : new HomeView.Rig("typed by you from your instruments", false, 1);
    }
}
