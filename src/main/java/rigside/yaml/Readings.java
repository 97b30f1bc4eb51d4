package rigside.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** How a value was read, to be held against the shape it is declared to have. */
final class Readings {
    private record Reading(String words, Predicate<Shape> fits) {}

    private final List<Reading> noted = new ArrayList<>();

    /**
     * Notes one reading.
     *
     * @param words how it was read: {@code a number}
     * @param fits whether a value of some shape may be read so
     */
    void note(String words, Predicate<Shape> fits) {
        noted.add(new Reading(words, fits));
    }

    boolean fit(Shape shape) {
        return noted.stream().allMatch(reading -> reading.fits().test(shape));
    }

    /**
     * Fails where file and catalogue would differ.
     *
     * @throws IllegalStateException if the value was read as something else than {@code shape}
     */
    void mustFit(Shape shape, String where) {
        for (Reading reading : noted) {
            if (!reading.fits().test(shape)) {
                throw new IllegalStateException(
                        where + " is read as " + reading.words() + " but declared as " + shape);
            }
        }
    }
}
