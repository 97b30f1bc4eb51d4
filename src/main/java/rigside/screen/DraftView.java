package rigside.screen;

import java.util.List;

/**
 * All that a picture of a draft depends on, besides its size.
 *
 * @param mode what is looked at
 * @param notice how far it is, in a word or two
 * @param ask the question, or what the page is
 * @param why what hangs on the answer, or what is read; see {@link Paragraphs}
 * @param options what can be chosen; empty where a line is typed
 * @param chosen the position of the option the cursor is on, or the first line shown of what is
 *     read
 * @param typed the line typed so far
 * @param usual what Enter takes with nothing typed; may be empty
 * @param answered the answers so far, one line each, the last one last
 * @param message why an answer was not taken, or what is worked at; may be empty
 * @param offered whether Up and Down bring answers from the sessions on record into the line
 * @param style what the terminal can show
 */
public record DraftView(
        Mode mode,
        String notice,
        String ask,
        List<String> why,
        List<Option> options,
        int chosen,
        String typed,
        String usual,
        List<String> answered,
        String message,
        boolean offered,
        View.Style style) {
    public DraftView {
        why = List.copyOf(why);
        options = List.copyOf(options);
        answered = List.copyOf(answered);
    }

    /** What is looked at. */
    public enum Mode {
        /** A line is typed. */
        LINE,
        /** One of some is chosen. */
        ONE,
        /** Some are ticked. */
        SEVERAL,
        /** What the choices bring is worked out; nothing can be saved before it is seen. */
        WORKING,
        /** What the choices bring is read. */
        RESULT,
        /** Whether to leave with nothing written is asked. */
        LEAVING
    }

    /**
     * What can be chosen.
     *
     * @param label what it means
     * @param ticked whether it is ticked; false where only one is chosen
     */
    public record Option(String label, boolean ticked) {}
}
