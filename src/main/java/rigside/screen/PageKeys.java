package rigside.screen;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.session.Activity;

/** The keys of a prompt, and of the pages beside the step. */
record PageKeys(View view) {

    List<Key> ofPrompt() {
        Lettered letters = Lettered.of(view);
        List<Key> keys = new ArrayList<>(stop(view));
        keys.add(
                Key.of(
                        Stroke.of(KeyType.Enter),
                        view.typed().isBlank() ? "drop it" : "write it down",
                        Action.GO_ON));
        if (!view.typed().isEmpty()) {
            keys.add(clear());
        }
        keys.add(letters.leave(true));
        return List.copyOf(keys);
    }

    static Key clear() {
        return Key.of(Stroke.ctrl('u'), "clear", Action.CLEAR);
    }

    /** While something is not on disk, only trying again or giving it up makes sense. */
    List<Key> ofUnkept() {
        return List.of(
                Key.of(Stroke.of(KeyType.Enter), "try again", Action.GO_ON),
                Lettered.of(view).leave(true));
    }

    List<Key> ofPage() {
        Lettered letters = Lettered.of(view);
        List<Key> keys = new ArrayList<>(stop(view));
        keys.add(back(letters));
        if (view.page() == View.Page.ENTRIES) {
            keys.addAll(scroll(view, "choose"));
            if (isVoidable()) {
                keys.add(letters.key('v', "strike it out", Action.VOID));
            }
            if (isAmendable()) {
                keys.add(letters.key('a', "amend it", Action.AMEND));
            }
        } else {
            keys.addAll(scroll(view, "scroll"));
        }
        if (view.page() != View.Page.TALLY) {
            keys.add(letters.key('t', "tally", Action.TALLY_PAGE));
        }
        keys.addAll(reasons(view));
        if (view.page() != View.Page.ENTRIES) {
            keys.add(letters.key('e', "entries", Action.ENTRIES_PAGE));
        }
        keys.addAll(sound(view));
        if (view.page() != View.Page.HELP) {
            keys.add(letters.help());
        }
        keys.add(letters.leave(true));
        return List.copyOf(keys);
    }

    /** Enter goes back, and so does the key that led here; Esc where there is nothing to stop. */
    private Key back(Lettered letters) {
        List<Stroke> strokes = new ArrayList<>(List.of(Stroke.of(KeyType.Enter)));
        if (view.state().isFromPaper()) {
            strokes.add(Stroke.of(KeyType.Escape));
        }
        strokes.addAll(
                switch (view.page()) {
                    case STEP, UNKEPT -> List.of();
                    case TALLY -> letters.key('t', "", Action.STEP_PAGE).strokes();
                    case METHOD -> letters.key('w', "", Action.STEP_PAGE).strokes();
                    case FLAGS -> letters.key('f', "", Action.STEP_PAGE).strokes();
                    case ENTRIES -> letters.key('e', "", Action.STEP_PAGE).strokes();
                    case HELP -> letters.help().strokes();
                });
        return new Key("Enter", "back", Action.STEP_PAGE, strokes);
    }

    /** The pages behind the verdicts, where there is anything on them and they are not shown. */
    static List<Key> reasons(View view) {
        Lettered letters = Lettered.of(view);
        List<Key> keys = new ArrayList<>();
        if (MethodPicture.isWorth(view.shown()) && view.page() != View.Page.METHOD) {
            keys.add(letters.key('w', "why", Action.METHOD_PAGE));
        }
        if (FlagsPicture.isWorth(view.shown()) && view.page() != View.Page.FLAGS) {
            keys.add(letters.key('f', "flags", Action.FLAGS_PAGE));
        }
        return List.copyOf(keys);
    }

    /** The volume has keys on the help page only: signs are triggers and text elsewhere. */
    static List<Key> sound(View view) {
        if (view.state().activity() instanceof Activity.Closed) {
            return List.of();
        }
        List<Key> keys = new ArrayList<>();
        keys.add(Lettered.of(view).key('s', "sound", Action.SOUND));
        if (view.page() == View.Page.HELP) {
            keys.add(Key.of(Stroke.of('-'), "", Action.SOFTER));
            keys.add(
                    new Key("+", "volume", Action.LOUDER, List.of(Stroke.of('+'), Stroke.of('='))));
        }
        return List.copyOf(keys);
    }

    /** A donning that is struck out is done again, which a closed session cannot offer. */
    private boolean isVoidable() {
        boolean closed = view.state().course().closed();
        return chosen().filter(row -> row.stands() && (isEntry(row) || !closed)).isPresent();
    }

    private boolean isAmendable() {
        return chosen().filter(row -> row.stands() && isEntry(row)).isPresent();
    }

    private static boolean isEntry(Listing.Row row) {
        return row instanceof Listing.Row.OfEntry;
    }

    private Optional<Listing.Row> chosen() {
        List<Listing.Row> rows = Listing.of(view.state());
        return view.selected() >= 0 && view.selected() < rows.size()
                ? Optional.of(rows.get(view.selected()))
                : Optional.empty();
    }

    /** Only where there is anywhere to go. */
    static List<Key> scroll(View view, String help) {
        if (view.seen().limit() == 0) {
            return List.of();
        }
        return List.of(
                Key.of(Stroke.of(KeyType.ArrowUp), "", Action.UP),
                Key.of(Stroke.of(KeyType.ArrowDown), "", Action.DOWN),
                Key.of(Stroke.of(KeyType.PageUp), "", Action.PAGE_UP),
                Key.of(Stroke.of(KeyType.PageDown), "", Action.PAGE_DOWN),
                Key.of(Stroke.of(KeyType.Home), "", Action.FIRST),
                Key.of(Stroke.of(KeyType.End), help, Action.LAST));
    }

    /** Esc stops at once, whatever is looked at, while there is something to stop. */
    static List<Key> stop(View view) {
        Activity activity = view.state().activity();
        boolean still =
                activity instanceof Activity.Halted
                        || activity instanceof Activity.Closed
                        || view.state().isFromPaper();
        return still
                ? List.of()
                : List.of(Key.of(Stroke.of(KeyType.Escape), "stop at once", Action.STOP));
    }
}
