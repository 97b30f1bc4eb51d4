package rigside.screen;

import java.util.List;
import java.util.Optional;
import rigside.analysis.Shown;
import rigside.session.State;

/**
 * All that a picture away from a session depends on, besides its size.
 *
 * @param page what is looked at
 * @param protocols the protocols to start from
 * @param sessions the sessions to resume or review, the latest first
 * @param sought what is searched for in the sessions, of which {@code sessions} are those found
 * @param selected on the home page the selected line, protocols first, then sessions, from 0; on
 *     other pages the first line shown; see {@link HomeScreen#seen}
 * @param rig what will answer for the instruments
 * @param review what is reviewed; empty on other pages
 * @param message the last refusal or confirmation, if any
 * @param style what the terminal can show
 */
public record HomeView(
        Page page,
        List<ProtocolItem> protocols,
        List<SessionItem> sessions,
        Sought sought,
        int selected,
        Rig rig,
        Review review,
        Optional<String> message,
        View.Style style) {
    public HomeView {
        protocols = List.copyOf(protocols);
        sessions = List.copyOf(sessions);
    }

    /** Nothing is searched for. */
    public HomeView(
            Page page,
            List<ProtocolItem> protocols,
            List<SessionItem> sessions,
            int selected,
            Rig rig,
            Review review,
            Optional<String> message,
            View.Style style) {
        this(
                page,
                protocols,
                sessions,
                new Sought(false, "", sessions.size(), ""),
                selected,
                rig,
                review,
                message,
                style);
    }

    /**
     * What is searched for in the sessions.
     *
     * @param typing whether words are being typed
     * @param words as they were typed
     * @param all how many sessions there are, found or not
     * @param progress how far the reading of sessions has come, in words; empty when it is done
     */
    public record Sought(boolean typing, String words, int all, String progress) {
        /** Whether some sessions may be left away. */
        boolean isNarrow() {
            return !words.isBlank();
        }
    }

    /** What is looked at. */
    public enum Page {
        HOME,
        HELP,
        /** A session read through, or the lines of a protocol file. */
        REVIEW,
        /** How each verdict of the reviewed session comes about. */
        METHOD,
        /** What is worth a second look in the reviewed session. */
        FLAGS
    }

    /**
     * A protocol to start from.
     *
     * @param name the file's name
     * @param title its title; empty when the file cannot be read that far
     * @param own whether it is the tester's own, not one that comes with the program
     * @param problems how many problems the file has; 0 when it can be run
     * @param round how long a round takes, in words; may be empty
     * @param detail what the pane beside the list says: the question, the conditions, or the
     *     problems; one paragraph each
     */
    public record ProtocolItem(
            String name,
            String title,
            boolean own,
            int problems,
            String round,
            List<String> detail) {
        public ProtocolItem {
            detail = List.copyOf(detail);
        }
    }

    /**
     * A session to take up again or review.
     *
     * @param title its protocol's title
     * @param when when it was begun, in words
     * @param state where it stands, in words
     * @param open whether it can be gone on with
     * @param detail what the pane beside the list says; one paragraph each
     */
    public record SessionItem(
            String title, String when, String state, boolean open, List<String> detail) {
        public SessionItem {
            detail = List.copyOf(detail);
        }
    }

    /**
     * What answers for the instruments in a session started now.
     *
     * @param words what it is, in words
     * @param simulated whether every value will be invented
     * @param speed how many seconds of session time pass in one second; 1 unless simulated
     */
    public record Rig(String words, boolean simulated, double speed) {}

    /**
     * Something to read.
     *
     * @param title what it is of
     * @param trouble what is wrong with it, said first; one paragraph each
     * @param read the session it is of, whose findings are drawn next; empty when it is of none
     * @param lines the rest, one paragraph each
     * @param sheet what follows and is drawn as it stands, such as tables
     * @param simulated whether it is of a session whose values are invented
     * @param speed how many seconds of its time passed in one second; 1 unless simulated
     */
    public record Review(
            String title,
            List<String> trouble,
            Optional<Read> read,
            List<String> lines,
            List<String> sheet,
            boolean simulated,
            double speed) {
        /** Nothing to read. */
        public static final Review NONE = new Review("", List.of());

        /** Lines that are of no session. */
        public Review(String title, List<String> lines) {
            this(title, List.of(), Optional.empty(), lines, List.of(), false, 1);
        }

        /** Of a session. */
        public Review(
                String title,
                List<String> trouble,
                Optional<Read> read,
                List<String> lines,
                boolean simulated,
                double speed) {
            this(title, trouble, read, lines, List.of(), simulated, speed);
        }

        /** Lines that are drawn as they stand. */
        public static Review sheet(String title, List<String> lines) {
            return new Review(title, List.of(), Optional.empty(), List.of(), lines, false, 1);
        }

        public Review {
            trouble = List.copyOf(trouble);
            lines = List.copyOf(lines);
            sheet = List.copyOf(sheet);
        }
    }

    /**
     * A session that is read through.
     *
     * @param state where it stands; opened
     * @param shown what concealment lets out
     * @param kept whether it has a folder of its own, into which a report can be written
     */
    public record Read(State state, Shown shown, boolean kept) {
        /** Of a session that is kept nowhere. */
        public Read(State state, Shown shown) {
            this(state, shown, false);
        }
    }

    /** The selected protocol, if a protocol is selected. */
    public Optional<ProtocolItem> protocol() {
        return selected >= 0 && selected < protocols.size()
                ? Optional.of(protocols.get(selected))
                : Optional.empty();
    }

    /** The selected session, if a session is selected. */
    public Optional<SessionItem> session() {
        int at = selected - protocols.size();
        return at >= 0 && at < sessions.size() ? Optional.of(sessions.get(at)) : Optional.empty();
    }
}
