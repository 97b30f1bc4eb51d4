package rigside.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.TimedInhalation;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.State;
import rigside.session.Value;

/**
 * Which share of the spread of trials the tester's hand can explain, in a sentence; of the times
 * that the trigger's clock gave, not of those from a pressure trace.
 *
 * @param values of the measure, one a donning
 */
record TimingRemark(State state, List<DonningValue> values) {
    /** With fewer degrees of freedom a spread says next to nothing: own judgement. */
    private static final int FEWEST = 3;

    /** From here on most of what is seen is the hand. */
    private static final double MUCH = 0.5;

    /** Empty while too few times repeat each other, or they do not differ. */
    Optional<String> words() {
        List<double[]> donnings =
                values.stream()
                        .filter(DonningValue::counts)
                        .map(this::seconds)
                        .filter(times -> times.length > 1)
                        .toList();
        int trials = donnings.stream().mapToInt(times -> times.length).sum();
        int degrees = trials - donnings.size();
        double squares = donnings.stream().mapToDouble(TimingRemark::squares).sum();
        if (degrees < FEWEST || squares == 0) {
            return Optional.empty();
        }
        double spread = Math.sqrt(squares / degrees);
        OptionalDouble own = own();
        double timing = own.orElse(TimedInhalation.HAND_TIMING_SD_SECONDS);
        double share = TimedInhalation.timingShare(timing, spread);
        return Optional.of(
                "Times by the clock spread by "
                        + seconds(spread)
                        + " within a donning (standard deviation, "
                        + Phrases.count(trials, "trial", "trials")
                        + "); pressing start and stop by hand can explain "
                        + (share < 1 ? "about " + Digits.percent(share) : "all")
                        + " of that variance, at "
                        + seconds(timing)
                        + " "
                        + source(own.isPresent())
                        + (share > MUCH ? ". A pressure trace would time more exactly." : "."));
    }

    private double[] seconds(DonningValue donning) {
        return donning.entries().stream()
                .map(number -> state.captured().entry(number))
                .flatMap(Optional::stream)
                .filter(entry -> entry.slot() instanceof Slot.Trial)
                .filter(entry -> entry.source() == Source.TIMED && entry.pull().isEmpty())
                .map(Entry::value)
                .filter(Value.Measured.class::isInstance)
                .mapToDouble(value -> ((Value.Measured) value).quantity().si())
                .toArray();
    }

    private static double squares(double[] times) {
        double sum = 0;
        for (double time : times) {
            sum += time;
        }
        double mean = sum / times.length;
        double squares = 0;
        for (double time : times) {
            squares += (time - mean) * (time - mean);
        }
        return squares;
    }

    private OptionalDouble own() {
        return tested().map(test -> TimedInhalation.pairSpread(test.reactions()))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Event.SelfTested> tested() {
        return state.opening().flatMap(State.Opening::selfTest);
    }

    private String source(boolean own) {
        return own
                ? "from your reactions in the self-test of "
                        + tested().map(test -> day(test.when())).orElse("")
                : "as published for hand timing (Am J Phys 87(2):110, 2019; a self-test gives your"
                        + " own)";
    }

    private static String day(String when) {
        return when.substring(0, Math.min(10, when.length()));
    }

    /** To the hundredth: neither figure is better than that. */
    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.2f s", seconds);
    }
}
