package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.Part;
import rigside.measure.TracedInhalation;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Trace;
import rigside.session.Value;

/** What the values of donnings are made of: single inhalations, and exercises. */
final class PartTables {
    private PartTables() {}

    static Resource<Entry> trials(Told told) {
        List<Column<Entry>> columns = new ArrayList<>();
        columns.add(Column.<Entry>whole("entry", "The number of the entry.", Entry::number).once());
        columns.addAll(Worn.columns(each -> told.donning(each.slot().place().donning())));
        columns.addAll(
                List.of(
                        Column.text(
                                "measure",
                                "The measure it is a time of.",
                                each -> step(told, each).map(Step.Trials::measure).orElse("")),
                        Column.<Entry>whole(
                                        "trial",
                                        "Which trial of its step, from 1; one done again keeps it.",
                                        each -> Gap.of(each.slot()).position())
                                .always(),
                        Column.number(
                                "target",
                                "Pa",
                                "The pressure to hold.",
                                each ->
                                        step(told, each)
                                                .map(one -> OptionalDouble.of(one.target().si()))
                                                .orElse(OptionalDouble.empty())),
                        Column.number(
                                "time",
                                "s",
                                "The time of the inhalation: by the trigger's presses, or with a"
                                        + " pressure trace the time it would have taken at exactly"
                                        + " the target.",
                                each -> seconds(told, each)),
                        Column.yesOrNo("stands", "Whether it was not struck out.", Entry::stands),
                        Column.yesOrNo(
                                "counts",
                                "Whether it is part of a donning's value that counts.",
                                told::counts),
                        pull(
                                told,
                                "pressed",
                                "s",
                                "The time between the trigger's presses.",
                                Trace.Pull::pressedSeconds),
                        traced(
                                told,
                                "integral",
                                "Pa s",
                                "The suction over the pull, integrated.",
                                TracedInhalation::integral),
                        traced(
                                told,
                                "mean_pressure",
                                "Pa",
                                "The mean suction over the pull.",
                                TracedInhalation::meanPa),
                        traced(
                                told,
                                "pressure_spread",
                                "Pa",
                                "The standard deviation of the suction over the pull.",
                                TracedInhalation::spreadPa),
                        traced(
                                told,
                                "share_within",
                                "",
                                "The share of the pull, from 0 to 1, within the tolerance of the target.",
                                TracedInhalation::withinShare)));
        return new Resource<>(
                "trials",
                "Trials",
                "One row for each inhalation timed, those struck out too. Pressures are sizes of"
                        + " suction, from the trace of an instrument where there was one.",
                columns,
                List.of("entry"),
                List.of(
                        EntryTable.ENTRY,
                        Worn.DONNING,
                        Worn.CONDITION,
                        new Resource.Link("measure", "measures", "measure")),
                told.state().captured().entries().stream()
                        .filter(each -> each.slot() instanceof Slot.Trial)
                        .toList());
    }

    private static Optional<Step.Trials> step(Told told, Entry entry) {
        return Procedure.step(told.state(), entry.slot().place()) instanceof Step.Trials trials
                ? Optional.of(trials)
                : Optional.empty();
    }

    private static OptionalDouble seconds(Told told, Entry entry) {
        return told.shown().isOut(entry) && entry.value() instanceof Value.Measured measured
                ? OptionalDouble.of(measured.quantity().si())
                : OptionalDouble.empty();
    }

    private static Column<Entry> pull(
            Told told, String name, String unit, String words, ToDoubleFunction<Trace.Pull> of) {
        return Column.number(
                name,
                unit,
                words,
                each ->
                        each.pull()
                                .filter(pull -> told.isWhole())
                                .map(pull -> OptionalDouble.of(of.applyAsDouble(pull)))
                                .orElse(OptionalDouble.empty()));
    }

    private static Column<Entry> traced(
            Told told,
            String name,
            String unit,
            String words,
            ToDoubleFunction<TracedInhalation> of) {
        return pull(told, name, unit, words, pull -> of.applyAsDouble(pull.inhalation()));
    }

    /** One part of a donning's value. */
    record Exercised(Measure measure, DonningValue value, int position, Part part) {}

    static Resource<Exercised> exercises(Told told) {
        List<Column<Exercised>> columns = new ArrayList<>();
        columns.add(
                Column.<Exercised>text("measure", "The measure.", each -> each.measure().id())
                        .always());
        Worn.<Exercised>columns(each -> told.donning(each.value().donning())).stream()
                .map(Column::always)
                .forEach(columns::add);
        columns.addAll(
                List.of(
                        Column.<Exercised>whole(
                                        "exercise",
                                        "Which exercise of the measure in the donning, from 1.",
                                        Exercised::position)
                                .always(),
                        Column.text("title", "Its name.", each -> each.part().title()),
                        Column.number(
                                "value",
                                "",
                                "Its fit factor, or its peak inhalation pressure, in the unit of"
                                        + " the next column.",
                                each -> each.part().value()),
                        Column.text(
                                "unit",
                                "Its unit; nothing for plain numbers.",
                                each -> each.measure().unit().symbol()),
                        Column.yesOrNo(
                                "at_least",
                                "Whether the counter only bounded it: the value is then what it is"
                                        + " at least.",
                                each -> each.part().bounded()),
                        Column.yesOrNo(
                                "counted",
                                "Whether it enters the donning's value by the protocol.",
                                each -> each.part().counted()),
                        Column.word(
                                "level",
                                "How it stands to the required level.",
                                Level.class,
                                each -> each.part().level()),
                        Column.text(
                                "entries",
                                "The numbers of the entries it comes from, parted by spaces.",
                                each -> DonningTables.numbers(each.part().entries())),
                        Column.text(
                                "missing", "Why it has no value.", each -> each.part().missing())));
        return new Resource<>(
                "exercises",
                "Exercises",
                "One row for each exercise of each donning, by each measure that exercises feed. Empty"
                        + " while results are concealed.",
                columns,
                List.of("measure", "donning", "exercise"),
                List.of(
                        new Resource.Link("measure", "measures", "measure"),
                        Worn.DONNING,
                        Worn.CONDITION),
                told.shown().measures().stream()
                        .filter(each -> told.shown().result())
                        .filter(
                                each ->
                                        each.measure().kind() instanceof Measure.FitFactor
                                                || each.measure().kind()
                                                        instanceof Measure.PressureTrace)
                        .flatMap(
                                each ->
                                        each.values().stream()
                                                .flatMap(value -> parts(each.measure(), value)))
                        .toList());
    }

    private static Stream<Exercised> parts(Measure measure, DonningValue value) {
        List<Part> parts = value.parts();
        return IntStream.range(0, parts.size())
                .mapToObj(at -> new Exercised(measure, value, at + 1, parts.get(at)));
    }
}
