package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.screen.SessionScreen;
import rigside.screen.View;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Input;
import rigside.session.Recorded;
import rigside.session.Respond;
import rigside.session.Response;
import rigside.session.State;
import rigside.session.Twins;

/** One key stops everything, wherever the session stands and whatever is looked at or typed. */
class StopFromEverywhereTest {
    private static final KeyStroke STOP = new KeyStroke(KeyType.Escape);

    /** All but the page of what is not on disk, from which nothing else can be done. */
    private static final Set<View.Page> PAGES = EnumSet.complementOf(EnumSet.of(View.Page.UNKEPT));

    private static boolean isRunning(State state) {
        return state.opening().isPresent()
                && !(state.activity() instanceof Activity.Halted)
                && !(state.activity() instanceof Activity.Closed);
    }

    @Test
    void oneKeyStopsEverythingAndEnterGoesOn() {
        List<Recorded> journal = Twins.inTimes().first();
        Set<String> met = new TreeSet<>();
        for (int count : Twins.inTimes().moments(StopFromEverywhereTest::isRunning)) {
            State state = Twins.after(journal, count);
            long now = journal.get(count - 1).at() + 1_000_000;
            met.add(state.activity().getClass().getSimpleName());
            for (Ui ui : looks()) {
                stops(state, now, ui);
            }
        }
        assertTrue(met.size() >= 14, met::toString);
    }

    private static List<Ui> looks() {
        List<Ui> all = new ArrayList<>();
        PAGES.forEach(page -> all.add(Ui.START.at(page)));
        for (View.Prompt prompt : View.Prompt.values()) {
            all.add(Ui.START.asking(prompt, 1).typing("half a sen"));
        }
        return all;
    }

    private static void stops(State state, long now, Ui ui) {
        Shown shown = Shown.of(state, Analysis.of(state));
        View plain = ui.view(state, shown, now, new View.Style(View.Colours.NONE, false));
        View view = plain.with(SessionScreen.seen(plain, new TerminalSize(80, 24)));
        Reaction reaction = Reaction.to(ui, view, STOP);
        assertEquals(Optional.of(new Input.HaltPressed()), reaction.input(), ui::toString);
        assertEquals(View.Page.STEP, reaction.ui().page());
        assertFalse(reaction.ui().prompt().isPresent());
        State halted = after(state, reaction.input().get(), now);
        assertInstanceOf(Activity.Halted.class, halted.activity());
        State on = after(halted, new Input.GoOnPressed(), now + 1);
        assertFalse(on.activity() instanceof Activity.Halted);
        assertFalse(on.activity() instanceof Activity.Pulling);
    }

    private static State after(State state, Input input, long now) {
        State after = state;
        Response response = Respond.to(state, input, now);
        for (Event event : assertInstanceOf(Response.Happened.class, response).events()) {
            after = Evolve.step(after, event, now);
        }
        return after;
    }
}
