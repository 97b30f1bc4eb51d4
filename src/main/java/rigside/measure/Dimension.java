package rigside.measure;

/**
 * What kind of thing a number measures; only units of one dimension can be turned into each other.
 */
public enum Dimension {
    PRESSURE("a pressure"),
    TIME("a time"),
    CONCENTRATION("a particle concentration"),
    FLOW("a flow"),
    VOLUME("a volume"),
    RESISTANCE("a flow resistance"),
    TEMPERATURE("a temperature"),
    LENGTH("a length"),
    MASS("a mass"),
    NUMBER("a plain number");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** The dimension in words that fit "must be ...", for messages. */
    public String words() {
        return words;
    }
}
