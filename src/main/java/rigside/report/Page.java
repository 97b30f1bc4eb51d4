package rigside.report;

import java.util.List;

/**
 * Something to read or print, to be written as text or as HTML. Its texts are raw; both ways of
 * writing make them harmless.
 *
 * @param title what stands above everything
 * @param under a line below the title; may be empty
 * @param blocks what follows, in order
 */
public record Page(String title, String under, List<Block> blocks) {
    public Page {
        blocks = List.copyOf(blocks);
    }

    /** Lines of text, none wider than {@code width} columns where words can be broken at all. */
    public List<String> lines(int width) {
        return PlainText.of(this, width);
    }

    /** The same as one text, each line with its end. */
    public String text(int width) {
        return String.join("\n", lines(width)) + "\n";
    }

    /** One HTML file: no script, nothing fetched, for light, dark and paper. */
    public String html() {
        return Html.of(this);
    }
}
