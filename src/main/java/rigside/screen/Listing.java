package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.State;

/** The lines of the page of entries, in the order shown. */
public final class Listing {
    private Listing() {}

    /** One line. */
    public sealed interface Row {
        /** Whether it can be struck out. */
        boolean stands();

        /** A donning; its entries follow it. */
        record OfDonning(Donning donning) implements Row {
            @Override
            public boolean stands() {
                return donning.outcome() == Donning.Outcome.COMPLETE;
            }
        }

        /** An entry. */
        record OfEntry(Entry entry) implements Row {
            @Override
            public boolean stands() {
                return entry.stands();
            }
        }
    }

    /**
     * All lines: each donning, the latest first, with its entries; then the entries outside
     * donnings.
     */
    public static List<Row> of(State state) {
        List<Row> rows = new ArrayList<>();
        List<Donning> donnings = state.course().donnings();
        for (int at = donnings.size() - 1; at >= 0; at--) {
            rows.add(new Row.OfDonning(donnings.get(at)));
            rows.addAll(entries(state, donnings.get(at).number()));
        }
        rows.addAll(entries(state, 0));
        return List.copyOf(rows);
    }

    private static List<Row> entries(State state, int donning) {
        return state.captured().entries().stream()
                .filter(entry -> entry.slot().place().donning() == donning)
                .<Row>map(Row.OfEntry::new)
                .toList();
    }
}
