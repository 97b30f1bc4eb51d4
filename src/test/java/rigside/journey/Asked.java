package rigside.journey;

import java.util.List;
import java.util.Optional;

/**
 * What the program asks the tester to do, told by its picture.
 *
 * @param words on the screen
 * @param typed typed first
 * @param key pressed then, by tmux's name for it
 */
record Asked(String words, String typed, String key) {

    /** Questions of the demonstration come first: the bottom line is the same for all of them. */
    private static final List<Asked> ALL =
            List.of(
                    new Asked("Wearer code", "W1", "Enter"),
                    new Asked("Mask size", "medium", "Enter"),
                    new Asked("Room temperature", "21,5", "Enter"),
                    new Asked("Vital capacity", "", "Enter"),
                    new Asked("unbearable", "7", "Enter"),
                    new Asked("Anything seen or felt", "", "Enter"),
                    new Asked("Enter] read on", "", "Enter"),
                    new Asked("read and understood", "", "Enter"),
                    new Asked("it is so", "", "Enter"),
                    new Asked("begin this donning", "", "Enter"),
                    new Asked("start the clock", "", "Enter"),
                    new Asked("start the exercise", "", "Enter"),
                    new Asked("start reading", "", "Enter"),
                    new Asked("start the lead-in", "", "Space"),
                    new Asked("I begin to pull", "", "Space"),
                    new Asked("it was held", "", "y"),
                    new Asked("complete this donning", "", "Enter"),
                    new Asked("end the donnings", "", "Enter"),
                    new Asked("Enter] go on", "", "Enter"));

    /** What a picture asks for; empty while something runs by itself. */
    static Optional<Asked> by(String picture) {
        return ALL.stream().filter(asked -> picture.contains(asked.words())).findFirst();
    }

    /**
     * A question goes when its answer is taken; until then the picture changes with each letter.
     */
    void doneOn(Journey journey) {
        if (!typed.isEmpty()) {
            journey.type(typed);
        }
        journey.press(key);
        if (!typed.isEmpty()) {
            journey.seesNo(words);
        }
    }
}
