package rigside.guide;

/**
 * A page of the guide.
 *
 * @param name the word it is asked for by
 * @param summary one line, for the list of pages
 * @param text the whole page, lines of at most {@value Wrapped#WIDTH} characters but for examples
 */
public record Page(String name, String summary, String text) {}
