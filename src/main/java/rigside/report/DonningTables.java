package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.Standing;
import rigside.measure.Counted;
import rigside.protocol.Measure;
import rigside.session.Donning;
import rigside.session.Event;

/** The donnings, and what each measure is in each of them. */
final class DonningTables {
    private DonningTables() {}

    static Resource<Donning> donnings(Told told) {
        return new Resource<>(
                "donnings",
                "Donnings",
                "One row for each time a condition was put on, or set with the mask on; abandoned"
                        + " and struck ones too.",
                List.of(
                        Column.<Donning>whole(
                                        "donning",
                                        "Its number in the session, from 1, in the order they were"
                                                + " begun.",
                                        Donning::number)
                                .once(),
                        Column.<Donning>whole(
                                        "round",
                                        "The round it belongs to, from 1; one done again keeps it.",
                                        Donning::round)
                                .always(),
                        Column.whole("turn", "Its place in the round's order.", Donning::turn),
                        Column.<Donning>text("condition", "The condition worn.", Donning::condition)
                                .always(),
                        Column.<Donning, Donning.Outcome>word(
                                        "outcome",
                                        "How it stands: open, complete, abandoned (broken off, done"
                                                + " again in the same turn) or struck (complete,"
                                                + " then struck out as a whole).",
                                        Donning.Outcome.class,
                                        Donning::outcome)
                                .always(),
                        Column.text(
                                "reason", "Why it was abandoned or struck out.", Donning::reason),
                        Column.anyWhole(
                                "looks_before",
                                "How many looks had been taken when it was struck out.",
                                each ->
                                        each.outcome() == Donning.Outcome.STRUCK
                                                ? OptionalInt.of(each.looksBefore())
                                                : OptionalInt.empty()),
                        Column.time(
                                "began",
                                "When it was begun.",
                                each ->
                                        told.time(
                                                event ->
                                                        event instanceof Event.DonningStarted began
                                                                && began.donning()
                                                                        == each.number())),
                        Column.number(
                                "began_at",
                                "s",
                                "When it was begun, from the opening of the session.",
                                each -> told.seconds(each.startedAt())),
                        Column.number(
                                "ended_at",
                                "s",
                                "When it was completed or abandoned, from the opening of the"
                                        + " session.",
                                each ->
                                        each.endedAt()
                                                .map(told::seconds)
                                                .orElse(OptionalDouble.empty()))),
                List.of("donning"),
                List.of(Worn.CONDITION),
                told.state().course().donnings());
    }

    /** A measure in a donning. */
    record Valued(Measure measure, DonningValue value) {}

    static Resource<Valued> values(Told told) {
        List<Column<Valued>> columns = new ArrayList<>();
        columns.add(
                Column.<Valued>text("measure", "The measure.", each -> each.measure().id())
                        .always());
        Worn.<Valued>columns(each -> told.donning(each.value().donning())).stream()
                .map(Column::always)
                .forEach(columns::add);
        columns.addAll(
                List.of(
                        Column.<Valued, Standing>word(
                                        "standing",
                                        "What becomes of it: it counts, the donning is open, has no"
                                                + " value, was abandoned or struck.",
                                        Standing.class,
                                        each -> each.value().standing())
                                .always(),
                        Column.number(
                                "value",
                                "",
                                "The value, in the unit of the next column: for a fit factor the"
                                        + " harmonic mean over its exercises, for inhalation times"
                                        + " the geometric mean of its trials, for pressures the"
                                        + " median of its exercises. Nothing where it cannot be"
                                        + " stated.",
                                each -> each.value().value()),
                        Column.text(
                                "unit",
                                "Its unit; nothing for plain numbers.",
                                each -> each.measure().unit().symbol()),
                        Column.yesOrNo(
                                "at_least",
                                "Whether the counter only bounded it: the value is then what it is"
                                        + " at least.",
                                each -> each.value().bounded()),
                        Column.number(
                                "value_at_half",
                                "",
                                "The same with what is bounded at half its penetration, as the"
                                        + " analysis takes it again.",
                                each -> each.value().halved()),
                        Column.yesOrNo(
                                "unresolved",
                                "Whether every exercise was at or below the detection limit.",
                                each -> each.value().unresolved()),
                        Column.word(
                                "level",
                                "How it stands to the required level.",
                                Level.class,
                                each -> each.value().level()),
                        Column.number(
                                "counting_low",
                                "",
                                "Lower 95 % limit from counting particles alone.",
                                each -> limit(each, true)),
                        Column.number(
                                "counting_high",
                                "",
                                "Upper 95 % limit from counting particles alone.",
                                each -> limit(each, false)),
                        Column.number(
                                "step",
                                "",
                                "What one step of its readings changes it by, on the scale of the"
                                        + " analysis (relative for a ratio).",
                                each -> OptionalDouble.of(each.value().resolution())),
                        Column.text(
                                "entries",
                                "The numbers of the entries it rests on, parted by spaces.",
                                each -> numbers(each.value().entries())),
                        Column.text(
                                "missing",
                                "What is missing and why.",
                                each -> String.join("; ", each.value().missing()))));
        return new Resource<>(
                "values",
                "Values of the donnings",
                "One row for each measure and donning.",
                columns,
                List.of("measure", "donning"),
                List.of(
                        new Resource.Link("measure", "measures", "measure"),
                        Worn.DONNING,
                        Worn.CONDITION),
                told.shown().measures().stream()
                        .flatMap(
                                each ->
                                        each.values().stream()
                                                .map(value -> new Valued(each.measure(), value)))
                        .toList());
    }

    private static OptionalDouble limit(Valued row, boolean low) {
        Optional<Counted.Limits> counting = row.value().counting();
        return counting.isEmpty()
                ? OptionalDouble.empty()
                : low ? OptionalDouble.of(counting.get().low()) : counting.get().high();
    }

    static String numbers(List<Integer> entries) {
        return entries.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
