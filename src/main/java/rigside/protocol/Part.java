package rigside.protocol;

import java.util.Locale;

/** The parts of the procedure, in their order. */
enum Part {
    BEFORE,
    DONNING,
    AFTER;

    /** The key it stands under. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
