package rigside.report;

import java.util.List;

/** One thing drawn. Places and lengths are those of {@link Drawing}. */
public sealed interface Mark {
    <R> R match(Cases<R> cases);

    /** One case for each kind of mark. */
    interface Cases<R> {
        R line(Line mark);

        R curve(Curve mark);

        R box(Box mark);

        R sign(Sign mark);

        R words(Words mark);
    }

    /** How the stroke of a line runs. */
    enum Stroke {
        WHOLE,
        DASHED
    }

    /** A straight line. */
    record Line(double x1, double y1, double x2, double y2, Ink ink, double width, Stroke stroke)
            implements Mark {
        public Line {
            Finite.check(x1, y1, x2, y2, width);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.line(this);
        }
    }

    /** Straight lines from point to point. */
    record Curve(List<Point> points, Ink ink, double width) implements Mark {
        public Curve {
            points = List.copyOf(points);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.curve(this);
        }
    }

    /** A place. */
    record Point(double x, double y) {
        public Point {
            Finite.check(x, y);
        }
    }

    /** A filled rectangle; {@code x} and {@code y} are its left and upper edge. */
    record Box(double x, double y, double width, double height, Ink ink) implements Mark {
        public Box {
            Finite.check(x, y, width, height);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.box(this);
        }
    }

    /**
     * A small shape around a place.
     *
     * @param size half its width
     */
    record Sign(double x, double y, double size, Shape shape, Ink ink) implements Mark {
        public Sign {
            Finite.check(x, y, size);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sign(this);
        }
    }

    /** Shapes that can be told apart in black and white and when small. */
    enum Shape {
        RING,
        DISC,
        SQUARE,
        DIAMOND,
        /** Struck out, or broken off. */
        CROSS,
        /** More than the place says. */
        UP,
        /** Less than the place says. */
        DOWN,
        /** More than the place says, where numbers grow to the right. */
        RIGHT
    }

    /**
     * Words on one line.
     *
     * @param x where the line begins, has its middle or ends
     * @param y the line the letters stand on
     * @param size of the letters
     * @param text raw
     */
    record Words(
            double x, double y, double size, Anchor anchor, Weight weight, Ink ink, String text)
            implements Mark {
        public Words {
            Finite.check(x, y, size);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.words(this);
        }
    }

    /** Which part of a line of words stands at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** How heavy letters are. */
    enum Weight {
        NORMAL,
        BOLD
    }

    /** Refuses what cannot be a place on a sheet. */
    final class Finite {
        private Finite() {}

        static void check(double... numbers) {
            for (double number : numbers) {
                if (!Double.isFinite(number)) {
                    throw new IllegalArgumentException("place or length " + number + " of a mark");
                }
            }
        }
    }
}
