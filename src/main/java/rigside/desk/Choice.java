package rigside.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import rigside.rig.RigFile;
import rigside.screen.HomeView;

/**
 * What will answer for the instruments in the next session.
 *
 * @param simulated whether an invented wearer does, where no rig file is named
 * @param speed how many seconds of session time pass in one second when simulated
 * @param named the rig file that says what does, if one was named
 */
public record Choice(boolean simulated, double speed, Optional<RigOnDisk> named) {
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

    /** No rig file is named. */
    public Choice(boolean simulated, double speed) {
        this(simulated, speed, Optional.empty());
    }

    /** What a rig file says. */
    public static Choice of(RigOnDisk rig, double speed) {
        return new Choice(false, speed, Optional.of(rig));
    }

    /**
     * The next of: typed, simulated, each rig file at hand.
     *
     * @param rigs the rig files at hand
     */
    Choice other(List<RigOnDisk> rigs) {
        if (named.isEmpty() && !simulated) {
            return new Choice(true, speed);
        }
        int next = named.isEmpty() ? 0 : position(rigs).orElse(rigs.size()) + 1;
        return next < rigs.size()
                ? new Choice(false, speed, Optional.of(rigs.get(next)))
                : new Choice(false, speed);
    }

    private OptionalInt position(List<RigOnDisk> rigs) {
        return IntStream.range(0, rigs.size())
                .filter(at -> rigs.get(at).name().equals(named.orElseThrow().name()))
                .findFirst();
    }

    /** The next faster speed, after the fastest the slowest. */
    Choice faster() {
        double next =
                SPEEDS.stream().filter(each -> each > speed).findFirst().orElse(SPEEDS.get(0));
        return new Choice(simulated, next, named);
    }

    /** Whether values will be invented, or of another time. */
    public boolean isInvented() {
        return named.map(RigOnDisk::isSimulated).orElse(simulated);
    }

    /** The speed a session runs at. */
    public double effectiveSpeed() {
        boolean wearer =
                named.map(rig -> rig.file().filter(RigFile.Simulated.class::isInstance).isPresent())
                        .orElse(simulated);
        return wearer ? speed : 1;
    }

    HomeView.Rig shown() {
        return named.map(rig -> new HomeView.Rig(rig.words(), isInvented(), effectiveSpeed()))
                .orElseGet(
                        () ->
                                simulated
                                        ? new HomeView.Rig(
                                                "from a simulated rig, every value invented",
                                                true,
                                                speed)
                                        : new HomeView.Rig(
                                                "typed by you from your instruments", false, 1));
    }
}
