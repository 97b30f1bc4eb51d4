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
            return ofSide(signal, span, settling);
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

    /**
     * Where lines say the side. What was read on the other side, or while that settled, is missing:
     * only one settling time is left out of what is expected.
     */
    private Sample ofSide(Signal signal, Span span, long settling) {
        Settled settled = settled(signal, span, settling);
        List<Reading> all = readings.between(span.from(), span.to());
        double whole = (span.to() - span.from()) / NANOS;
        double heard = whole - silent(all, span.from(), span.to());
        double perSecond =
                feed.perSecond().orElse(heard > 0 ? all.size() / heard : Double.POSITIVE_INFINITY);
        double counts = whole - Math.min(settling, settled.nanos()) / NANOS;
        double share = settled.kept().size() / (double) Math.max(1, all.size());
        return Sample.of(settled.kept(), counts > 0 ? perSecond * counts : 0, share * heard);
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

    /**
     * Readings on one side of the tube, from some time after it was switched there.
     *
     * @param nanos how much of the window was settling on that side
     */
    private record Settled(List<Reading> kept, long nanos) {}

    private Settled settled(Signal signal, Span span, long settling) {
        List<Reading> kept = new ArrayList<>();
        Optional<Signal> side = Optional.empty();
        long since = Long.MIN_VALUE / 2;
        long nanos = 0;
        for (Reading each : readings.between(span.from() - settling, span.to())) {
            boolean there = each.side().equals(Optional.of(signal));
            if (side.isPresent() && !side.equals(each.side())) {
                since = each.at();
                long from = Math.max(since, span.from());
                nanos += there ? Math.max(0, Math.min(since + settling, span.to()) - from) : 0;
            }
            side = each.side();
            if (there && each.at() >= span.from() && each.at() - since >= settling) {
                kept.add(each);
            }
        }
        return new Settled(kept, nanos);
    }
}
