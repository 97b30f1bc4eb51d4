package rigside.report;

/**
 * Panels below one another on a narrow sheet, two beside one another on a wide one unless there is
 * only one.
 *
 * @param sheet they are drawn on
 * @param count how many
 * @param gutter between two that stand beside one another
 */
record Grid(Sheet sheet, int count, double gutter) {
    private static final double BETWEEN = 6;

    /** Draws one panel. */
    interface Drawn {
        /**
         * Gives the panel's lower edge.
         *
         * @param at which panel, from 0
         */
        double draw(int at, double x, double top, double wide);
    }

    int columns() {
        return sheet.isWide() && count > 1 ? 2 : 1;
    }

    /** Draws all panels from a height on, and gives the lower edge of the lowest. */
    double place(double from, Drawn panel) {
        double wide = (sheet.width() - gutter * (columns() - 1)) / columns();
        double top = from + BETWEEN;
        double bottom = from;
        for (int at = 0; at < count; at++) {
            int column = at % columns();
            if (column == 0) {
                top = bottom + BETWEEN;
            }
            bottom = Math.max(bottom, panel.draw(at, column * (wide + gutter), top, wide));
        }
        return bottom;
    }
}
