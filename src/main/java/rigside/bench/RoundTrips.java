package rigside.bench;

import java.util.List;

/**
 * How long the terminal took to answer, each time it was asked: the way there and back, through
 * everything a key comes through.
 *
 * @param seconds of each answer; may be empty
 */
record RoundTrips(List<Double> seconds) {
    RoundTrips {
        seconds = seconds.stream().sorted().toList();
    }

    /** The middle one, the lower of two; 0 without any. */
    double median() {
        return quantile(0.5);
    }

    /** The one that 99 % do not exceed (nearest rank); 0 without any. */
    double p99() {
        return quantile(0.99);
    }

    /** The longest; 0 without any. */
    double most() {
        return quantile(1);
    }

    private double quantile(double share) {
        int rank = (int) Math.ceil(share * seconds.size());
        return seconds.isEmpty() ? 0 : seconds.get(Math.max(1, rank) - 1);
    }
}
