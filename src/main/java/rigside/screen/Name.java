package rigside.screen;

/**
 * The name of a comparison in a row of a list.
 *
 * @param measure the title of the measure
 * @param condition the title of the condition; empty where there is but one to compare
 */
record Name(String measure, String condition) {

    /** Less of the measure's title says nothing. */
    private static final int LEAST = 4;

    /** Columns of the whole name. */
    int width() {
        return width(condition.isEmpty() ? measure : measure + ", " + condition);
    }

    /**
     * In so many columns: the measure's title is cut first, since several rows have it; then the
     * condition's in its middle, since those that differ in one word begin alike.
     */
    Line in(int columns, String cut) {
        if (condition.isEmpty()) {
            return Line.of(measure).cut(columns, cut);
        }
        int left = columns - width(", " + condition);
        return left >= Math.min(LEAST, width(measure))
                ? Line.of(measure).cut(left, cut).plus(", " + condition)
                : middle(columns, cut);
    }

    private Line middle(int columns, String cut) {
        if (width(condition) <= columns) {
            return Line.of(condition);
        }
        int from = condition.length() / 2;
        while (from < condition.length() && width(condition.substring(from)) > (columns - 1) / 2) {
            from++;
        }
        String end = condition.substring(from);
        return Line.of(condition).cut(columns - width(end), cut).plus(end);
    }

    private static int width(String text) {
        return Clean.width(Clean.text(text));
    }
}
