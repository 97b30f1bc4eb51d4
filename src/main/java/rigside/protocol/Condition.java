package rigside.protocol;

/**
 * One of the things compared.
 *
 * @param id the short word other parts of the file refer to it by
 * @param title the words the tester sees
 * @param specimen the physical piece worn
 * @param reading what a particle reading inside the mask holds
 */
public record Condition(String id, String title, Specimen specimen, ParticleReading reading) {

    /**
     * The piece worn and its history.
     *
     * @param piece how the piece is marked
     * @param wornBefore how many times it was put on before this session
     */
    public record Specimen(String piece, int wornBefore) {}

    /**
     * Whether particles found inside the mask came past the seal only, or also through the filter.
     */
    public enum ParticleReading {
        SEAL_ONLY,
        SEAL_AND_FILTER
    }
}
