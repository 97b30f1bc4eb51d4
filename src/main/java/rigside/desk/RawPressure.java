package rigside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.journal.RawReadings;
import rigside.report.PressureTraces;
import rigside.report.PressureWindow;
import rigside.rig.Feed;
import rigside.rig.FeedLines;
import rigside.rig.Signal;
import rigside.runner.Rigs;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/** The pressure over time of a session that is kept, from the raw lines beside its journal. */
final class RawPressure {
    private RawPressure() {}

    /** None where no feed gave the pressure, or its lines are not there. */
    static PressureTraces of(Path folder, State state, List<Recorded> events) {
        Event.SessionOpened opening = state.opening().orElseThrow().event();
        Optional<Feed> gauge = Rigs.instruments(opening).flatMap(all -> all.feed(Signal.PRESSURE));
        List<PressureWindow> windows = PressureWindow.all(state.protocol(), events);
        if (gauge.isEmpty() || windows.isEmpty()) {
            return PressureTraces.NONE;
        }
        FeedLines lines = new FeedLines(gauge.get());
        PressureTraces.Gathering gathering =
                new PressureTraces.Gathering(windows, reopened(events));
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.read(
                    gauge.get().id(),
                    (at, line) ->
                            lines.reading(at, line)
                                    .ifPresent(each -> gathering.reading(each.at(), each.si())));
        }
        return gathering.traces();
    }

    private static List<Long> reopened(List<Recorded> events) {
        return events.stream()
                .filter(each -> each.event() instanceof Event.SessionReopened)
                .map(Recorded::at)
                .toList();
    }
}
