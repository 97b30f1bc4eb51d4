package rigside.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Marks on an empty sheet. Lengths are in units that are about one pixel of a screen when the
 * drawing is shown as wide as it was made for; from the left, and from the top down.
 *
 * @param width of the sheet
 * @param height of the sheet
 * @param marks in the order they are drawn; later ones cover earlier ones
 */
public record Drawing(double width, double height, List<Mark> marks) {
    /** Fits a telephone's screen of 360 pixels, less the page's margins. */
    public static final double NARROW = 328;

    /** Fits a page on a desk, a sheet of A4, and the width of a printed page. */
    public static final double WIDE = 800;

    /**
     * @throws IllegalArgumentException if the sheet has no finite size above 0
     */
    public Drawing {
        if (!(width > 0 && height > 0 && Double.isFinite(width) && Double.isFinite(height))) {
            throw new IllegalArgumentException("drawing of " + width + " by " + height);
        }
        marks = List.copyOf(marks);
    }

    /** The same with a line of words below it. */
    Drawing with(String words) {
        List<Mark> more = new ArrayList<>(marks);
        more.add(
                new Mark.Words(
                        0,
                        height + Sheet.SMALL + 2,
                        Sheet.SMALL,
                        Mark.Anchor.START,
                        Mark.Weight.BOLD,
                        Ink.MARK,
                        words));
        return new Drawing(width, height + Sheet.SMALL * Letters.LEADING + 4, more);
    }
}
