package rigside.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigside.analysis.SlotWords;
import rigside.measure.Quantity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Value;

/** Everything that was captured, struck out or not. */
final class EntryTable {
    static final Resource.Link ENTRY = new Resource.Link("entry", "entries", "entry");

    private final Told told;

    private EntryTable(Told told) {
        this.told = told;
    }

    static Resource<Entry> of(Told told) {
        EntryTable table = new EntryTable(told);
        List<Column<Entry>> columns = new ArrayList<>();
        columns.add(
                Column.<Entry>whole("entry", "Its number in the session, from 1.", Entry::number)
                        .once());
        columns.addAll(Worn.columns(each -> told.donning(each.slot().place().donning())));
        columns.addAll(table.where());
        columns.addAll(table.what());
        columns.addAll(table.standing());
        return new Resource<>(
                "entries",
                "Entries",
                "One row for each value captured: readings, times, answers and facts, those struck"
                        + " out too.",
                columns,
                List.of("entry"),
                List.of(Worn.DONNING, Worn.CONDITION),
                told.state().captured().entries());
    }

    private List<Column<Entry>> where() {
        return List.of(
                Column.<Entry, Stage>word(
                                "stage",
                                "The part of the session: before the first donning, a donning, or"
                                        + " after the last.",
                                Stage.class,
                                each -> each.slot().place().stage())
                        .always(),
                Column.<Entry>whole(
                                "step",
                                "The position of its step in that part, from 1; the facts of a"
                                        + " session come first.",
                                each -> each.slot().place().step() + 1)
                        .always(),
                Column.text(
                        "step_title",
                        "The title of the step.",
                        each -> told.title(each.slot().place())),
                Column.<Entry>word(
                                "kind",
                                "What was asked for.",
                                Arrays.stream(Slot.class.getPermittedSubclasses())
                                        .map(Spelt::word)
                                        .toList(),
                                each -> Gap.of(each.slot()).kind())
                        .always(),
                Column.text(
                        "field",
                        "The short word of the fact or field.",
                        each -> Gap.of(each.slot()).field()),
                Column.anyWhole(
                        "position",
                        "Which exercise, trial or gate of the step, from 1.",
                        each -> Told.any(Gap.of(each.slot()).position())),
                Column.anyWhole(
                        "window",
                        "Which ambient sample of the exercise, from 1.",
                        each ->
                                each.slot() instanceof Slot.Ambient ambient
                                        ? OptionalInt.of(ambient.window() + 1)
                                        : OptionalInt.empty()),
                Column.text(
                        "asked",
                        "What was asked for, in words.",
                        each -> SlotWords.of(told.state(), each.slot())));
    }

    private List<Column<Entry>> what() {
        return List.of(
                Column.yesOrNo(
                        "concealed",
                        "Whether the value is left out because the protocol still conceals it.",
                        each -> !told.shown().isOut(each)),
                Column.number(
                        "number",
                        "",
                        "The value, where it is a number, in the unit of the next column.",
                        each -> number(each, false)),
                Column.text(
                        "unit",
                        "The unit it was entered in; nothing for plain numbers and words.",
                        each -> quantity(each).map(one -> one.unit().symbol()).orElse("")),
                Column.number(
                        "number_si",
                        "",
                        "The same number in the SI unit of its kind: Pa, s, 1/m3, m3/s, m3, K, m,"
                                + " kg or 1.",
                        each -> number(each, true)),
                Column.text("text", "The value, where it is words.", this::text),
                Column.<Entry, Source>word(
                                "source",
                                "Where it came from: typed, timed by the trigger key, read from an"
                                        + " instrument, or simulated (then it is invented).",
                                Source.class,
                                Entry::source)
                        .always(),
                Column.time("captured", "When it was captured.", told::captured),
                Column.number(
                        "captured_at",
                        "s",
                        "When it was captured, from the opening of the session.",
                        each -> told.seconds(each.at())),
                Column.number(
                        "sampled",
                        "s",
                        "How long an instrument really sampled it, where that is known to differ"
                                + " from its window.",
                        each ->
                                each.seconds() > 0 && told.isWhole()
                                        ? OptionalDouble.of(each.seconds())
                                        : OptionalDouble.empty()));
    }

    private List<Column<Entry>> standing() {
        return List.of(
                Column.yesOrNo("stands", "Whether it was not struck out.", Entry::stands),
                Column.yesOrNo(
                        "counts",
                        "Whether it is part of a donning's value that counts.",
                        told::counts),
                Column.yesOrNo(
                        "amended",
                        "Whether it holds another value than the one captured; the table of"
                                + " amendments has that.",
                        Entry::isAmended),
                Column.text(
                        "struck_reason",
                        "Why it was struck out.",
                        each -> each.struck().map(Entry.Struck::reason).orElse("")),
                Column.time(
                        "struck",
                        "When it was struck out.",
                        each ->
                                told.time(
                                        event ->
                                                event instanceof Event.EntryVoided voided
                                                        && voided.entry() == each.number())),
                Column.anyWhole(
                        "struck_looks_before",
                        "How many looks had been taken when it was struck out.",
                        each ->
                                each.struck()
                                        .map(struck -> OptionalInt.of(struck.looksBefore()))
                                        .orElse(OptionalInt.empty())));
    }

    private Optional<Quantity> quantity(Entry entry) {
        return told.shown().isOut(entry) && entry.value() instanceof Value.Measured measured
                ? Optional.of(measured.quantity())
                : Optional.empty();
    }

    private OptionalDouble number(Entry entry, boolean si) {
        return quantity(entry)
                .map(one -> OptionalDouble.of(si ? one.si() : one.value()))
                .orElse(OptionalDouble.empty());
    }

    private String text(Entry entry) {
        return told.shown().isOut(entry) && entry.value() instanceof Value.Said said
                ? said.text()
                : "";
    }
}
