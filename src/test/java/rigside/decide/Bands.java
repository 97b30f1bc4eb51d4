package rigside.decide;

/** Bands of the tests. */
final class Bands {
    private Bands() {}

    /** Equally wide on both sides of 0: on the log scale, 1/ratio to ratio. */
    static Band symmetric(double margin) {
        return new Band(-margin, margin);
    }
}
