package rigside.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.screen.HomeView;
import rigside.screen.HomeView.Review;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/** A session read through, with what is still concealed left out. */
final class Reviews {
    private Reviews() {}

    static Review of(Path folder) {
        Reading reading = JournalReader.read(folder);
        List<String> trouble = new ArrayList<>(Reports.trouble(reading));
        State state = reading.state();
        if (state.opening().isEmpty()) {
            trouble.add("nothing of this session can be read");
            return new Review(folder.getFileName().toString(), trouble);
        }
        Analysis analysis = Analysis.of(state, reading.isReadOnly());
        return of(state, reading.events(), analysis, trouble, true);
    }

    /**
     * A session that is kept nowhere, opened.
     *
     * @param trouble what there is to say of it first
     */
    static Review of(State state, List<Recorded> events, List<String> trouble) {
        return of(state, events, Analysis.of(state), trouble, false);
    }

    private static Review of(
            State state,
            List<Recorded> events,
            Analysis analysis,
            List<String> trouble,
            boolean kept) {
        Shown shown = Shown.of(state, analysis);
        Event.SessionOpened opened = state.opening().orElseThrow().event();
        return new Review(
                state.protocol().title(),
                trouble,
                Optional.of(new HomeView.Read(state, shown, kept)),
                new ReviewLines(state, shown, events).all(),
                opened.simulated(),
                opened.speed());
    }
}
