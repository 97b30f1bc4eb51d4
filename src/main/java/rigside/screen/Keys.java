package rigside.screen;

import com.googlecode.lanterna.input.KeyStroke;
import java.util.List;
import java.util.Optional;

/**
 * The keys of a session: one table for what the bottom line says and what a key does.
 *
 * <p>With a prompt open, {@link Action#GO_ON} finishes its line; with nothing typed it drops the
 * prompt. {@link Action#STOP} drops the prompt too, and shows the step. On any other page than the
 * step, {@link Action#STEP_PAGE} goes back to it.
 */
public final class Keys {
    private Keys() {}

    /** Every key live now, in the order of the bottom line. */
    public static List<Key> of(View view) {
        if (view.seen().isNothing()) {
            return TooSmall.keys(view);
        }
        PageKeys ofPage = new PageKeys(view);
        if (view.page() == View.Page.UNKEPT) {
            return ofPage.ofUnkept();
        }
        if (view.prompt().isPresent()) {
            return ofPage.ofPrompt();
        }
        return view.page() == View.Page.STEP ? StepKeys.of(view) : ofPage.ofPage();
    }

    /** What a press does now; empty when it does nothing, or types a character. */
    public static Optional<Action> action(View view, KeyStroke pressed) {
        if (pressed.isAltDown()) {
            return Optional.empty();
        }
        Stroke stroke = Stroke.of(pressed);
        return of(view).stream().filter(key -> key.matches(stroke)).map(Key::action).findFirst();
    }
}
