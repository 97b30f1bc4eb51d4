package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Place;
import rigside.session.Stage;
import rigside.session.State;

/** The lines of the page of entries, in the order shown. */
public final class Listing {
    private Listing() {}

    /** One line. */
    public sealed interface Row {
        /** Whether it can be struck out. */
        boolean stands();

        /** What the rows that follow have in common, outside donnings. */
        record Heading(String words) implements Row {
            @Override
            public boolean stands() {
                return false;
            }
        }

        /** A gap that stays empty. */
        record OfGap(Captured.LeftOut gap) implements Row {
            @Override
            public boolean stands() {
                return false;
            }
        }

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
     * All lines, the latest part first: what was entered after the last donning, each donning with
     * its entries and the gaps left out, what was entered before the first.
     */
    public static List<Row> of(State state) {
        List<Row> rows = new ArrayList<>(outside(state, Stage.AFTER, "after the last donning"));
        List<Donning> donnings = state.course().donnings();
        for (int at = donnings.size() - 1; at >= 0; at--) {
            int number = donnings.get(at).number();
            rows.add(new Row.OfDonning(donnings.get(at)));
            rows.addAll(captured(state, place -> place.donning() == number));
        }
        rows.addAll(outside(state, Stage.BEFORE, before(state)));
        return List.copyOf(rows);
    }

    private static String before(State state) {
        return state.protocol().donning().isEmpty() ? "entries" : "before the first donning";
    }

    /** What was captured in the part that is under way, by number; empty between donnings. */
    static List<Row> underWay(State state) {
        return state.course()
                .open()
                .map(open -> captured(state, place -> place.donning() == open.number()))
                .orElseGet(
                        () ->
                                state.course().stage() == Stage.DONNING
                                        ? List.of()
                                        : captured(
                                                state,
                                                place ->
                                                        place.donning() == 0
                                                                && place.stage()
                                                                        == state.course().stage()));
    }

    private static List<Row> outside(State state, Stage stage, String words) {
        List<Row> rows = captured(state, place -> place.donning() == 0 && place.stage() == stage);
        if (!rows.isEmpty()) {
            rows.add(0, new Row.Heading(words));
        }
        return rows;
    }

    /** The entries of a part by number; each gap left out after the entry it came after. */
    private static List<Row> captured(State state, Predicate<Place> part) {
        List<Row> rows = new ArrayList<>();
        List<Captured.LeftOut> gaps =
                new ArrayList<>(
                        state.captured().leftOut().stream()
                                .filter(gap -> part.test(gap.slot().place()))
                                .filter(gap -> Applicable.at(state, gap.slot().place()))
                                .toList());
        for (Entry entry : state.captured().entries()) {
            if (part.test(entry.slot().place())) {
                move(gaps, gap -> gap.afterEntry() < entry.number(), rows);
                rows.add(new Row.OfEntry(entry));
            }
        }
        move(gaps, gap -> true, rows);
        return rows;
    }

    private static void move(
            List<Captured.LeftOut> gaps, Predicate<Captured.LeftOut> which, List<Row> rows) {
        gaps.stream().filter(which).map(Row.OfGap::new).forEach(rows::add);
        gaps.removeIf(which);
    }
}
