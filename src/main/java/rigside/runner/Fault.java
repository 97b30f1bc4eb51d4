package rigside.runner;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigside.runner.Spot.What;

/** What can go wrong in a rehearsal when it is asked for. */
public enum Fault {
    FAILED_SEAL_CHECK("a check fails that ends the donning, or is kept as an outcome"),
    FEED_LOST("instruments fall silent for a donning; values are typed"),
    ODD_VALUE("one reading is five times too large"),
    NOT_HELD("the pull of a timed inhalation is not held"),
    LEFT_OUT("one reading is left out"),
    STOPPED("the tester stops in the middle, and goes on"),
    DONE_AGAIN("an exercise is done again"),
    ABANDONED("the tester abandons a donning"),
    STRUCK_OUT("a complete donning is struck out, and done again"),
    ENDED_EARLY("the tester ends the repeats after a donning");

    private final String words;

    Fault(String words) {
        this.words = words;
    }

    private Set<What> where() {
        return switch (this) {
            case FAILED_SEAL_CHECK -> Set.of(What.CHECK);
            case FEED_LOST -> Set.of(What.MASK, What.PRESSURE);
            case ODD_VALUE -> Set.of(What.MASK, What.PRESSURE, What.TRIAL, What.FIELD);
            case NOT_HELD -> Set.of(What.TRIAL);
            case LEFT_OUT -> Set.of(What.MASK, What.PRESSURE, What.TRIAL);
            case STOPPED, ABANDONED -> Set.of(What.WAIT, What.EXERCISE, What.TRIAL);
            case DONE_AGAIN -> Set.of(What.EXERCISE);
            case STRUCK_OUT, ENDED_EARLY -> Set.of();
        };
    }

    /** The word it is asked for by. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What happens, in a few words. */
    public String words() {
        return words;
    }

    /** The fault of a word. */
    public static Optional<Fault> of(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }

    /** Every word. */
    public static List<String> all() {
        return Arrays.stream(values()).map(Fault::word).toList();
    }

    /** Whether it needs something in the donning to spoil. */
    boolean needsSpot() {
        return !where().isEmpty();
    }

    /** The spots it can strike, of all there are; the exercise before one is what is done again. */
    List<Spot> of(List<Spot> spots) {
        return spots.stream()
                .filter(spot -> where().contains(spot.what()))
                .filter(spot -> this != DONE_AGAIN || spot.position() > 0)
                .toList();
    }
}
