package rigside.rig;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;

/**
 * A rig that answers for an invented wearer. The same seed and question always get the same answer,
 * in whatever order they are asked, so that a resumed or repeated session meets the same rig. It
 * has a gauge and two counters, which read ten times a second what goes with those answers.
 */
public final class SimulatedRig implements Rig {

    /** Instruments show about four digits. */
    private static final MathContext SHOWN = new MathContext(4);

    /** The golden ratio's odd 64-bit multiplier: spreads neighbouring numbers over all bits. */
    static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private static final double NANOS = 1e9;

    private static final long EVERY_NANOS = 100_000_000L;

    /** As many changes of what is done as a trial or exercise can see, many times over. */
    private static final int MOST_ACTS = 200;

    private final Wearer wearer;
    private final long seed;
    private final MeasureAsked measures;
    private final SimulatedSignals signals = new SimulatedSignals(this);
    private final Deque<Begun> acts = new ArrayDeque<>();
    private long now;

    /** An act, and from when on it was done, in nanoseconds of session time. */
    private record Begun(long from, Act act) {}

    /**
     * A rig.
     *
     * @param wearer who is simulated
     * @param seed sets one simulated session apart from another
     */
    public SimulatedRig(Wearer wearer, long seed) {
        this(wearer, seed, MeasureAsked.NONE);
    }

    /**
     * The same, where measures of a protocol may have values of their own.
     *
     * @param measures tells which measure is asked about
     */
    public SimulatedRig(Wearer wearer, long seed, MeasureAsked measures) {
        this.wearer = wearer;
        this.seed = seed;
        this.measures = measures;
    }

    Wearer wearer() {
        return wearer;
    }

    long seed() {
        return seed;
    }

    @Override
    public String words() {
        return "simulated: " + wearer.title();
    }

    @Override
    public boolean simulated() {
        return true;
    }

    @Override
    public void does(Act act, long at) {
        Begun last = acts.peekLast();
        if (last == null || !last.act().equals(act)) {
            long from = Math.max(last == null ? 0 : last.from(), Math.min(at, act.since()));
            acts.add(new Begun(act.kind() == Act.Kind.WEARING ? at : from, act));
        }
        if (acts.size() > MOST_ACTS) {
            acts.remove();
        }
    }

    @Override
    public List<FeedTrouble> pass(long at) {
        now = Math.max(now, at);
        return List.of();
    }

    @Override
    public Optional<Reading> latest(Signal signal) {
        return acts.isEmpty()
                ? Optional.empty()
                : Optional.of(reading(signal, now / EVERY_NANOS * EVERY_NANOS));
    }

    /** Only where the invented wearer breathes through a gauge that is followed. */
    @Override
    public Optional<Now> now(Signal signal) {
        if (signal != Signal.PRESSURE || !wearer.gauge()) {
            return Optional.empty();
        }
        long from = now - Math.round(Lately.SECONDS * 1e9);
        return Optional.of(new Now(Lately.mean(readings(signal, from, now))));
    }

    /** Of times before anything was known to be done there are none. */
    @Override
    public List<Reading> readings(Signal signal, long from, long to) {
        List<Reading> readings = new ArrayList<>();
        if (acts.isEmpty()) {
            return readings;
        }
        long begin = Math.max(from, acts.getFirst().from());
        long first = (begin + EVERY_NANOS - 1) / EVERY_NANOS * EVERY_NANOS;
        for (long at = first; at <= Math.min(to, now); at += EVERY_NANOS) {
            readings.add(reading(signal, at));
        }
        return readings;
    }

    private Reading reading(Signal signal, long at) {
        Act act = acts.getFirst().act();
        for (Begun each : acts) {
            act = each.from() <= at ? each.act() : act;
        }
        return new Reading(at, signals.value(signal, act, at), Optional.empty());
    }

    @Override
    public Optional<Sample> sample(Signal signal, Span span) {
        return Optional.of(
                Sample.of(
                        readings(signal, span.from(), span.to()),
                        0,
                        (span.to() - span.from()) / NANOS));
    }

    @Override
    public OptionalDouble answer(Asked asked) {
        return switch (asked.kind()) {
            case ZERO -> OptionalDouble.of(0);
            case AMBIENT, ROOM ->
                    shown(wearer.ambient() * Math.exp(wearer.ambientSpread() * once(asked)));
            case MASK -> shown(wearer.ambient() / value(asked, Wearer.Behaviour::fitFactor));
            case PRESSURE -> shown(value(asked, Wearer.Behaviour::peak));
            case INHALATION -> shown(value(asked, Wearer.Behaviour::inhalation));
            case TYPED ->
                    own(asked)
                            .map(level -> shown(value(asked, level)))
                            .orElse(OptionalDouble.empty());
        };
    }

    private static OptionalDouble shown(double value) {
        return OptionalDouble.of(new BigDecimal(value).round(SHOWN).doubleValue());
    }

    private double value(Asked asked, Function<Wearer.Behaviour, Wearer.Level> ofItsKind) {
        return value(
                asked,
                own(asked).orElseGet(() -> ofItsKind.apply(wearer.behaviour(asked.condition()))));
    }

    private Optional<Wearer.Level> own(Asked asked) {
        Map<String, Wearer.Level> own = wearer.behaviour(asked.condition()).measures();
        return own.isEmpty() ? Optional.empty() : measures.of(asked).map(own::get);
    }

    private double value(Asked asked, Wearer.Level level) {
        return level.value(normal(asked.kind().code(), asked.donning()), once(asked));
    }

    private double once(Asked asked) {
        return normal(
                asked.kind().code(),
                asked.donning(),
                asked.step(),
                asked.exercise(),
                asked.window(),
                asked.again());
    }

    /** A standard normal number fixed by the seed and the question. */
    private double normal(int... question) {
        long mixed = seed;
        for (int part : question) {
            mixed = (mixed ^ part) * GOLDEN;
            mixed ^= mixed >>> 32;
        }
        return new Random(mixed).nextGaussian();
    }
}
