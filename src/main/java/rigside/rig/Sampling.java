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
            List<Reading> all = readings.between(span.from(), span.to());
            double share = kept.size() / (double) Math.max(1, all.size());
            double whole = (span.to() - span.from()) / NANOS;
            double heard = whole - silent(all, span.from(), span.to());
            return Sample.of(kept, expected(kept, whole, heard), share * heard);
        }
        long from = span.from() + (span.switched() ? settling : 0);
        List<Reading> kept = readings.between(from, span.to());
        double whole = Math.max(0, (span.to() - from) / NANOS);
        double heard = whole - silent(kept, from, span.to());
        return Sample.of(
                kept,
                feed.perSecond().isPresent()
                        ? feed.perSecond().getAsDouble() * whole
                        : expected(kept, whole, heard),
                heard);
    }

    /** Seconds of silence, each longer than after which the feed counts as lost. */
    private double silent(List<Reading> heard, long from, long to) {
        double silent = 0;
        long before = from;
        for (int at = 0; at <= heard.size(); at++) {
            long next = at < heard.size() ? heard.get(at).at() : to;
            double seconds = (next - before) / NANOS;
            silent += seconds > feed.lostAfter() ? seconds : 0;
            before = next;
        }
        return silent;
    }

    /**
     * How many readings there would be without silence, at the rate while there was none: 0 where
     * there was none, infinitely many where there was nothing else.
     */
    private static double expected(List<Reading> kept, double whole, double heard) {
        return heard == whole ? 0 : kept.size() * whole / Math.max(0, heard);
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
