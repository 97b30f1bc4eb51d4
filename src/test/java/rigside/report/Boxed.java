package rigside.report;

import java.util.List;

/** Words of a drawing with the room they take at most. */
record Boxed(String text, double left, double top, double right, double bottom) {

    static List<Boxed> all(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> of((Mark.Words) mark))
                .toList();
    }

    private static Boxed of(Mark.Words words) {
        double wide = Letters.width(words.text(), words.size(), words.weight());
        double left =
                switch (words.anchor()) {
                    case START -> words.x();
                    case MIDDLE -> words.x() - wide / 2;
                    case END -> words.x() - wide;
                };
        return new Boxed(
                words.text(),
                left,
                words.y() - words.size() * Letters.ASCENT,
                left + wide,
                words.y() + words.size() * Letters.DESCENT);
    }

    boolean touches(Boxed other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean isWithin(Drawing drawing) {
        return left >= 0 && top >= 0 && right <= drawing.width() && bottom <= drawing.height();
    }
}
