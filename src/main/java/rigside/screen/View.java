package rigside.screen;

import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Live;
import rigside.analysis.Shown;
import rigside.session.Activity;
import rigside.session.State;

/**
 * All that a picture of a session depends on, besides its size.
 *
 * @param state where the session stands; opened
 * @param shown what concealment lets out now
 * @param now session time, in nanoseconds
 * @param page what is looked at
 * @param selected the selected line of a page that has lines, or the first line shown of one that
 *     scrolls, from 0; see {@link SessionScreen#seen}
 * @param prompt the question asked on the bottom lines, if any
 * @param typed the text typed so far, for the prompt or else for the gap that waits
 * @param message the last refusal or confirmation, if any
 * @param style what the terminal can show, and the trigger
 * @param seen how much of what is looked at there is room for; see {@link SessionScreen#seen}
 * @param gauge what the gauge on the mask reads now; empty when no instrument follows it
 * @param live what particle counters give of what is under way
 * @param rehearsed whether it is a rehearsal, which presses its own keys
 */
public record View(
        State state,
        Shown shown,
        long now,
        Page page,
        int selected,
        Optional<Prompt> prompt,
        String typed,
        Optional<String> message,
        Style style,
        Seen seen,
        Optional<Gauge> gauge,
        Live live,
        boolean rehearsed) {

    /** A view of which everything is seen, without instruments. */
    public View(
            State state,
            Shown shown,
            long now,
            Page page,
            int selected,
            Optional<Prompt> prompt,
            String typed,
            Optional<String> message,
            Style style) {
        this(
                state,
                shown,
                now,
                page,
                selected,
                prompt,
                typed,
                message,
                style,
                Seen.ALL,
                Optional.empty(),
                Live.NONE,
                false);
    }

    /**
     * A gauge that an instrument follows.
     *
     * @param suctionPa how far the pressure in the mask is below the room's; empty when the
     *     instrument is silent
     */
    public record Gauge(OptionalDouble suctionPa) {}

    private static final double NANOS = 1e9;

    /**
     * How much there is room for.
     *
     * @param limit the largest {@code selected} that means anything
     * @param rows how many lines are seen at once
     * @param end whether the last line is in sight
     */
    public record Seen(int limit, int rows, boolean end) {
        /** There is room for everything. */
        public static final Seen ALL = new Seen(0, 1, true);

        /** At the end of more than there is room for. */
        static final Seen SCROLLED = new Seen(1, 1, true);

        /** Whether the window shows nothing of it, so that nothing can be answered. */
        boolean isNothing() {
            return rows == 0 && !end;
        }

        /** How far a page up or down goes: two lines may be taken by signs that there is more. */
        public int page() {
            return Math.max(1, rows - 2);
        }
    }

    /** What is looked at. */
    public enum Page {
        /** The step that is going on. */
        STEP,
        /** The running tally and what it says. */
        TALLY,
        /** How each verdict comes about, and what would change it. */
        METHOD,
        /** What is worth a second look, with and without it. */
        FLAGS,
        /** All entries and donnings, to void or strike out. */
        ENTRIES,
        /** The keys and the words. */
        HELP,
        /** Something could not be written to disk; nothing else can be done until it is. */
        UNKEPT
    }

    /** What the typed line is for. */
    public enum Prompt {
        NOTE("Note"),
        VOID_REASON("Why is the entry struck out"),
        STRIKE_REASON("Why is the donning struck out"),
        AMEND_VALUE("The right value"),
        AMEND_REASON("Why is it amended"),
        LEAVE_OUT_REASON("Why is it left out"),
        GATE_REASON("Why go on all the same"),
        RETAKE_REASON("Why is the exercise done again"),
        CHECK_FAILED("Not so, and the donning ends. What was seen"),
        ABANDON_REASON("Why is the donning abandoned"),
        END_REASON("Why no further donnings");

        private final String words;

        Prompt(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** How many colours the terminal has. Never the only sign of anything. */
    public enum Colours {
        /** None, or none are wanted. */
        NONE,
        /** The eight of the oldest terminals, whose shades nobody knows. */
        FEW,
        /** The 256 of known shades. */
        MANY
    }

    /**
     * What the terminal can show.
     *
     * @param colours which colours may be used
     * @param unicode whether lines and blocks beyond ASCII can be drawn
     * @param trigger the key that starts and stops timing
     */
    public record Style(Colours colours, boolean unicode, Stroke trigger) {
        /** A style with the space bar as trigger. */
        public Style(Colours colours, boolean unicode) {
            this(colours, unicode, Stroke.SPACE);
        }
    }

    /**
     * Whether plain characters are text now: a prompt is open, or the step asks for an entry. Then
     * letters type, and Ctrl with the letter is the key.
     */
    public boolean isTyping() {
        return (page != Page.UNKEPT && prompt.isPresent())
                || (page == Page.STEP && state.activity() instanceof Activity.Filling);
    }

    /** The same with another room. */
    public View with(Seen room) {
        return new View(
                state, shown, now, page, selected, prompt, typed, message, style, room, gauge, live,
                rehearsed);
    }

    /** The same with what the gauge reads. */
    public View with(Optional<Gauge> reads) {
        return new View(
                state, shown, now, page, selected, prompt, typed, message, style, seen, reads, live,
                rehearsed);
    }

    /** The same with what particle counters give. */
    public View with(Live given) {
        return new View(
                state, shown, now, page, selected, prompt, typed, message, style, seen, gauge,
                given, rehearsed);
    }

    /** The same of a rehearsal. */
    public View ofRehearsal() {
        return new View(
                state, shown, now, page, selected, prompt, typed, message, style, seen, gauge, live,
                true);
    }

    /** Seconds of session time since {@code then}. */
    double secondsSince(long then) {
        return (now - then) / NANOS;
    }

    Glyphs glyphs() {
        return Glyphs.of(style);
    }
}
