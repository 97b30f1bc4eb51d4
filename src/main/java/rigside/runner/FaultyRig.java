package rigside.runner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.rig.Act;
import rigside.rig.Asked;
import rigside.rig.FeedTrouble;
import rigside.rig.Now;
import rigside.rig.Reading;
import rigside.rig.Rig;
import rigside.rig.Sample;
import rigside.rig.Signal;
import rigside.rig.Span;

/** A rig on which faults happen: falls silent, reads wrong, gives no value. */
final class FaultyRig implements Rig {
    /** How far an odd value is off: a slip of reading, ours, no source. */
    private static final double ODD_TIMES = 5;

    /** A pull that is not held reaches this share of the target; ours, no source. */
    private static final double WEAK_SHARE = 0.6;

    private static final String FEED = "instruments";

    private final Rig rig;
    private final Faults faults;
    private Act act = Act.NOTHING;
    private boolean lost;

    FaultyRig(Rig rig, Faults faults) {
        this.rig = rig;
        this.faults = faults;
    }

    @Override
    public String words() {
        return rig.words();
    }

    @Override
    public boolean simulated() {
        return rig.simulated();
    }

    @Override
    public OptionalDouble answer(Asked asked) {
        return isSilent(asked) || isLeftOut(asked) ? OptionalDouble.empty() : seen(asked);
    }

    /** What a tester reads off an instrument, whether the program gets it or not. */
    OptionalDouble seen(Asked asked) {
        OptionalDouble right = rig.answer(asked);
        Optional<Faults.At> odd = at(asked, Fault.ODD_VALUE);
        if (odd.isEmpty() || right.isEmpty()) {
            return right;
        }
        faults.happened(odd.get());
        return OptionalDouble.of(ODD_TIMES * right.getAsDouble());
    }

    private boolean isSilent(Asked asked) {
        boolean read =
                switch (asked.kind()) {
                    case AMBIENT, MASK, PRESSURE, ZERO, ROOM -> true;
                    case INHALATION, TYPED -> false;
                };
        return read && asked.donning() > 0 && isLost(asked.donning());
    }

    private boolean isLost(int donning) {
        return !faults.in(donning, Fault.FEED_LOST).isEmpty();
    }

    private boolean isLeftOut(Asked asked) {
        return at(asked, Fault.LEFT_OUT).isPresent() && asked.kind() != Asked.Kind.INHALATION;
    }

    private Optional<Faults.At> at(Asked asked, Fault fault) {
        Optional<Spot.What> what =
                Optional.ofNullable(
                        switch (asked.kind()) {
                            case MASK -> Spot.What.MASK;
                            case PRESSURE -> Spot.What.PRESSURE;
                            case INHALATION -> Spot.What.TRIAL;
                            case TYPED -> Spot.What.FIELD;
                            case AMBIENT, ZERO, ROOM -> null;
                        });
        return what.isEmpty() || asked.again() > 0
                ? Optional.empty()
                : faults.in(asked.donning(), fault).stream()
                        .filter(
                                each ->
                                        faults.isAt(
                                                each,
                                                asked.condition(),
                                                asked.step(),
                                                asked.exercise(),
                                                what.get()))
                        .findFirst();
    }

    @Override
    public List<FeedTrouble> pass(long now) {
        boolean silent = isLost(act.donning());
        if (silent == lost) {
            return rig.pass(now);
        }
        lost = silent;
        rig.pass(now);
        faults.in(act.donning(), Fault.FEED_LOST).forEach(faults::happened);
        return List.of(
                silent
                        ? new FeedTrouble(
                                FEED,
                                FeedTrouble.Kind.SILENT,
                                now,
                                FEED + " send nothing any more (rehearsed)")
                        : new FeedTrouble(
                                FEED, FeedTrouble.Kind.BACK, now, FEED + " are back (rehearsed)"));
    }

    @Override
    public void does(Act doing, long at) {
        act = doing;
        rig.does(doing, at);
    }

    @Override
    public Optional<Reading> latest(Signal signal) {
        return rig.latest(signal).map(reading -> weakened(signal, reading));
    }

    @Override
    public Optional<Now> now(Signal signal) {
        Optional<Now> now = rig.now(signal);
        if (now.isEmpty() || isLost(act.donning())) {
            return now.map(silent -> Now.SILENT);
        }
        double share = signal == Signal.PRESSURE && isWeak() ? WEAK_SHARE : 1;
        return now.map(
                each ->
                        each.si().isPresent()
                                ? new Now(OptionalDouble.of(share * each.si().getAsDouble()))
                                : each);
    }

    @Override
    public List<Reading> readings(Signal signal, long from, long to) {
        return isLost(act.donning())
                ? List.of()
                : rig.readings(signal, from, to).stream()
                        .map(each -> weakened(signal, each))
                        .toList();
    }

    private Reading weakened(Signal signal, Reading reading) {
        return signal == Signal.PRESSURE && isWeak()
                ? new Reading(reading.at(), WEAK_SHARE * reading.si(), reading.side())
                : reading;
    }

    private boolean isWeak() {
        return act.kind() == Act.Kind.PULL
                && act.again() == 0
                && faults.in(act.donning(), Fault.NOT_HELD).stream()
                        .anyMatch(
                                each ->
                                        faults.isAt(
                                                each,
                                                act.condition(),
                                                act.step(),
                                                act.position(),
                                                Spot.What.TRIAL));
    }

    @Override
    public Optional<Sample> sample(Signal signal, Span span) {
        return isLost(act.donning()) ? Optional.empty() : rig.sample(signal, span);
    }
}
