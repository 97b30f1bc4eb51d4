package rigside.measure;

import java.util.Arrays;
import java.util.Optional;

/**
 * What kind of thing a number measures; only units of one dimension can be turned into each other.
 */
public enum Dimension {
    PRESSURE("a pressure", 1, -1, -2, 0),
    TIME("a time", 0, 0, 1, 0),
    CONCENTRATION("a particle concentration", 0, -3, 0, 0),
    FLOW("a flow", 0, 3, -1, 0),
    VOLUME("a volume", 0, 3, 0, 0),
    RESISTANCE("a flow resistance", 1, -4, -1, 0),
    TEMPERATURE("a temperature", 0, 0, 0, 1),
    LENGTH("a length", 0, 1, 0, 0),
    MASS("a mass", 1, 0, 0, 0),
    NUMBER("a plain number", 0, 0, 0, 0);

    private final String words;
    private final int kilogram;
    private final int metre;
    private final int second;
    private final int kelvin;

    Dimension(String words, int kilogram, int metre, int second, int kelvin) {
        this.words = words;
        this.kilogram = kilogram;
        this.metre = metre;
        this.second = second;
        this.kelvin = kelvin;
    }

    /** What it is made of; no two dimensions are made of the same. */
    public Powers powers() {
        return new Powers(kilogram, metre, second, kelvin);
    }

    /** The dimension made of these powers, if there is one here. */
    public static Optional<Dimension> of(Powers powers) {
        return Arrays.stream(values()).filter(each -> each.powers().equals(powers)).findFirst();
    }

    /** The dimension in words that fit "must be ...", for messages. */
    public String words() {
        return words;
    }
}
