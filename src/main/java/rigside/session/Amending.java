package rigside.session;

import java.util.List;
import rigside.measure.Quantity;
import rigside.protocol.Plan;

/**
 * What typed text would make of an entry that was found wrong. It is checked as it would have been
 * when the entry was captured: the same units, choices and limits, beside what stood there then.
 */
public final class Amending {
    /** Two values that differ by less than this share are the same, in whatever unit. */
    private static final double SAME_SHARE = 1e-12;

    private Amending() {}

    /** What typed text means. */
    public sealed interface Meaning {
        /**
         * The value it means.
         *
         * @throws IllegalStateException if it means none
         */
        Value value();

        /** It can be taken. */
        record Taken(Value value) implements Meaning {}

        /** It is outside what is plausible and has to be meant. */
        record Doubted(Value value, String why) implements Meaning {}

        /** It cannot be taken. */
        record Refused(String why) implements Meaning {
            @Override
            public Value value() {
                throw new IllegalStateException("what is refused has no value");
            }
        }
    }

    /** What {@code text} means for the entry of a number. */
    public static Meaning meaning(State state, int number, String text) {
        return state.captured()
                .entry(number)
                .map(entry -> meaning(state, entry, text))
                .orElseGet(() -> new Meaning.Refused("there is no entry " + number));
    }

    private static Meaning meaning(State state, Entry entry, String text) {
        if (!entry.stands()) {
            return new Meaning.Refused(
                    "entry " + entry.number() + " is struck out; only what counts is amended");
        }
        if (state.activity() instanceof Activity.VoidAsked asked
                && asked.entry() == entry.number()) {
            return new Meaning.Refused("say first whether this entry is struck out");
        }
        Typing.Meaning typed = Typing.amended(asItWas(state, entry), entry.slot(), text);
        if (typed instanceof Typing.Meaning.Refused no) {
            return new Meaning.Refused(no.why());
        }
        if (typed instanceof Typing.Meaning.Doubted doubted) {
            return changed(state, entry, new Meaning.Doubted(doubted.value(), doubted.why()));
        }
        return typed instanceof Typing.Meaning.Taken taken
                ? changed(state, entry, new Meaning.Taken(taken.value()))
                : new Meaning.Refused(
                        "nothing is typed; strike the entry out if there is no right value");
    }

    /**
     * Only a value that is on the screen is refused for being the same: else what is concealed
     * could be found by trying.
     */
    private static Meaning changed(State state, Entry entry, Meaning meaning) {
        boolean same = isSame(entry.value(), meaning.value()) && !mayBeConcealed(state, entry);
        return same
                ? new Meaning.Refused("entry " + entry.number() + " is " + said(entry) + " already")
                : meaning;
    }

    private static String said(Entry entry) {
        return entry.value() instanceof Value.Said said
                ? "'" + said.text() + "'"
                : entry.value().toString();
    }

    private static boolean isSame(Value one, Value other) {
        if (one instanceof Value.Measured a && other instanceof Value.Measured b) {
            Quantity before = a.quantity();
            return Math.abs(b.quantity().si() - before.si()) <= SAME_SHARE * Math.abs(before.si());
        }
        return one.equals(other);
    }

    /** With what was captured before the entry, and no more of it than the tester may know. */
    private static State asItWas(State state, Entry entry) {
        List<Entry> before =
                state.captured().entries().stream()
                        .filter(each -> each.number() < entry.number())
                        .filter(each -> !mayBeConcealed(state, each))
                        .toList();
        return state.with(state.captured().withEntries(before));
    }

    /** What was typed is no secret, and nothing is once a session is closed. */
    private static boolean mayBeConcealed(State state, Entry entry) {
        Plan plan = state.protocol().plan();
        return !state.course().closed()
                && entry.source() != Source.TYPED
                && entry.slot().place().stage() == Stage.DONNING
                && !(plan.trialClock() == Plan.Until.SHOWN && plan.result() == Plan.Until.SHOWN);
    }
}
