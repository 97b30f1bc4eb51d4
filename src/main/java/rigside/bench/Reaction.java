package rigside.bench;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigside.rig.SoundVolume;
import rigside.screen.Action;
import rigside.screen.AmendingWords;
import rigside.screen.Keys;
import rigside.screen.Listing;
import rigside.screen.Stroke;
import rigside.screen.View;
import rigside.screen.View.Page;
import rigside.screen.View.Prompt;
import rigside.session.Activity;
import rigside.session.Amending;
import rigside.session.Input;

/**
 * What a key leads to.
 *
 * @param ui what is looked at and typed from now on
 * @param input what it says to the session, if anything
 * @param leaves whether the tester wants to leave the session
 */
record Reaction(Ui ui, Optional<Input> input, boolean leaves) {
    /** Nobody types more into one line; a terminal that pastes does. */
    private static final int LONGEST_TYPED = 500;

    private static final Set<Action> REPEATED =
            EnumSet.of(
                    Action.UP,
                    Action.DOWN,
                    Action.PAGE_UP,
                    Action.PAGE_DOWN,
                    Action.LOUDER,
                    Action.SOFTER);

    /** What {@code key} leads to. */
    static Reaction to(Ui ui, View view, KeyStroke key) {
        if (isLeave(key)) {
            return new Reaction(ui.dropped(), Optional.empty(), true);
        }
        Ui quiet = isAmending(ui) ? ui : ui.silent();
        return Keys.action(view, key)
                .map(action -> new Acting(quiet, view).on(action))
                .orElseGet(() -> typed(quiet, view, key));
    }

    /**
     * Whether a key held down does its work again and again: what is typed, and what moves or
     * changes the volume. Enter never does: it may move now and confirm next.
     */
    static boolean repeats(View view, KeyStroke key) {
        return key.getKeyType() != KeyType.Enter
                && Keys.action(view, key).map(REPEATED::contains).orElse(true);
    }

    /** The end of input, and the key that ends any program. */
    private static boolean isLeave(KeyStroke key) {
        return key.getKeyType() == KeyType.EOF || Stroke.of(key).equals(Stroke.ctrl('c'));
    }

    /** What stands there is read until the question is answered. */
    private static boolean isAmending(Ui ui) {
        return ui.prompt()
                .filter(asked -> asked == Prompt.AMEND_VALUE || asked == Prompt.AMEND_REASON)
                .isPresent();
    }

    private static Reaction typed(Ui ui, View view, KeyStroke key) {
        if (!view.isTyping() || view.seen().rows() == 0) {
            return only(ui);
        }
        String text = ui.typed();
        if (key.getKeyType() == KeyType.Backspace) {
            return only(ui.typing(text.substring(0, lastBegin(text))));
        }
        boolean takes = Stroke.of(key).types() && !key.isAltDown() && text.length() < LONGEST_TYPED;
        return only(takes ? ui.typing(text + key.getCharacter()) : ui);
    }

    /** Where the last character begins: some take two units. */
    private static int lastBegin(String text) {
        return text.isEmpty() ? 0 : text.offsetByCodePoints(text.length(), -1);
    }

    private static Reaction only(Ui ui) {
        return new Reaction(ui, Optional.empty(), false);
    }

    private static Reaction saying(Ui ui, Input input) {
        return new Reaction(ui, Optional.of(input), false);
    }

    private record Acting(Ui ui, View view) {
        Reaction on(Action action) {
            return switch (action) {
                case GO_ON -> goOn();
                case TRIGGER -> saying(ui, new Input.TriggerPressed());
                case YES -> saying(ui, new Input.Answered(true));
                case NO -> no();
                case STOP -> saying(ui.dropped().at(Page.STEP), new Input.HaltPressed());
                case UNDO -> saying(ui, new Input.UndoAsked());
                case CLEAR -> only(ui.typing(""));
                case NOTE -> only(ui.asking(Prompt.NOTE, 0));
                case LEAVE_OUT ->
                        only(
                                ui.asking(
                                        view.state().isAtGate()
                                                ? Prompt.GATE_REASON
                                                : Prompt.LEAVE_OUT_REASON,
                                        0));
                case RETAKE -> retake();
                case ABANDON -> only(ui.asking(Prompt.ABANDON_REASON, 0));
                case END -> only(ui.asking(Prompt.END_REASON, 0));
                case MORE -> saying(ui, new Input.MoreAsked());
                case STEP_PAGE -> only(ui.at(Page.STEP));
                case TALLY_PAGE -> only(ui.at(Page.TALLY));
                case METHOD_PAGE -> only(ui.at(Page.METHOD));
                case FLAGS_PAGE -> only(ui.at(Page.FLAGS));
                case ENTRIES_PAGE -> only(ui.at(Page.ENTRIES));
                case HELP_PAGE -> only(ui.at(Page.HELP));
                case UP -> only(ui.selecting(Math.max(0, ui.selected() - 1)));
                case DOWN -> only(ui.selecting(ui.selected() + 1));
                case PAGE_UP -> only(ui.selecting(Math.max(0, ui.selected() - view.seen().page())));
                case PAGE_DOWN -> only(ui.selecting(pageDown()));
                case FIRST -> only(ui.selecting(0));
                case LAST -> only(ui.selecting(view.seen().limit()));
                case VOID -> strike();
                case AMEND -> amend();
                case SOUND -> at(ui.volume().toggled());
                case LOUDER -> at(ui.volume().louder());
                case SOFTER -> at(ui.volume().softer());
                case LEAVE -> new Reaction(ui.dropped(), Optional.empty(), true);
            };
        }

        /**
         * One slip of a finger must not end a donning: what was seen is asked first, and Enter
         * alone takes it back.
         */
        private Reaction no() {
            boolean ends =
                    view.state().activity() instanceof Activity.Checking checking
                            && view.state().endsDonning(checking);
            return ends
                    ? only(ui.asking(Prompt.CHECK_FAILED, 0))
                    : saying(ui, new Input.Answered(false));
        }

        /** What gave no value is read again without a question. */
        private Reaction retake() {
            return view.state().rereadable().isPresent()
                    ? saying(ui.typing(""), new Input.RetakeAsked(""))
                    : only(ui.asking(Prompt.RETAKE_REASON, 0));
        }

        private Reaction at(SoundVolume volume) {
            String words =
                    volume.muted()
                            ? "sound off"
                            : "sound on, volume " + volume.level() + " of " + SoundVolume.LOUDEST;
            return only(ui.at(volume).saying(words));
        }

        private int pageDown() {
            return Math.min(view.seen().limit(), ui.selected() + view.seen().page());
        }

        /** Enter finishes a line where one is typed. */
        private Reaction goOn() {
            if (view.page() == Page.UNKEPT) {
                return saying(ui, new Input.GoOnPressed());
            }
            if (ui.prompt().isPresent()) {
                if (ui.typed().isBlank()) {
                    return only(ui.silent().dropped());
                }
                return ui.prompt().get() == Prompt.AMEND_VALUE
                        ? only(amended())
                        : saying(ui, answer(ui.prompt().get()));
            }
            return view.state().activity() instanceof Activity.Filling
                    ? saying(ui, new Input.Typed(ui.typed()))
                    : saying(ui, new Input.GoOnPressed());
        }

        private Input answer(Prompt prompt) {
            String text = ui.typed();
            return switch (prompt) {
                case NOTE -> new Input.NoteTyped(text);
                case VOID_REASON -> new Input.VoidAsked(ui.target(), text);
                case STRIKE_REASON -> new Input.StrikeAsked(ui.target(), text);
                case AMEND_VALUE, AMEND_REASON ->
                        new Input.AmendAsked(ui.target(), ui.kept(), text, true);
                case LEAVE_OUT_REASON, GATE_REASON -> new Input.LeaveOutAsked(text);
                case RETAKE_REASON -> new Input.RetakeAsked(text);
                case CHECK_FAILED -> new Input.CheckFailed(text);
                case ABANDON_REASON -> new Input.AbandonAsked(text);
                case END_REASON -> new Input.EndAsked(text);
            };
        }

        /** The value is checked before anybody thinks of a reason. */
        private Ui amended() {
            Amending.Meaning meaning = Amending.meaning(view.state(), ui.target(), ui.typed());
            return meaning instanceof Amending.Meaning.Refused no
                    ? ui.saying(no.why())
                    : ui.asksWhy().saying(AmendingWords.then(ui.target(), meaning));
        }

        private Reaction amend() {
            List<Listing.Row> rows = Listing.of(view.state());
            return ui.selected() < rows.size()
                            && rows.get(ui.selected()) instanceof Listing.Row.OfEntry line
                    ? only(
                            ui.asking(Prompt.AMEND_VALUE, line.entry().number())
                                    .saying(AmendingWords.now(view, line.entry())))
                    : only(ui);
        }

        private Reaction strike() {
            List<Listing.Row> rows = Listing.of(view.state());
            if (ui.selected() >= rows.size()) {
                return only(ui);
            }
            Listing.Row row = rows.get(ui.selected());
            if (row instanceof Listing.Row.OfDonning line) {
                return only(ui.asking(Prompt.STRIKE_REASON, line.donning().number()));
            }
            return row instanceof Listing.Row.OfEntry line
                    ? only(ui.asking(Prompt.VOID_REASON, line.entry().number()))
                    : only(ui);
        }
    }
}
