package rigside.runner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.yaml.Words;

/**
 * The faults asked for in one rehearsal, and which of them have happened. Where they strike follows
 * from the seed.
 */
public final class Faults {
    /** Nothing goes wrong. */
    static final Faults NONE = new Faults((condition, fault) -> List.of(), List.of(), 0);

    private final BiFunction<String, Fault, List<Spot>> spots;
    private final List<At> asked;
    private final long seed;
    private final Set<At> happened = new LinkedHashSet<>();

    /**
     * A fault in a donning.
     *
     * @param donning its number, from 1
     */
    public record At(Fault fault, int donning) {
        @Override
        public String toString() {
            return fault.word() + ":" + donning;
        }
    }

    private Faults(BiFunction<String, Fault, List<Spot>> spots, List<At> asked, long seed) {
        this.spots = spots;
        this.asked = List.copyOf(asked);
        this.seed = seed;
    }

    /**
     * Faults as they are asked for.
     *
     * @param asked a fault without a donning strikes in one of the first rounds, whichever the seed
     *     says
     */
    public static Faults of(Protocol protocol, List<Asked> asked, long seed) {
        int first = protocol.plan().fewest() * protocol.conditions().size();
        List<At> all = new ArrayList<>();
        for (Asked each : asked) {
            SplittableRandom random = new SplittableRandom(seed + all.size());
            int drawn = 1 + random.nextInt(first);
            all.add(new At(each.fault(), each.donning().orElse(drawn)));
        }
        return new Faults((condition, fault) -> Spot.of(protocol, condition, fault), all, seed);
    }

    /**
     * A fault as it is asked for.
     *
     * @param donning the number of the donning, from 1; empty for any
     */
    public record Asked(Fault fault, OptionalInt donning) {}

    /**
     * Reads {@code odd-value} or {@code odd-value:3}.
     *
     * @param problems takes what is wrong, with a second line that says what to do
     */
    public static Optional<Asked> read(Protocol protocol, String text, List<String> problems) {
        int colon = text.indexOf(':');
        String word = colon < 0 ? text : text.substring(0, colon);
        Optional<Fault> fault = Fault.of(word);
        if (fault.isEmpty()) {
            problems.add(
                    "no fault is called "
                            + Words.quoted(word)
                            + "\n    "
                            + Words.suggestion(word, Fault.all()));
            return Optional.empty();
        }
        if (!canStrike(protocol, fault.get())) {
            problems.add(
                    "the fault '"
                            + word
                            + "' cannot happen: no donning of this protocol has what it strikes"
                            + "\n    leave it out; it means: "
                            + fault.get().words());
            return Optional.empty();
        }
        if (colon < 0) {
            return fault.map(each -> new Asked(each, OptionalInt.empty()));
        }
        String number = text.substring(colon + 1);
        int donning = number.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(number) : 0;
        if (donning == 0) {
            problems.add(
                    "the fault "
                            + Words.quoted(text)
                            + " names no donning\n    write its number after the colon, such as '"
                            + word
                            + ":3', or leave both out");
            return Optional.empty();
        }
        return fault.map(each -> new Asked(each, OptionalInt.of(donning)));
    }

    private static boolean canStrike(Protocol protocol, Fault fault) {
        return protocol.conditions().stream()
                .map(Condition::id)
                .anyMatch(id -> !fault.needsSpot() || !Spot.of(protocol, id, fault).isEmpty());
    }

    /** Those asked for, with their donnings. */
    public List<At> asked() {
        return asked;
    }

    /** Those that did not happen: the session was over before, or the donning had no place. */
    public List<At> missed() {
        return asked.stream().filter(each -> !happened.contains(each)).toList();
    }

    /** Those of a donning that have not happened yet. */
    List<At> due(int donning) {
        return asked.stream()
                .filter(each -> each.donning() == donning && !happened.contains(each))
                .toList();
    }

    /** Those of one kind in a donning, happened or not. */
    List<At> in(int donning, Fault fault) {
        return asked.stream()
                .filter(each -> each.donning() == donning && each.fault() == fault)
                .toList();
    }

    void happened(At fault) {
        happened.add(fault);
    }

    /**
     * Where a fault strikes.
     *
     * @param condition the one worn in its donning
     */
    Optional<Spot> spot(At at, String condition) {
        List<Spot> possible = spots.apply(condition, at.fault());
        if (possible.isEmpty()) {
            return Optional.empty();
        }
        long mixed = seed * 31 + at.donning() * 7L + at.fault().word().hashCode();
        return Optional.of(possible.get(new SplittableRandom(mixed).nextInt(possible.size())));
    }

    boolean isAt(At at, String condition, int step, int position, Spot.What what) {
        return spot(at, condition).equals(Optional.of(new Spot(step, position, what)));
    }
}
