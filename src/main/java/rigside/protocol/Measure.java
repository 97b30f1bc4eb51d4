package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Calculation;
import rigside.measure.FreeBreathing;
import rigside.measure.Unit;

/**
 * A number per donning, computed from its entries.
 *
 * @param id the short word steps refer to it by
 * @param title the words shown
 * @param kind how it is computed
 * @param unit the unit it is shown in
 * @param resolution the smallest step the value can show, in {@code unit}; spreads below it are
 *     rounding. Unless the file says it: 0.01 s for a timed inhalation, 1 Pa for a pressure; of a
 *     typed or calculated number the file always says it. 0 for a fit factor: its step is that of
 *     its concentrations, relative to them
 * @param compared how conditions are compared by it; empty when it is only recorded
 */
public record Measure(
        String id,
        String title,
        Kind kind,
        Unit unit,
        double resolution,
        Optional<Compared> compared) {

    /**
     * Numbers that come without a protocol, and are compared.
     *
     * @param resolution the smallest step they show; 0 when unknown
     */
    public static Measure bare(double resolution, Compared compared) {
        return new Measure(
                "value",
                "value",
                new TypedNumber("value"),
                Unit.ONE,
                resolution,
                Optional.of(compared));
    }

    /** The same compared in another way. */
    public Measure withCompared(Compared other) {
        return new Measure(id, title, kind, unit, resolution, Optional.of(other));
    }

    /**
     * How its values are summarised and compared. One that is only recorded goes by its kind: fit
     * factors and times by ratios, the others by differences.
     */
    public Compared.Scale scale() {
        return compared.map(Compared::scale)
                .orElse(
                        kind instanceof FitFactor || kind instanceof TimedInhalation
                                ? Compared.Scale.RATIO
                                : Compared.Scale.DIFFERENCE);
    }

    /** Whether it is made of times of trials, and so tells of them. */
    public boolean isMadeOfTimes() {
        return kind instanceof TimedInhalation;
    }

    /** Where the number comes from. */
    public sealed interface Kind {
        <R> R match(Cases<R> cases);

        /** Whether its values are made of the answer to a fact or field, by its id. */
        boolean takes(String answer);

        /** One case for each kind of measure. */
        interface Cases<R> {
            R fitFactor(FitFactor kind);

            R timedInhalation(TimedInhalation kind);

            R pressureTrace(PressureTrace kind);

            R typedNumber(TypedNumber kind);

            R calculated(Calculated kind);
        }
    }

    /**
     * Ambient over mask concentration, harmonic over the exercises.
     *
     * @param detectionLimit the lowest mask concentration the counter resolves, in 1/m3; 0 when not
     *     stated
     * @param readingStep the smallest step a mask concentration can show, in 1/m3; 0 when not
     *     stated, and then the last digit tells
     * @param required the level to reach, if the protocol names one
     * @param sampleFlow what the counter draws, in m3/s; 0 when not stated, and then nothing is
     *     known of its counts
     */
    public record FitFactor(
            double detectionLimit, double readingStep, Optional<Level> required, double sampleFlow)
            implements Kind {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.fitFactor(this);
        }

        @Override
        public boolean takes(String answer) {
            return false;
        }
    }

    /**
     * The geometric mean time of the donning's trials.
     *
     * @param vitalCapacityFact the fact holding the wearer's vital capacity, if one is recorded
     */
    public record TimedInhalation(Optional<String> vitalCapacityFact) implements Kind {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.timedInhalation(this);
        }

        /** A vital capacity is for what is estimated beside the times. */
        @Override
        public boolean takes(String answer) {
            return false;
        }
    }

    /**
     * The median over a donning's exercises of the peak inhalation pressure.
     *
     * @param zero what counts as pressure 0 where an instrument follows the breaths
     */
    public record PressureTrace(FreeBreathing.Zero zero) implements Kind {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pressureTrace(this);
        }

        @Override
        public boolean takes(String answer) {
            return false;
        }
    }

    /**
     * A number typed in a form of the donning.
     *
     * @param field the form field that holds it
     */
    public record TypedNumber(String field) implements Kind {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.typedNumber(this);
        }

        @Override
        public boolean takes(String answer) {
            return field.equals(answer);
        }
    }

    /**
     * A number calculated from what was typed.
     *
     * @param function how
     * @param of the ids of the facts and fields it is calculated from, in the order named; all that
     *     a field was answered with in the donning enter
     */
    public record Calculated(Calculation function, List<String> of) implements Kind {
        public Calculated {
            of = List.copyOf(of);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calculated(this);
        }

        @Override
        public boolean takes(String answer) {
            return of.contains(answer);
        }
    }

    /**
     * A level to reach and how reaching is judged.
     *
     * @param value the fit factor to reach
     * @param rule which values have to reach it
     */
    public record Level(double value, Rule rule) {
        /** Which values have to reach the level. */
        public enum Rule {
            OVERALL,
            EVERY_EXERCISE
        }
    }

    /**
     * How two conditions are compared.
     *
     * @param scale ratio (analysed on the natural-log scale) or difference (analysed in {@code
     *     unit})
     * @param bandLow lower end of what is too small to matter, on the analysis scale; below 0
     * @param bandHigh upper end of what is too small to matter, on the analysis scale; above 0
     * @param meaningful the meaningful difference as the file words it ({@code 10 %}, {@code 2
     *     times})
     * @param matters the direction in which a change matters
     * @param decides whether the session goes on until this measure has settled
     * @param expectedSpread expected standard deviation of one value (between donnings, and without
     *     the factor sqrt 2 of a difference) on the analysis scale, if the protocol states one
     */
    public record Compared(
            Scale scale,
            double bandLow,
            double bandHigh,
            String meaningful,
            Matters matters,
            boolean decides,
            OptionalDouble expectedSpread) {
        public Compared {
            if (!(bandLow < 0 && bandHigh > 0)) {
                throw new IllegalArgumentException(
                        "band " + bandLow + " to " + bandHigh + ", must hold 0 inside");
            }
        }

        /** The same with another expected spread, on the analysis scale. */
        public Compared withExpectedSpread(double spread) {
            return new Compared(
                    scale,
                    bandLow,
                    bandHigh,
                    meaningful,
                    matters,
                    decides,
                    OptionalDouble.of(spread));
        }

        /** What is taken of two values. */
        public enum Scale {
            RATIO,
            DIFFERENCE
        }

        /** The direction in which a change matters. */
        public enum Matters {
            EITHER,
            INCREASE,
            DECREASE
        }
    }
}
