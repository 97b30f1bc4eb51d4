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
            return Sample.of(
                    kept,
                    share * expected(all, span.from(), span.to()),
                    share * (span.to() - span.from()) / NANOS);
        }
        long from = span.from() + (span.switched() ? settling : 0);
        double seconds = Math.max(0, (span.to() - from) / NANOS);
        List<Reading> kept = readings.between(from, span.to());
        return Sample.of(
                kept,
                feed.perSecond().isPresent()
                        ? feed.perSecond().getAsDouble() * seconds
                        : expected(kept, from, span.to()),
                seconds);
    }

    /**
     * How many readings there would be without silence: as many a second as there are while none
     * lasts longer than after which the feed counts as lost; 0 where it was never silent.
     */
    private double expected(List<Reading> heard, long from, long to) {
        long silent = 0;
        long before = from;
        for (int at = 0; at <= heard.size(); at++) {
            long next = at < heard.size() ? heard.get(at).at() : to;
            silent += next - before > feed.lostAfter() * NANOS ? next - before : 0;
            before = next;
        }
        // One reading within nothing but silence stands for nothing: infinitely many are missing.
        return silent == 0
                ? 0
                : heard.size() * (double) (to - from) / Math.max(0, to - from - silent);
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
