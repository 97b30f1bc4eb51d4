package rigside.report;

import java.util.Locale;
import java.util.Optional;
import rigside.analysis.Shown;
import rigside.protocol.Plan;
import rigside.session.State;

/** What the plots of a session have in common. */
final class Plots {
    private Plots() {}

    /** A measure of the session by its id, with what may be shown of it. */
    static Optional<Plotting> of(State state, Shown shown, String measure) {
        return shown.measures().stream()
                .filter(each -> each.measure().id().equals(measure))
                .findFirst()
                .map(result -> new Plotting(state.protocol(), result));
    }

    /** Whether what was worn in one round belongs together. */
    static boolean isPaired(State state) {
        return state.protocol().plan().design() == Plan.Design.ROUNDS;
    }

    /** A figure's name: the measure's id and what is drawn, of what a file's name may hold. */
    static String name(Plotting of, String what) {
        String id =
                of.measure()
                        .id()
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", "");
        return id.isEmpty() ? what : id + "-" + what;
    }
}
