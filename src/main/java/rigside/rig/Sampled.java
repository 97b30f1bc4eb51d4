package rigside.rig;

import java.util.LinkedHashMap;
import java.util.Map;
import rigside.measure.Dimension;

/** What the instrument behind a feed measures. */
public enum Sampled {
    /** The pressure in the mask against the room. */
    MASK_PRESSURE("mask-pressure", Dimension.PRESSURE),
    /** Particles in the room. */
    AMBIENT("ambient-concentration", Dimension.CONCENTRATION),
    /** Particles in the mask. */
    MASK("mask-concentration", Dimension.CONCENTRATION),
    /** Particles by one counter, whose tube is switched between the room and the mask. */
    SWITCHED("switched-concentration", Dimension.CONCENTRATION);

    private final String word;
    private final Dimension dimension;

    Sampled(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    /** As written in rig files. */
    public String word() {
        return word;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Whether it gives a signal, not necessarily at every time. */
    public boolean gives(Signal signal) {
        return switch (this) {
            case MASK_PRESSURE -> signal == Signal.PRESSURE;
            case AMBIENT -> signal == Signal.AMBIENT;
            case MASK -> signal == Signal.MASK;
            case SWITCHED -> signal != Signal.PRESSURE;
        };
    }

    /** Each kind by the word it is written with. */
    static Map<String, Sampled> words() {
        Map<String, Sampled> words = new LinkedHashMap<>();
        for (Sampled each : values()) {
            words.put(each.word, each);
        }
        return words;
    }
}
