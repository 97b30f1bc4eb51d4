package rigside.screen;

import java.util.List;

/**
 * What is seen of a file that is being written in an editor.
 *
 * @param name the file's name
 * @param problems all that is wrong with it as last saved; one paragraph each
 * @param kept whether {@code lines} are of an earlier version, kept while the file is broken
 * @param lines what is made of the last good version; empty before there was one
 * @param sheet what that version says, drawn as it stands
 * @param doing what is still worked at, in words; may be empty
 * @param first the first line shown
 * @param style what the terminal can show
 */
public record WatchView(
        String name,
        List<String> problems,
        boolean kept,
        List<String> lines,
        List<String> sheet,
        String doing,
        int first,
        View.Style style) {
    public WatchView {
        problems = List.copyOf(problems);
        lines = List.copyOf(lines);
        sheet = List.copyOf(sheet);
    }
}
