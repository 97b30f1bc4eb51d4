package rigside.analysis;

import java.util.List;
import rigside.session.Entry;
import rigside.session.Slot;
import rigside.session.State;

/**
 * An amended entry in words that conceal what is concealed: a value taken here may be, the one
 * typed in its place never is.
 *
 * @param then the entry with the value before
 */
record AmendedWords(State state, Entry then) {

    /** The entries that have their value before in one of these, each once. */
    static List<String> all(List<Evidence> ways) {
        return ways.stream()
                .flatMap(
                        way ->
                                way.unamended().stream()
                                        .map(then -> new AmendedWords(way.state(), then)))
                .map(AmendedWords::amended)
                .distinct()
                .toList();
    }

    /** "entry 7 (time of trial 1, donning 2) was amended from 12.4 s to 14.2 s (misread)". */
    String amended() {
        return name() + " was amended from " + before() + " to " + now().value() + why();
    }

    /** "entry 7 (time of trial 1, donning 2)". */
    private String name() {
        int donning = then.slot().place().donning();
        return "entry "
                + then.number()
                + " ("
                + SlotWords.within(state, then.slot())
                + (donning == 0 ? "" : ", donning " + donning)
                + ")";
    }

    /** The value before, or what it was. */
    String before() {
        return Out.of(state).tells(then.slot(), then.source())
                ? then.value().toString()
                : then.slot() instanceof Slot.Trial ? "the time taken" : "what was read";
    }

    private String why() {
        return now().lastAmendment().map(last -> " (" + last.reason() + ")").orElse("");
    }

    private Entry now() {
        return state.captured().entry(then.number()).orElseThrow();
    }
}
