package rigside.protocol;

import java.util.OptionalDouble;

/**
 * How often, in which order, and what the tester may see meanwhile.
 *
 * @param fewest complete rounds (values per condition when independent) before the first look; at
 *     least 2, and 2 where nothing is compared
 * @param most complete rounds (values per condition) after which the plan is used up; at least
 *     {@code fewest}
 * @param confidence simultaneous confidence of the intervals over all looks, in (0.5, 1)
 * @param exponent the power of the error-spending function
 * @param design how values are set against each other
 * @param order the order of conditions within a round
 * @param trialClock until when the time of a trial is concealed
 * @param result until when the running result is concealed; of one measure {@link
 *     Protocol#resultOf} tells, since what is made of times waits for them
 * @param maskStaysOn whether the mask stays on from one condition of a round to the next, so that
 *     conditions are settings tried within one donning
 * @param sharedOverMeasures whether the error is shared over the deciding measures too
 * @param donningSeconds what one donning costs beside its trials, in seconds, if stated
 * @param trialSeconds what one trial costs with its rest, in seconds, if stated
 */
public record Plan(
        int fewest,
        int most,
        double confidence,
        double exponent,
        Design design,
        Order order,
        Until trialClock,
        Until result,
        boolean maskStaysOn,
        boolean sharedOverMeasures,
        OptionalDouble donningSeconds,
        OptionalDouble trialSeconds) {
    public Plan {
        if (fewest < 2 || most < fewest) {
            throw new IllegalArgumentException(
                    "rounds " + fewest + " to " + most + ", must be 2 or more and rising");
        }
        if (!(confidence > 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "confidence " + confidence + ", must be in (0.5, 1)");
        }
        if (!(exponent > 0)) {
            throw new IllegalArgumentException("exponent " + exponent + ", must be above 0");
        }
    }

    /** The limits of {@code fewest} and {@code most}: more rounds nobody does at a bench. */
    public static final int LEAST_ROUNDS = 2;

    public static final int MOST_ROUNDS = 50;

    /** The limits of a confidence that a plan may name. */
    public static final double LEAST_CONFIDENCE = 0.80;

    public static final double MOST_CONFIDENCE = 0.999;

    /** The limits of an exponent that a plan may name. */
    public static final double LEAST_EXPONENT = 0.5;

    public static final double MOST_EXPONENT = 5;

    /**
     * The default power of the error-spending function; design evidence: settles most per round for
     * 6 to 12 rounds.
     */
    public static final double DEFAULT_EXPONENT = 2;

    /** A plan outside a protocol: nothing is concealed, no cost is stated. */
    public static Plan bare(
            int fewest, int most, double confidence, double exponent, Design design) {
        return new Plan(
                fewest,
                most,
                confidence,
                exponent,
                design,
                Order.AS_LISTED,
                Until.SHOWN,
                Until.SHOWN,
                false,
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Of a protocol in which nothing is worn: there is nothing to plan, and nothing is concealed.
     */
    public static final Plan NONE =
            bare(LEAST_ROUNDS, LEAST_ROUNDS, 0.95, DEFAULT_EXPONENT, Design.ROUNDS);

    /** The same with other terms for its looks. */
    public Plan with(int fewest, int most, double confidence, double exponent) {
        return new Plan(
                fewest,
                most,
                confidence,
                exponent,
                design,
                order,
                trialClock,
                result,
                maskStaysOn,
                sharedOverMeasures,
                donningSeconds,
                trialSeconds);
    }

    /** How values are set against each other. */
    public enum Design {
        /** Differences within a round. */
        ROUNDS,
        /** Each donning a value of its own. */
        INDEPENDENT_DONNINGS,
        /** Each trial a value of its own; speaks for these donnings only. */
        INDEPENDENT_TRIALS
    }

    /** The order of conditions within a round. */
    public enum Order {
        /** Each condition takes each turn equally often over the rounds, otherwise at random. */
        BALANCED,
        /** Drawn anew for every round. */
        RANDOM,
        AS_LISTED
    }

    /** Until when something is concealed. */
    public enum Until {
        /** Not concealed. */
        SHOWN,
        DONNING_ENDS,
        SESSION_ENDS
    }
}
