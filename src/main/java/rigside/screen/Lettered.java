package rigside.screen;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;

/**
 * Keys named by a letter: the letter itself where nothing is typed, else Ctrl with it, which is
 * always accepted.
 *
 * @param typing whether plain characters are text now
 */
record Lettered(boolean typing) {

    static Lettered of(View view) {
        return new Lettered(view.isTyping());
    }

    /**
     * A key named by a letter.
     *
     * @param letter none of h, i, j, m: with Ctrl a terminal sends them as Backspace, Tab and Enter
     */
    Key key(char letter, String help, Action action) {
        return typing
                ? Key.of(Stroke.ctrl(letter), help, action)
                : new Key(
                        String.valueOf(letter),
                        help,
                        action,
                        List.of(Stroke.of(letter), Stroke.ctrl(letter)));
    }

    /** Leaving is always possible: by Ctrl-C too, which no line needs to explain. */
    Key leave(boolean byLetter) {
        List<Stroke> strokes = new ArrayList<>(List.of(Stroke.ctrl('q'), Stroke.ctrl('c')));
        if (byLetter && !typing) {
            strokes.add(Stroke.of('q'));
        }
        return new Key(byLetter && !typing ? "q" : "Ctrl-Q", "leave", Action.LEAVE, strokes);
    }

    Key help() {
        Stroke f1 = Stroke.of(KeyType.F1);
        return new Key(
                f1.label(),
                "help",
                Action.HELP_PAGE,
                typing ? List.of(f1) : List.of(f1, Stroke.of('?')));
    }
}
