package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;

/** What is shown instead of a picture that has no room. */
final class TooSmall {
    private TooSmall() {}

    /** The smallest terminal every picture fits into. */
    static final TerminalSize SMALLEST = new TerminalSize(60, 18);

    /** Nothing is seen, and so nothing has been read. */
    static final View.Seen SEEN = new View.Seen(0, 0, false);

    static boolean is(TerminalSize size) {
        return size.getColumns() < SMALLEST.getColumns() || size.getRows() < SMALLEST.getRows();
    }

    static List<Line> lines(TerminalSize size) {
        String words =
                "This terminal has "
                        + words(size)
                        + ". Rigside needs "
                        + words(SMALLEST)
                        + ": make the window larger or the letters smaller."
                        + " Nothing is lost meanwhile, and every key still works.";
        List<Line> lines = new ArrayList<>();
        lines.addAll(Wrap.lines(Tone.STRONG, "Too small to show", size.getColumns()));
        lines.addAll(Wrap.lines(words, size.getColumns()));
        return List.copyOf(lines);
    }

    private static String words(TerminalSize size) {
        return size.getColumns() + " columns and " + size.getRows() + " rows";
    }
}
