package rigside.archive;

import java.util.List;
import java.util.function.Predicate;

/** All sessions of an archive as they were at one time, the one begun last first. */
public final class Contents {
    private final List<Held> held;

    Contents(List<Held> held) {
        this.held = held;
    }

    /** Every session, without its values. */
    public List<Archived> sessions() {
        return held.stream().map(Held::session).toList();
    }

    /** The sessions chosen, with the values of their donnings. */
    public List<WithValues> withValues(Predicate<Archived> chosen) {
        return held.stream()
                .filter(each -> chosen.test(each.session()))
                .map(Held::withValues)
                .toList();
    }
}
