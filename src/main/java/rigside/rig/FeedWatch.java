package rigside.rig;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import rigside.rig.FeedTrouble.Kind;
import rigside.yaml.Words;

/**
 * Follows one feed: makes readings of what arrives, and says when it fails and when it is back.
 * Times are nanoseconds of session time and passed in; an earlier time than the last counts as the
 * last.
 */
final class FeedWatch {
    private static final double NANOS = 1e9;

    /** So many readings in a row, and trouble is over. */
    private static final int READINGS_BACK = 3;

    /** The rate is taken over five seconds, or over the time of ten readings if that is longer. */
    private static final double RATE_SECONDS = 5;

    private static final double RATE_READINGS = 10;

    /** Below half the expected rate it stutters; from four fifths on it does not any more. */
    private static final double STUTTERS_BELOW = 0.5;

    private static final double STEADY_FROM = 0.8;

    /** What lasts until readings come again. */
    private static final Set<Kind> UNREADABLE =
            Collections.unmodifiableSet(EnumSet.of(Kind.BROKEN, Kind.SILENT, Kind.NONSENSE));

    private final Feed feed;
    private final FeedLines lines;
    private final Readings readings = new Readings();
    private final List<FeedTrouble> untold = new ArrayList<>();
    private final Set<Kind> failing = EnumSet.noneOf(Kind.class);
    private long latest;
    private long lastLine;
    private long steadySince;
    private int goodInARow;
    private long nonsense;
    private boolean ended;

    /** A feed that begins to be followed now. */
    FeedWatch(Feed feed, long now) {
        this.feed = feed;
        this.lines = new FeedLines(feed);
        this.latest = now;
        this.lastLine = now;
        this.steadySince = now;
    }

    Feed feed() {
        return feed;
    }

    Readings readings() {
        return readings;
    }

    /** What an arrival turned out to be; for what is not a line it is nothing to look at. */
    Parsed take(Arrival arrival) {
        latest = Math.max(latest, arrival.at());
        if (arrival instanceof Arrival.Line line) {
            return line(line);
        }
        if (arrival instanceof Arrival.Before before) {
            lines.before(before.text());
        } else if (arrival instanceof Arrival.Opened) {
            lastLine = latest;
            steadySince = latest;
        } else if (arrival instanceof Arrival.Broken broken) {
            goodInARow = 0;
            fails(Kind.BROKEN, feed.origin().words() + ": " + broken.why());
        } else if (arrival instanceof Arrival.Ended) {
            ended = true;
            fails(Kind.ENDED, feed.origin().words() + " has come to its end");
        } else if (arrival instanceof Arrival.NotKept notKept) {
            fails(Kind.NOT_KEPT, "its raw readings cannot be kept: " + notKept.why());
        } else if (arrival instanceof Arrival.Kept && failing.remove(Kind.NOT_KEPT)) {
            tellIfBack();
        }
        return new Parsed.Passed();
    }

    private Parsed line(Arrival.Line line) {
        lastLine = latest;
        Parsed parsed = line.whole() ? lines.judged(line.text()) : tooLong();
        if (parsed instanceof Parsed.Found number) {
            readings.add(lines.reading(latest, number));
            good();
        } else if (parsed instanceof Parsed.Nonsense no) {
            nonsense++;
            goodInARow = 0;
            String quoted = Words.quoted(line.text().strip());
            boolean once = no.why().startsWith(quoted);
            fails(Kind.NONSENSE, once ? no.why() : quoted + " is no reading: " + no.why());
        }
        return parsed;
    }

    /** A line of an earlier part of the session: its reading counts, its faults were told then. */
    void recall(long at, String text) {
        lines.reading(at, text).ifPresent(readings::add);
    }

    private static Parsed tooLong() {
        return new Parsed.Nonsense("a line of more than " + LineSplitter.LONGEST + " characters");
    }

    private void good() {
        goodInARow++;
        boolean well = goodInARow >= READINGS_BACK;
        if (well && failing.removeAll(UNREADABLE)) {
            steadySince = latest;
            tellIfBack();
        }
    }

    /** Lets time pass without an arrival. */
    void pass(long now) {
        latest = Math.max(latest, now);
        if (ended) {
            return;
        }
        if (latest - lastLine > feed.lostAfter() * NANOS && !failing.contains(Kind.BROKEN)) {
            goodInARow = 0;
            steadySince = latest;
            fails(
                    Kind.SILENT,
                    "nothing from "
                            + feed.origin().words()
                            + " for "
                            + Math.round(feed.lostAfter())
                            + " s");
        }
        feed.perSecond().ifPresent(this::watchRate);
    }

    private void watchRate(double expected) {
        double seconds = Math.max(RATE_SECONDS, RATE_READINGS / expected);
        boolean judges =
                latest - steadySince >= seconds * NANOS
                        && Collections.disjoint(failing, UNREADABLE);
        if (!judges) {
            return;
        }
        double rate = rate(seconds);
        if (rate < STUTTERS_BELOW * expected) {
            fails(
                    Kind.STUTTERING,
                    String.format(
                            Locale.ROOT, "%.1f readings a second instead of %.1f", rate, expected));
        } else if (rate >= STEADY_FROM * expected && failing.remove(Kind.STUTTERING)) {
            tellIfBack();
        }
    }

    /** Readings a second over the last seconds. */
    double rate(double seconds) {
        long from = latest - Math.round(seconds * NANOS);
        return readings.countBetween(from + 1, latest) / seconds;
    }

    /** Each kind of trouble is told once until all is well again. */
    private void fails(Kind kind, String words) {
        if (failing.add(kind)) {
            untold.add(new FeedTrouble(feed.id(), kind, latest, feed.id() + ": " + words));
        }
    }

    private void tellIfBack() {
        if (failing.isEmpty()) {
            untold.add(
                    new FeedTrouble(
                            feed.id(), Kind.BACK, latest, feed.id() + ": reads well again"));
        }
    }

    /** What was not told yet. */
    List<FeedTrouble> tell() {
        List<FeedTrouble> all = List.copyOf(untold);
        untold.clear();
        return all;
    }

    /** Whether nothing is wrong with it now. */
    boolean isWell() {
        return failing.isEmpty();
    }

    /** How many lines were nonsense so far. */
    long nonsense() {
        return nonsense;
    }

    /** The readings of a signal in a window, with the settling time left out. */
    Sample sample(Signal signal, Span span) {
        return new Sampling(feed, readings).of(signal, span);
    }

    /** What a gauge beside a tester shows now: old readings are worse than none there. */
    Now gauged() {
        double perSecond = feed.perSecond().orElseGet(() -> rate(RATE_SECONDS));
        double patience = Lately.patience(perSecond, feed.lostAfter());
        boolean fresh =
                readings.latest()
                        .filter(last -> latest - last.at() <= patience * NANOS)
                        .isPresent();
        if (!fresh) {
            return Now.SILENT;
        }
        long last = readings.latest().orElseThrow().at();
        long from = last - Math.round(Lately.SECONDS * NANOS);
        return new Now(Lately.mean(readings.between(from + 1, last)));
    }

    /** What it reads now, in its unit; empty when nothing came lately. */
    OptionalDouble now() {
        return readings.latest()
                .filter(each -> latest - each.at() <= feed.lostAfter() * NANOS)
                .map(each -> OptionalDouble.of(feed.scale().unit().fromSi(each.si())))
                .orElse(OptionalDouble.empty());
    }
}
