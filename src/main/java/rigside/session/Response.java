package rigside.session;

import java.util.List;

/** What an input leads to. */
public sealed interface Response {
    /**
     * It leads to these events; none means that nothing changes.
     *
     * @param events in order
     */
    record Happened(List<Event> events) implements Response {
        public Happened {
            events = List.copyOf(events);
        }
    }

    /**
     * It cannot be done now.
     *
     * @param why in words for the tester
     */
    record Refused(String why) implements Response {}

    static Response of(Event... events) {
        return new Happened(List.of(events));
    }

    static Response nothing() {
        return new Happened(List.of());
    }
}
