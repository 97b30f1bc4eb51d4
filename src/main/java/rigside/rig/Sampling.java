package rigside.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which readings of a feed stand for a window. */
record Sampling(Feed feed, Readings readings) {
    private static final double NANOS = 1e9;

    /** The readings of a signal in a window, with the settling time left out. */
    Sample of(Signal signal, Span span) {
        if (readings.hasForgotten(span.from())) {
            return Sample.of(List.of(), 0, 0);
        }
        long settling = Math.round(feed.settling() * NANOS);
        if (!feed.form().sides().isEmpty()) {
            List<Reading> kept = settled(signal, span, settling);
            double all = Math.max(1, readings.countBetween(span.from(), span.to()));
            return Sample.of(kept, 0, (span.to() - span.from()) / NANOS * kept.size() / all);
        }
        long from = span.from() + (span.switched() ? settling : 0);
        double seconds = Math.max(0, (span.to() - from) / NANOS);
        double expected = feed.perSecond().orElse(0) * seconds;
        return Sample.of(readings.between(from, span.to()), expected, seconds);
    }

    /** Readings on one side of the tube, from some time after it was switched there. */
    private List<Reading> settled(Signal signal, Span span, long settling) {
        List<Reading> kept = new ArrayList<>();
        Optional<Signal> side = Optional.empty();
        long since = Long.MIN_VALUE / 2;
        for (Reading each : readings.between(span.from() - settling, span.to())) {
            if (side.isPresent() && !side.equals(each.side())) {
                since = each.at();
            }
            side = each.side();
            boolean counts =
                    each.at() >= span.from()
                            && side.equals(Optional.of(signal))
                            && each.at() - since >= settling;
            if (counts) {
                kept.add(each);
            }
        }
        return kept;
    }
}
