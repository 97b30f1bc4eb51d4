package rigside.runner;

import java.util.List;
import rigside.rig.Cue;
import rigside.session.Event;

/** What became of an input. */
public sealed interface Result {
    /**
     * It was taken, and what it led to is on disk.
     *
     * @param events what happened; none when nothing changed
     * @param cues what the tester has to notice
     */
    record Done(List<Event> events, List<Cue> cues) implements Result {
        public Done {
            events = List.copyOf(events);
            cues = List.copyOf(cues);
        }
    }

    /**
     * It cannot be done now.
     *
     * @param why in words for the tester
     */
    record Refused(String why) implements Result {}

    /**
     * It could not be kept on disk. It is held until the go-on key is pressed, which tries again.
     *
     * @param why in words for the tester
     */
    record NotKept(String why) implements Result {}
}
