package rigside.rig;

import java.util.Random;

/**
 * What instruments would read beside an invented wearer, at any moment. A pure function of rig, act
 * and time, in step with what the rig answers: the trace of a pull has the integral of a pull held
 * at the target for the time answered, breaths reach the peak answered, and concentrations waver
 * about those answered.
 */
final class SimulatedSignals {
    private static final double NANOS = 1e9;

    /** One breath of a wearer at rest; common practice, no source. */
    private static final double BREATH_SECONDS = 4;

    /** How fast lungs empty; ours, no source. */
    private static final double EMPTYING_SECONDS = 1;

    /** Breathing out meets less resistance than breathing in; ours, no source. */
    private static final double OUT_SHARE = 0.6;

    /** Suction is there so soon, and gone as soon. */
    private static final double RISE_SECONDS = 0.2;

    /** How the hand wavers about the target. */
    private static final double WAVER = 0.08;

    private static final double WAVER_SECONDS = 1.7;

    /** How far a reading of a counter is off, on the natural-log scale. */
    private static final double COUNTER_SPREAD = 0.05;

    private final SimulatedRig rig;

    SimulatedSignals(SimulatedRig rig) {
        this.rig = rig;
    }

    /** The value of a signal, SI. */
    double value(Signal signal, Act act, long at) {
        return switch (signal) {
            case PRESSURE -> pressure(act, (at - act.since()) / NANOS);
            case AMBIENT -> ambient(act) * noise(at, 1);
            case MASK -> mask(act) * noise(at, 2);
        };
    }

    private double pressure(Act act, double seconds) {
        return switch (act.kind()) {
            case NOTHING, FILTERED -> 0;
            case EMPTYING ->
                    answer(act, Asked.Kind.PRESSURE)
                            * OUT_SHARE
                            * Math.exp(-seconds / EMPTYING_SECONDS);
            case WEARING, EXERCISE -> breath(answer(act, Asked.Kind.PRESSURE), seconds);
            case PULL -> -pull(act.targetPa(), answer(act, Asked.Kind.INHALATION), seconds);
        };
    }

    private static double breath(double peak, double seconds) {
        double wave = Math.sin(2 * Math.PI * seconds / BREATH_SECONDS);
        return wave > 0 ? -peak * wave : -peak * OUT_SHARE * wave;
    }

    /** It rises straight at its begin and falls straight after its end, so both make one. */
    private static double pull(double target, double length, double seconds) {
        if (seconds <= 0 || seconds >= length + RISE_SECONDS) {
            return 0;
        }
        double up = Math.min(1, seconds / RISE_SECONDS);
        double down = Math.min(1, (length + RISE_SECONDS - seconds) / RISE_SECONDS);
        double held = (seconds - RISE_SECONDS) / Math.max(RISE_SECONDS, length - RISE_SECONDS);
        long waves = Math.max(1, Math.round(length / WAVER_SECONDS));
        double waver = held > 0 && held < 1 ? WAVER * Math.sin(2 * Math.PI * waves * held) : 0;
        return target * (Math.min(up, down) + waver);
    }

    private double ambient(Act act) {
        return act.kind() == Act.Kind.EXERCISE
                ? answer(act, Asked.Kind.AMBIENT)
                : rig.wearer().ambient();
    }

    private double mask(Act act) {
        return switch (act.kind()) {
            case NOTHING -> rig.wearer().ambient();
            case FILTERED -> 0;
            case WEARING, EXERCISE, EMPTYING, PULL -> answer(act, Asked.Kind.MASK);
        };
    }

    private double answer(Act act, Asked.Kind kind) {
        return rig.answer(act.asked(kind)).orElse(0);
    }

    private double noise(long at, int which) {
        long mixed = (rig.seed() ^ at) * SimulatedRig.GOLDEN + which;
        return Math.exp(COUNTER_SPREAD * new Random(mixed ^ (mixed >>> 32)).nextGaussian());
    }
}
