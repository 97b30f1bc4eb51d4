package rigside.bench;

import java.util.List;
import java.util.Optional;
import rigside.analysis.Shown;
import rigside.rig.SoundVolume;
import rigside.screen.View;
import rigside.screen.View.Page;
import rigside.screen.View.Prompt;
import rigside.session.Event;
import rigside.session.State;

/**
 * What the tester is looking at and typing; nothing of it is worth keeping.
 *
 * @param page what is looked at
 * @param selected the selected line, or the first one shown, from 0
 * @param prompt the question asked on the bottom lines, if any
 * @param target the entry or donning the prompt is about; 0 when it is about neither
 * @param typed the text typed so far
 * @param message the last refusal or confirmation, if any
 * @param volume how loud cues are
 * @param kept what was typed at the question before, where two belong together
 */
record Ui(
        Page page,
        int selected,
        Optional<Prompt> prompt,
        int target,
        String typed,
        Optional<String> message,
        SoundVolume volume,
        String kept) {

    /** At the step, with nothing typed. */
    static final Ui START =
            new Ui(Page.STEP, 0, Optional.empty(), 0, "", Optional.empty(), SoundVolume.USUAL, "");

    /** All that a picture depends on. */
    View view(State state, Shown shown, long now, View.Style style) {
        return new View(state, shown, now, page, selected, prompt, typed, message, style);
    }

    Ui at(Page next) {
        return new Ui(next, 0, prompt, target, typed, message, volume, kept);
    }

    Ui selecting(int line) {
        return new Ui(page, line, prompt, target, typed, message, volume, kept);
    }

    Ui asking(Prompt question, int about) {
        return new Ui(
                page, selected, Optional.of(question), about, "", Optional.empty(), volume, "");
    }

    /** The value typed is kept, and why is asked next. */
    Ui asksWhy() {
        return new Ui(
                page,
                selected,
                Optional.of(Prompt.AMEND_REASON),
                target,
                "",
                Optional.empty(),
                volume,
                typed);
    }

    /** Without the prompt and what was typed. */
    Ui dropped() {
        return new Ui(page, selected, Optional.empty(), 0, "", message, volume, "");
    }

    Ui typing(String text) {
        return new Ui(page, selected, prompt, target, text, message, volume, kept);
    }

    Ui saying(String words) {
        return new Ui(page, selected, prompt, target, typed, Optional.of(words), volume, kept);
    }

    Ui silent() {
        return new Ui(page, selected, prompt, target, typed, Optional.empty(), volume, kept);
    }

    Ui at(SoundVolume loud) {
        return new Ui(page, selected, prompt, target, typed, message, loud, kept);
    }

    /**
     * After the tester's own input led to events.
     *
     * @param state where the session stands now
     */
    Ui taken(State state, List<Event> events) {
        Ui next = dropped();
        Ui seen = page == Page.STEP && !events.isEmpty() ? next.selecting(0) : next;
        return Confirmation.of(state, events).map(seen::saying).orElse(seen);
    }

    /** After time led to events: a prompt that is being answered stays. */
    Ui noticed(State state, List<Event> events) {
        if (!events.isEmpty() && events.stream().allMatch(Ui::isAboutFeeds)) {
            return Confirmation.of(state, events).map(this::saying).orElse(this);
        }
        if (events.isEmpty()) {
            return this;
        }
        return prompt.isPresent() ? this : taken(state, events);
    }

    /** What an instrument does is said at once, and takes nothing away that is being typed. */
    private static boolean isAboutFeeds(Event event) {
        return event instanceof Event.FeedFailed || event instanceof Event.FeedBack;
    }
}
