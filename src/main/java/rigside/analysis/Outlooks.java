package rigside.analysis;

import java.util.Optional;

/** Forecasts of comparisons. */
final class Outlooks {

    private Outlooks() {}

    static Optional<Outlook> of(Setting setting, Judged judged, Rows rows, long seed) {
        return Optional.empty();
    }
}
