package rigside.rig;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * A rig that answers for an invented wearer. The same seed and question always get the same answer,
 * in whatever order they are asked, so that a resumed or repeated session meets the same rig.
 *
 * @param wearer who is simulated
 * @param seed sets one simulated session apart from another
 */
public record SimulatedRig(Wearer wearer, long seed) implements Rig {

    /** Instruments show about four digits. */
    private static final MathContext SHOWN = new MathContext(4);

    /** The golden ratio's odd 64-bit multiplier: spreads neighbouring numbers over all bits. */
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    @Override
    public String words() {
        return "simulated: " + wearer.title();
    }

    @Override
    public boolean simulated() {
        return true;
    }

    @Override
    public OptionalDouble answer(Asked asked) {
        Wearer.Behaviour behaviour = wearer.behaviour(asked.condition());
        double value =
                switch (asked.kind()) {
                    case AMBIENT ->
                            wearer.ambient() * Math.exp(wearer.ambientSpread() * once(asked));
                    case MASK -> wearer.ambient() / level(behaviour.fitFactor(), asked);
                    case PRESSURE -> level(behaviour.peak(), asked);
                    case INHALATION -> level(behaviour.inhalation(), asked);
                };
        return OptionalDouble.of(new BigDecimal(value).round(SHOWN).doubleValue());
    }

    private double level(Wearer.Level level, Asked asked) {
        double donning = normal(asked.kind().code(), asked.donning());
        return level.median() * Math.exp(level.between() * donning + level.within() * once(asked));
    }

    private double once(Asked asked) {
        return normal(
                asked.kind().code(),
                asked.donning(),
                asked.step(),
                asked.exercise(),
                asked.window(),
                asked.again());
    }

    /** A standard normal number fixed by the seed and the question. */
    private double normal(int... question) {
        long mixed = seed;
        for (int part : question) {
            mixed = (mixed ^ part) * GOLDEN;
            mixed ^= mixed >>> 32;
        }
        return new Random(mixed).nextGaussian();
    }
}
