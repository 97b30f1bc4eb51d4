package rigside.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Something to read or print, to be written as text, as HTML or as Markdown. Its texts are raw; all
 * ways of writing make them harmless.
 *
 * @param title what stands above everything
 * @param under a line below the title; may be empty
 * @param blocks what follows, in order
 * @param isLong whether a list of its parts stands at its head where one can jump to them
 */
public record Page(String title, String under, List<Block> blocks, boolean isLong) {
    /** One that is read from its head to its end. */
    public Page(String title, String under, List<Block> blocks) {
        this(title, under, blocks, false);
    }

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

    /** The same as CommonMark with tables as GitHub writes them. */
    public String markdown() {
        return Markdown.of(this, Optional.empty());
    }

    /**
     * The same showing its figures, each the SVG file of its name.
     *
     * @param pictures the folder of the figures, seen from the folder of the Markdown file
     */
    public String markdown(Path pictures) {
        return Markdown.of(this, Optional.of(pictures));
    }
}
