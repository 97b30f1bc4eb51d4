package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/** The keys and the words, on every screen. */
final class HelpPicture {
    private HelpPicture() {}

    private static final int NAMES = 14;

    private static final List<String> WORDS =
            List.of(
                    "donning|putting the mask on once, and all that is done until it comes off",
                    "round|one donning of each condition, in the order drawn for it",
                    "trial|one timed inhalation at a held pressure",
                    "entry|one captured value; a struck-out one is kept, and left out",
                    "band|the changes too small to matter, from the protocol: [ ... ]",
                    "interval|where the true change lies, valid however often one looks",
                    "look|a complete round enters the analysis",
                    "verdict|what the interval says against the band",
                    "spread|standard deviation; x1.20 is a factor, where ratios are compared",
                    "CV|coefficient of variation, the spread as a share of the mean");

    static List<Line> session(Scene scene) {
        String trigger = scene.view().style().trigger().label();
        List<String> keys = new ArrayList<>(List.of("Enter|go on, or take what is typed"));
        keys.addAll(
                scene.state().isFromPaper()
                        ? List.of("Esc|back from a page such as this one")
                        : List.of(
                                trigger + "|the trigger: starts and stops timing",
                                "Esc|stop at once, everything stands still; works in every step"));
        keys.addAll(
                List.of(
                        "y  n|answer yes or no",
                        "u|undo the last entry of this donning, or the last answer at a check that"
                                + " goes on either way; what is undone is kept",
                        "Ctrl-U|clear what is typed; with nothing typed it is undo",
                        "l|leave out what is asked, with a reason",
                        "a|abandon the donning, with a reason: the mask came off or moved",
                        "o|write a note",
                        "t|the tally: what was found, the numbers, how the interval moved",
                        "w  f|why: the method behind it; flags: what is worth a second look",
                        "e|the entries, where v strikes one out",
                        "d|done: no further donnings, with a reason",
                        "m|more rounds although enough is known",
                        "s|sound off or on; on this page - and + make it softer and louder",
                        "q, Ctrl-C|leave; the session is resumed where it stood",
                        "Ctrl-letter|the same as the letter, also while text is typed"));
        return pages(scene.columns(), keys);
    }

    static List<Line> home(int columns) {
        return pages(
                columns,
                List.of(
                        "Up  Down|choose a protocol to start from, or a session",
                        "Tab|from the protocols to the sessions and back",
                        "/|searches the sessions for words that all have to be found",
                        "Enter|start a session, go on with one, review one, or see the problems",
                        "v|review a session, or read about a protocol",
                        "o|the outline of a protocol: all of it on one page, step by step",
                        "c|check: what to think over in it, and what its plan can settle",
                        "t|rehearse it: a whole session in seconds, every value invented",
                        "y|copy one that is shipped into your own folder, to change it there",
                        "w  f|in a review: why, the method; flags, what is worth a second look",
                        "r|in a review: writes the report into the session's folder",
                        "d|draft a protocol of your own by answering questions",
                        "r|what answers for the instruments: your typing, or a simulated rig",
                        "s|how fast the simulated rig's clock runs",
                        "q, Ctrl-C|leave"));
    }

    private static List<Line> pages(int columns, List<String> keys) {
        List<Line> lines = new ArrayList<>();
        lines.add(
                Line.of(Tone.STRONG, "Keys").plus("   the bottom line shows those that work now"));
        keys.forEach(key -> lines.addAll(item(key, columns)));
        lines.add(Line.BLANK);
        lines.add(Line.of(Tone.STRONG, "Words"));
        WORDS.forEach(word -> lines.addAll(item(word, columns)));
        lines.add(Line.BLANK);
        lines.addAll(
                Wrap.lines(
                        Tone.WARN,
                        "A comparison by and for one wearer; not a certified or occupational fit"
                                + " test. Dizzy or unwell: stop at once.",
                        columns));
        return List.copyOf(lines);
    }

    /** A name and what it is, written "name|what". */
    private static List<Line> item(String item, int columns) {
        int bar = item.indexOf('|');
        Line name = Line.of(Tone.STRONG, "  " + item.substring(0, bar)).padded(NAMES, Tone.PLAIN);
        return Wrap.hanging(name, Tone.PLAIN, item.substring(bar + 1), columns);
    }
}
