package rigside.report;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rigside.measure.Quantity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Source;
import rigside.session.Value;

/** Values that were found wrong later and replaced, with the reason. */
final class AmendmentTable {
    private AmendmentTable() {}

    /**
     * One replacement.
     *
     * @param which of the entry's, from 1
     * @param before what stood there
     */
    record Amended(Entry entry, int which, Entry.Earlier before) {}

    static Resource<Amended> of(Told told) {
        return new Resource<>(
                "amendments",
                "Amendments",
                "One row for each time an entry was amended: the value that stood there before."
                        + " What stands now is in the table of entries.",
                List.of(
                        Column.<Amended>whole(
                                        "entry",
                                        "The number of the entry.",
                                        each -> each.entry().number())
                                .always(),
                        Column.<Amended>whole(
                                        "amendment",
                                        "Which amendment of the entry, from 1.",
                                        Amended::which)
                                .always(),
                        Column.yesOrNo(
                                "concealed",
                                "Whether the value before is left out because the protocol still"
                                        + " conceals it.",
                                each -> !told.isWhole()),
                        Column.number(
                                "number_before",
                                "",
                                "The value before, where it is a number, in the unit of the next"
                                        + " column.",
                                each ->
                                        number(told, each)
                                                .map(one -> OptionalDouble.of(one.value()))
                                                .orElse(OptionalDouble.empty())),
                        Column.text(
                                "unit_before",
                                "Its unit; nothing for plain numbers and words.",
                                each ->
                                        number(told, each)
                                                .map(one -> one.unit().symbol())
                                                .orElse("")),
                        Column.text(
                                "text_before",
                                "The value before, where it is words.",
                                each ->
                                        told.isWhole()
                                                        && each.before().value()
                                                                instanceof Value.Said said
                                                ? said.text()
                                                : ""),
                        Column.word(
                                "source_before",
                                "Where the value before came from.",
                                Source.class,
                                each -> each.before().source()),
                        Column.text(
                                "reason", "Why it was amended.", each -> each.before().reason()),
                        Column.time("amended", "When it was amended.", each -> time(told, each)),
                        Column.number(
                                "amended_at",
                                "s",
                                "When it was amended, from the opening of the session.",
                                each -> told.seconds(each.before().until())),
                        Column.whole(
                                "looks_before",
                                "How many looks had been taken when it was amended.",
                                each -> each.before().looksBefore())),
                List.of("entry", "amendment"),
                List.of(EntryTable.ENTRY),
                told.state().captured().entries().stream()
                        .flatMap(AmendmentTable::amended)
                        .toList());
    }

    private static Stream<Amended> amended(Entry entry) {
        List<Entry.Earlier> earlier = entry.earlier();
        return IntStream.range(0, earlier.size())
                .mapToObj(at -> new Amended(entry, at + 1, earlier.get(at)));
    }

    private static Optional<Quantity> number(Told told, Amended row) {
        return told.isWhole() && row.before().value() instanceof Value.Measured measured
                ? Optional.of(measured.quantity())
                : Optional.empty();
    }

    private static Optional<ZonedDateTime> time(Told told, Amended row) {
        return told.events().stream()
                .filter(each -> told.isWhole())
                .filter(
                        each ->
                                each.at() == row.before().until()
                                        && each.event() instanceof Event.EntryAmended amended
                                        && amended.entry() == row.entry().number())
                .map(Recorded::wall)
                .findFirst();
    }
}
