package rigside.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;

/**
 * The instruments of a rig file, followed. A thread for each feed listens; everything here is for
 * the one thread of the session, which takes over what arrived with {@link #pass} and never waits.
 */
public final class Feeds implements Rig {
    private static final double SHOWN_SECONDS = 5;

    /** Readings are means of many: one more digit than instruments show. */
    private static final int DIGITS = 5;

    private final Instruments instruments;
    private final List<Followed> followed = new ArrayList<>();

    /** A feed and where it comes from. */
    private record Followed(FeedWatch watch, Source source) {}

    Feeds(Instruments instruments, long now, Function<Feed, Source> sources) {
        this.instruments = instruments;
        instruments
                .feeds()
                .forEach(
                        feed ->
                                followed.add(
                                        new Followed(
                                                new FeedWatch(feed, now), sources.apply(feed))));
    }

    /**
     * Begins to follow instruments. One that cannot be opened is tried again until it can; until
     * then that is trouble, told by {@link #pass}.
     *
     * @param sessionTime session time now, in nanoseconds; asked by every feed's thread, so it must
     *     bear that
     * @param sink where every line is kept as it came
     */
    public static Feeds open(Instruments instruments, LongSupplier sessionTime, RawSink sink) {
        long now = sessionTime.getAsLong();
        return new Feeds(instruments, now, feed -> source(feed, now, sessionTime, sink));
    }

    private static Source source(Feed feed, long now, LongSupplier sessionTime, RawSink sink) {
        Kept kept = new Kept(feed.id(), sink);
        if (feed.origin() instanceof Origin.Replayed replayed) {
            return new ReplayedSource(replayed, now, kept);
        }
        ArrivalQueue queue = new ArrivalQueue();
        Listener listener =
                new Listener(feed.id(), Wires.to(feed.origin()), sessionTime, kept, queue);
        listener.start();
        return new LiveSource(listener, queue);
    }

    @Override
    public String words() {
        return "instruments: " + instruments.title();
    }

    /** Whether any reading is of another time than the session's, and so invented for it. */
    @Override
    public boolean simulated() {
        return instruments.isReplayed();
    }

    @Override
    public List<FeedTrouble> pass(long now) {
        return pass(now, seen -> {});
    }

    /**
     * Takes over what arrived until now.
     *
     * @param onlooker is shown every line
     * @return what began to fail or is back since the last call, in order of feeds
     */
    public List<FeedTrouble> pass(long now, Consumer<Seen> onlooker) {
        List<FeedTrouble> troubles = new ArrayList<>();
        for (Followed each : followed) {
            FeedWatch watch = each.watch();
            each.source().drain(now, arrival -> show(watch, arrival, onlooker));
            watch.pass(now);
            troubles.addAll(watch.tell());
        }
        return List.copyOf(troubles);
    }

    private static void show(FeedWatch watch, Arrival arrival, Consumer<Seen> onlooker) {
        Parsed parsed = watch.take(arrival);
        if (arrival instanceof Arrival.Line line) {
            Feed feed = watch.feed();
            onlooker.accept(
                    new Seen(
                            feed.id(),
                            line.at(),
                            line.text(),
                            parsed instanceof Parsed.Found number
                                    ? OptionalDouble.of(feed.scale().scaled(number.raw()))
                                    : OptionalDouble.empty(),
                            feed.scale().unit(),
                            parsed instanceof Parsed.Found number
                                    ? number.side().map(Feeds::sideWord).orElse("")
                                    : "",
                            parsed instanceof Parsed.Nonsense no ? no.why() : ""));
        }
    }

    private static String sideWord(Signal side) {
        return side == Signal.AMBIENT ? "ambient" : "mask";
    }

    /** How every feed is doing, in the order of the rig file. */
    @Override
    public List<FeedState> states() {
        return followed.stream()
                .map(
                        each ->
                                new FeedState(
                                        each.watch().feed().id(),
                                        each.watch().isWell(),
                                        each.watch().now(),
                                        each.watch().feed().scale().unit(),
                                        each.watch().rate(SHOWN_SECONDS),
                                        each.watch().readings().count(),
                                        each.watch().nonsense(),
                                        each.source().dropped()))
                .toList();
    }

    @Override
    public Optional<Reading> latest(Signal signal) {
        return watch(signal)
                .flatMap(watch -> watch.readings().latest())
                .filter(reading -> reading.side().orElse(signal) == signal);
    }

    @Override
    public Optional<Now> now(Signal signal) {
        return watch(signal).map(FeedWatch::gauged);
    }

    @Override
    public List<Reading> readings(Signal signal, long from, long to) {
        return watch(signal)
                .map(watch -> watch.readings().between(from, to))
                .orElse(List.of())
                .stream()
                .filter(reading -> reading.side().orElse(signal) == signal)
                .toList();
    }

    /** The readings of a window summed up, with the settling time after a switch left out. */
    @Override
    public Optional<Sample> sample(Signal signal, Span span) {
        return watch(signal).map(watch -> watch.sample(signal, span));
    }

    /**
     * The mean concentration in the window asked about, in SI; empty with less than half of the
     * readings expected in it, and for what no feed gives. Pressures are followed, not asked for:
     * see {@link #now}.
     */
    @Override
    public OptionalDouble answer(Asked asked) {
        return asked.kind()
                .signal()
                .filter(signal -> signal != Signal.PRESSURE)
                .flatMap(signal -> asked.span().flatMap(span -> sample(signal, span)))
                .filter(Sample::isUsable)
                .map(sample -> OptionalDouble.of(Digits.round(sample.mean(), DIGITS)))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Takes a line over that was kept before the session was broken off, so that a window which
     * began then can still be answered; before the first {@link #pass}.
     *
     * @param at when it came, in nanoseconds of session time
     */
    public void recall(String feed, long at, String line) {
        followed.stream()
                .map(Followed::watch)
                .filter(watch -> watch.feed().id().equals(feed))
                .forEach(watch -> watch.recall(at, line));
    }

    private Optional<FeedWatch> watch(Signal signal) {
        return followed.stream()
                .map(Followed::watch)
                .filter(watch -> watch.feed().sampled().gives(signal))
                .findFirst();
    }

    /** No thread listens any more. */
    @Override
    public void close() {
        followed.forEach(each -> each.source().close());
    }
}
