package rigside.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import rigside.session.Donning;

/** The columns that say in which donning something was. */
final class Worn {
    static final Resource.Link DONNING = new Resource.Link("donning", "donnings", "donning");
    static final Resource.Link CONDITION =
            new Resource.Link("condition", "conditions", "condition");

    private Worn() {}

    /** Number, round and condition of the donning a row is of; none outside donnings. */
    static <R> List<Column<R>> columns(Function<R, Optional<Donning>> donning) {
        return List.of(
                Column.anyWhole(
                        "donning",
                        "The number of the donning in the session, from 1; nothing outside"
                                + " donnings.",
                        row -> whole(donning.apply(row).map(Donning::number))),
                Column.anyWhole(
                        "round",
                        "The round it belongs to, from 1.",
                        row -> whole(donning.apply(row).map(Donning::round))),
                Column.text(
                        "condition",
                        "The condition worn.",
                        row -> donning.apply(row).map(Donning::condition).orElse("")));
    }

    private static OptionalInt whole(Optional<Integer> number) {
        return number.map(OptionalInt::of).orElse(OptionalInt.empty());
    }
}
