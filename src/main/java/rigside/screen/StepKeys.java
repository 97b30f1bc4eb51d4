package rigside.screen;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import rigside.session.Activity;

/**
 * The keys of a step: to stop at once, then what the step itself takes, then what can be done
 * beside it.
 */
record StepKeys(View view) implements Activity.Cases<List<Key>> {

    static List<Key> of(View view) {
        StepKeys keys = new StepKeys(view);
        Activity activity = view.state().activity();
        List<Key> all = new ArrayList<>(PageKeys.stop(view));
        all.addAll(activity.match(keys));
        if (scrolls(activity)) {
            all.addAll(PageKeys.scroll(view, "scroll"));
        }
        all.addAll(isTimed(activity) ? keys.whileTimed() : keys.beside(activity));
        return List.copyOf(all);
    }

    /** A lead-in or a pull: a stray letter must not end it. */
    static boolean isTimed(Activity activity) {
        return activity instanceof Activity.LeadIn || activity instanceof Activity.Pulling;
    }

    /** Whether the step may be longer than the window, and so scrolls. */
    static boolean scrolls(Activity activity) {
        return activity instanceof Activity.Cautions
                || activity instanceof Activity.Reading
                || activity instanceof Activity.Recommended
                || activity instanceof Activity.Closing
                || activity instanceof Activity.Closed;
    }

    /** Whether the step shows what was found. */
    static boolean isVerdict(Activity activity) {
        return activity instanceof Activity.Recommended
                || activity instanceof Activity.Closing
                || activity instanceof Activity.Closed;
    }

    private List<Key> whileTimed() {
        return List.of(letters().leave(false));
    }

    private List<Key> beside(Activity activity) {
        Lettered letters = letters();
        List<Key> keys = new ArrayList<>();
        boolean closed = activity instanceof Activity.Closed;
        if (view.isTyping() && !view.typed().isEmpty()) {
            keys.add(PageKeys.clear());
        } else if (view.state().isUndoable()) {
            keys.add(letters.key('u', "undo", Action.UNDO));
        }
        if (view.state().course().open().isPresent()) {
            keys.add(letters.key('a', abandonWords(activity), Action.ABANDON));
        }
        if (!closed) {
            keys.add(letters.key('o', "note", Action.NOTE));
        }
        keys.add(letters.key('t', "tally", Action.TALLY_PAGE));
        if (isVerdict(activity)) {
            keys.addAll(PageKeys.reasons(view));
        }
        keys.add(letters.key('e', "entries", Action.ENTRIES_PAGE));
        keys.addAll(PageKeys.sound(view));
        keys.add(letters.help());
        keys.add(letters.leave(true));
        return List.copyOf(keys);
    }

    private static String abandonWords(Activity activity) {
        return activity instanceof Activity.Halted ? "the mask came off" : "abandon donning";
    }

    @Override
    public List<Key> cautions(Activity.Cautions activity) {
        return List.of(
                view.seen().end()
                        ? enter("read and understood")
                        : Key.of(Stroke.of(KeyType.Enter), "read on", Action.PAGE_DOWN));
    }

    @Override
    public List<Key> nextDonning(Activity.NextDonning activity) {
        return List.of(
                enter("begin this donning"), letters().key('d', "no further donnings", Action.END));
    }

    @Override
    public List<Key> checking(Activity.Checking activity) {
        Key yes = letters().key('y', "", Action.YES);
        List<Stroke> strokes = new ArrayList<>(List.of(Stroke.of(KeyType.Enter)));
        strokes.addAll(yes.strokes());
        List<Key> keys = new ArrayList<>();
        keys.add(new Key("Enter or y", "it is so", Action.YES, strokes));
        keys.add(letters().key('n', "it is not so", Action.NO));
        if (view.state().isPassable(activity)) {
            keys.add(leaveOut());
        }
        return List.copyOf(keys);
    }

    @Override
    public List<Key> filling(Activity.Filling activity) {
        List<Key> keys = new ArrayList<>();
        keys.add(enter("take it"));
        keys.add(leaveOut());
        keys.addAll(retake());
        return List.copyOf(keys);
    }

    private List<Key> retake() {
        if (view.state().rereadable().isPresent()) {
            return List.of(letters().key('r', "read again", Action.RETAKE));
        }
        return view.state()
                .retakeable()
                .map(place -> "exercise " + view.state().course().progress(place) + " again")
                .map(words -> List.of(letters().key('r', words, Action.RETAKE)))
                .orElse(List.of());
    }

    @Override
    public List<Key> waiting(Activity.Waiting activity) {
        if (view.state().isFromPaper()) {
            return List.of(enter("it was done"));
        }
        return activity.startedAt().isEmpty() ? triggerOrEnter("start the clock") : List.of();
    }

    @Override
    public List<Key> exercising(Activity.Exercising activity) {
        if (activity.startedAt().isPresent()) {
            return List.of();
        }
        List<Key> keys =
                new ArrayList<>(
                        view.state().isFromPaper()
                                ? List.of(enter("it was done"))
                                : triggerOrEnter("start the exercise"));
        keys.add(leaveOut());
        keys.addAll(retake());
        return List.copyOf(keys);
    }

    @Override
    public List<Key> trialReady(Activity.TrialReady activity) {
        List<Key> keys = new ArrayList<>(triggerOrEnter("start the lead-in"));
        keys.add(leaveOut());
        return List.copyOf(keys);
    }

    @Override
    public List<Key> leadIn(Activity.LeadIn activity) {
        return List.of(trigger("I begin to pull"));
    }

    @Override
    public List<Key> pulling(Activity.Pulling activity) {
        return List.of(trigger("my lungs are full"));
    }

    @Override
    public List<Key> tracing(Activity.Tracing activity) {
        return List.of();
    }

    @Override
    public List<Key> holdAsked(Activity.HoldAsked activity) {
        return yesOrNo("it was held", "it was not");
    }

    @Override
    public List<Key> voidAsked(Activity.VoidAsked activity) {
        return yesOrNo("strike it out", "keep it");
    }

    @Override
    public List<Key> doubting(Activity.Doubting activity) {
        return yesOrNo("it is right", "type it again");
    }

    @Override
    public List<Key> resting(Activity.Resting activity) {
        return List.of(letters().key('l', "leave the next out", Action.LEAVE_OUT));
    }

    @Override
    public List<Key> reading(Activity.Reading activity) {
        return List.of(enter("go on"));
    }

    @Override
    public List<Key> gating(Activity.Gating activity) {
        return activity.startedAt().isPresent()
                ? List.of()
                : List.of(trigger(""), enter("start reading"), leaveOut());
    }

    @Override
    public List<Key> gateMissed(Activity.GateMissed activity) {
        return List.of(
                enter(view.state().isFromPaper() ? "type it again" : "read it again"), leaveOut());
    }

    @Override
    public List<Key> donningDone(Activity.DonningDone activity) {
        return List.of(enter("complete this donning"));
    }

    @Override
    public List<Key> recommended(Activity.Recommended activity) {
        List<Key> keys = new ArrayList<>(List.of(enter("end the donnings")));
        if (activity.mayGoOn()) {
            // Not with Ctrl: a terminal sends Ctrl-M as Enter.
            keys.add(Key.of(Stroke.of('m'), "more rounds", Action.MORE));
        }
        return keys;
    }

    @Override
    public List<Key> halted(Activity.Halted activity) {
        boolean worn = view.state().course().open().isPresent();
        return List.of(enter(worn ? "go on, the mask stayed on" : "go on"));
    }

    @Override
    public List<Key> closing(Activity.Closing activity) {
        return List.of(enter("close the session"));
    }

    @Override
    public List<Key> closed(Activity.Closed activity) {
        return List.of(Key.of(Stroke.of(KeyType.Enter), "home", Action.LEAVE));
    }

    private static Key enter(String help) {
        return Key.of(Stroke.of(KeyType.Enter), help, Action.GO_ON);
    }

    private Key trigger(String help) {
        return Key.of(view.style().trigger(), help, Action.TRIGGER);
    }

    /** A foot switch may send Enter itself. */
    private List<Key> triggerOrEnter(String help) {
        Key enter = enter(help);
        return enter.matches(view.style().trigger()) ? List.of(enter) : List.of(trigger(""), enter);
    }

    private Key leaveOut() {
        String help = view.state().isAtGate() ? "go on all the same" : "leave out";
        return letters().key('l', help, Action.LEAVE_OUT);
    }

    private List<Key> yesOrNo(String yes, String no) {
        return List.of(letters().key('y', yes, Action.YES), letters().key('n', no, Action.NO));
    }

    private Lettered letters() {
        return Lettered.of(view);
    }
}
