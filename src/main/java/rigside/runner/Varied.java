package rigside.runner;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What is typed into fields of calculated measures that a rehearsal cannot bring about: numbers
 * spread round the middle of what the field takes, since measures that never vary are no rehearsal.
 */
record Varied(State state) {
    /**
     * Standard deviation as a share of the range, or of the middle without one; ours, no source.
     */
    private static final double SHARE = 0.1;

    private static final MathContext SHOWN = new MathContext(4);

    /** Whether a field is one of those. */
    boolean is(Slot.Field slot) {
        return state.protocol().measures().stream()
                .filter(measure -> measure.kind() instanceof Measure.Calculated)
                .filter(measure -> !AssumedWearer.isInvented(state.protocol(), measure))
                .anyMatch(
                        measure -> ((Measure.Calculated) measure.kind()).of().contains(slot.id()));
    }

    /** A number of what a field takes, the same whenever the same session is rehearsed. */
    double number(Slot.Field slot, Field.Numeric answer) {
        double from = answer.from().orElse(Math.min(1, answer.to().orElse(1)));
        double to = answer.to().orElse(from);
        double middle = (from + to) / 2;
        double size = to > from ? to - from : Math.abs(middle);
        double drawn = middle + SHARE * size * normal(slot);
        double low = answer.from().orElse(Double.NEGATIVE_INFINITY);
        double high = answer.to().orElse(Double.POSITIVE_INFINITY);
        double shown = new BigDecimal(drawn).round(SHOWN).doubleValue();
        return Math.max(low, Math.min(high, shown));
    }

    /** A number of a scale. */
    int number(Slot.Field slot, Field.Scale answer) {
        double middle = (answer.from() + answer.to()) / 2.0;
        double drawn = middle + SHARE * (answer.to() - answer.from()) * normal(slot);
        return (int) Math.max(answer.from(), Math.min(answer.to(), Math.rint(drawn)));
    }

    private double normal(Slot.Field slot) {
        Place place = slot.place();
        long seed = state.opening().orElseThrow().event().seed();
        long where = 31L * (31L * place.donning() + place.step()) + slot.id().hashCode();
        return new SplittableRandom(new SplittableRandom(seed).nextLong() + where).nextGaussian();
    }
}
