package rigside.report;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Analysis;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.protocol.Protocol;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * All that the report of a session is made of.
 *
 * @param state where the session stands; opened
 * @param shown what concealment lets out
 * @param events everything that can be read of it, in order; at least the opening
 * @param trouble what is wrong with its journal; empty when nothing is
 * @param earlier the plans before it on the same question, the earliest first; empty where it is
 *     not known whose they would be
 * @param pressure what the instruments' raw readings say of the pressure over time
 */
public record Material(
        State state,
        Shown shown,
        List<Recorded> events,
        List<String> trouble,
        Optional<List<Earlier>> earlier,
        PressureTraces pressure) {
    public Material {
        events = List.copyOf(events);
        trouble = List.copyOf(trouble);
        earlier = earlier.map(List::copyOf);
    }

    /** Without raw readings. */
    public Material(
            State state,
            Shown shown,
            List<Recorded> events,
            List<String> trouble,
            Optional<List<Earlier>> earlier) {
        this(state, shown, events, trouble, earlier, PressureTraces.NONE);
    }

    /** The same with the pressure over time. */
    public Material with(PressureTraces found) {
        return new Material(state, shown, events, trouble, earlier, found);
    }

    /**
     * A session on the same question that was begun before.
     *
     * @param came what it came to, one for each comparison; empty while it is open
     */
    public record Earlier(ZonedDateTime begun, boolean closed, int rounds, List<String> came) {
        public Earlier {
            came = List.copyOf(came);
        }
    }

    /**
     * Of a session with nothing beside its journal.
     *
     * @throws java.util.NoSuchElementException if it was not opened
     */
    public static Material of(State state, List<Recorded> events) {
        Shown shown = Shown.of(state, Analysis.of(state));
        return new Material(state, shown, events, List.of(), Optional.empty());
    }

    Protocol protocol() {
        return state.protocol();
    }

    Event.SessionOpened opened() {
        return state.opening().orElseThrow().event();
    }

    boolean isClosed() {
        return state.course().closed();
    }

    /** Whether clock times may be told: of what is concealed they could tell how long it took. */
    boolean hasTimes() {
        return shown.concealed().isEmpty();
    }

    /** Whether times tell when masks were worn: those of a session on paper tell of the typing. */
    boolean hasTimesWorn() {
        return hasTimes() && opened().paper().isEmpty();
    }

    boolean compares() {
        return protocol().purpose() == Protocol.Purpose.COMPARISON;
    }

    /** The measures that are worn for, with what may be told of them. */
    List<MeasureResult> measures() {
        return shown.measures();
    }

    String title(String condition) {
        return Outline.title(protocol(), condition);
    }

    /** The words of a condition worn in a donning; empty outside donnings. */
    String worn(int donning) {
        return state.course().donning(donning).map(each -> title(each.condition())).orElse("");
    }
}
