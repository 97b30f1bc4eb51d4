package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import rigside.protocol.Field;
import rigside.protocol.Subject;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/** What was answered: the facts of the session, and the fields of forms and observations. */
final class AnswerTables {
    private AnswerTables() {}

    /** An answer that stands, and the field it is one to. */
    record Answered(Entry entry, Field field) {}

    static Resource<Answered> facts(Told told) {
        List<Column<Answered>> columns = new ArrayList<>();
        columns.add(
                Column.<Answered>text(
                                "fact", "The short word of the fact.", each -> each.field().id())
                        .once());
        columns.addAll(told(told));
        return new Resource<>(
                "facts",
                "Facts of the session",
                "One row for each fact recorded once, as it stands.",
                columns,
                List.of("fact"),
                List.of(EntryTable.ENTRY),
                answers(told, true));
    }

    static Resource<Answered> observations(Told told) {
        List<Column<Answered>> columns = new ArrayList<>();
        columns.add(
                Column.<Answered>text(
                                "field", "The short word of the field.", each -> each.field().id())
                        .always());
        columns.addAll(Worn.columns(each -> told.donning(each.entry().slot().place().donning())));
        columns.add(
                Column.text(
                        "step_title",
                        "The title of its step.",
                        each -> told.title(each.entry().slot().place())));
        columns.addAll(told(told));
        columns.addAll(
                List.of(
                        scale("scale_from", "The lowest number of its scale.", Field.Scale::from),
                        scale("scale_to", "The highest number of its scale.", Field.Scale::to),
                        Column.text(
                                "scale_low",
                                "What the lowest means.",
                                each -> scale(each).map(Field.Scale::low).orElse("")),
                        Column.text(
                                "scale_high",
                                "What the highest means.",
                                each -> scale(each).map(Field.Scale::high).orElse(""))));
        return new Resource<>(
                "observations",
                "Observations and forms",
                "One row for each answer in a form or to an observation, as it stands.",
                columns,
                List.of("entry"),
                List.of(EntryTable.ENTRY, Worn.DONNING, Worn.CONDITION),
                answers(told, false));
    }

    private static List<Column<Answered>> told(Told told) {
        return List.of(
                Column.<Answered>text(
                                "asked",
                                "The question as the tester saw it.",
                                each -> each.field().ask())
                        .always(),
                Column.word(
                        "about",
                        "Whom or what it is about, where the protocol says it or its use tells.",
                        Spelt.all(Subject.class),
                        each ->
                                told.state()
                                        .protocol()
                                        .subject(each.field())
                                        .map(Spelt::word)
                                        .orElse("")),
                Column.number(
                        "number",
                        "",
                        "The answer, where it is a number, in the unit of the next column.",
                        each -> number(told, each)),
                Column.text(
                        "unit",
                        "Its unit; nothing for plain numbers and words.",
                        each -> each.field().unit().map(unit -> unit.symbol()).orElse("")),
                Column.text("text", "The answer, where it is words.", each -> text(told, each)),
                Column.<Answered>whole(
                                "entry", "The number of the entry.", each -> each.entry().number())
                        .always());
    }

    private static Column<Answered> scale(
            String name, String words, ToIntFunction<Field.Scale> end) {
        return Column.anyWhole(
                name,
                words,
                each ->
                        scale(each)
                                .map(scale -> OptionalInt.of(end.applyAsInt(scale)))
                                .orElse(OptionalInt.empty()));
    }

    private static Optional<Field.Scale> scale(Answered row) {
        return row.field().answer() instanceof Field.Scale scale
                ? Optional.of(scale)
                : Optional.empty();
    }

    private static OptionalDouble number(Told told, Answered row) {
        return told.shown().isOut(row.entry())
                        && row.entry().value() instanceof Value.Measured measured
                ? OptionalDouble.of(measured.quantity().value())
                : OptionalDouble.empty();
    }

    private static String text(Told told, Answered row) {
        return told.shown().isOut(row.entry()) && row.entry().value() instanceof Value.Said said
                ? said.text()
                : "";
    }

    private static List<Answered> answers(Told told, boolean facts) {
        return told.state().captured().entries().stream()
                .filter(Entry::stands)
                .filter(each -> each.slot() instanceof Slot.Field)
                .filter(each -> isFact(each) == facts)
                .map(
                        each ->
                                new Answered(
                                        each,
                                        Procedure.field(told.state(), (Slot.Field) each.slot())))
                .toList();
    }

    /** Facts are the first step of what comes before the donnings. */
    private static boolean isFact(Entry entry) {
        return entry.slot().place().stage() == Stage.BEFORE && entry.slot().place().step() == 0;
    }
}
