package rigside.report;

import java.util.regex.Pattern;

/**
 * A picture of numbers, to be put on a page or published by itself. Its texts are raw; all who
 * write it make them harmless.
 *
 * @param name safe as a file's name and as an id within one page: {@code seal-values}
 * @param title what it shows, in a few words
 * @param description all of it in sentences, with the numbers, for who cannot see it
 * @param narrow drawn for a phone, {@link Drawing#NARROW} wide
 * @param wide the same drawn for a desk and for publishing, {@link Drawing#WIDE} wide
 */
public record Figure(String name, String title, String description, Drawing narrow, Drawing wide) {
    private static final Pattern SAFE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /**
     * @throws IllegalArgumentException if the name could not be a file's everywhere
     */
    public Figure {
        if (!SAFE.matcher(name).matches()) {
            throw new IllegalArgumentException("name of a figure \"" + name + "\"");
        }
    }

    /** The same with words below it that go wherever it goes. */
    Figure with(String words) {
        return new Figure(
                name, title, words + " " + description, narrow.with(words), wide.with(words));
    }

    /** One SVG file, black on white: no script, no style sheet, nothing fetched. */
    public String svg() {
        return Svg.file(this);
    }
}
