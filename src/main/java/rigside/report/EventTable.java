package rigside.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Stage;

/** Everything that happened, in the order it did. */
final class EventTable {
    private EventTable() {}

    static Resource<Recorded> of(Told told) {
        return new Resource<>(
                "events",
                "Events",
                "One row for each event of the session's journal. What was captured, struck out and"
                        + " concluded stands in the other tables; the journal itself holds all of"
                        + " it. Empty while anything is concealed.",
                List.of(
                        Column.<Recorded>whole(
                                        "event",
                                        "Its number in the journal, from 1.",
                                        each -> Math.toIntExact(each.number()))
                                .once(),
                        Column.<Recorded>time(
                                        "time",
                                        "When, by the wall clock.",
                                        each -> Optional.of(each.wall()))
                                .always(),
                        Column.<Recorded>number(
                                        "at",
                                        "s",
                                        "When, from the opening of the session.",
                                        each -> OptionalDouble.of(each.at() / 1e9))
                                .always(),
                        Column.<Recorded>word(
                                        "kind",
                                        "What happened.",
                                        Arrays.stream(Event.class.getPermittedSubclasses())
                                                .map(Spelt::word)
                                                .toList(),
                                        each -> Spelt.word(each.event().getClass()))
                                .always(),
                        Column.anyWhole(
                                "donning",
                                "The donning it was in, or is about.",
                                each -> Told.any(parts(each).donning())),
                        Column.word(
                                "stage",
                                "The part of the session its step is of.",
                                Spelt.all(Stage.class),
                                each ->
                                        parts(each)
                                                .place()
                                                .map(place -> Spelt.word(place.stage()))
                                                .orElse("")),
                        Column.anyWhole(
                                "step",
                                "The position of its step in that part, from 1.",
                                each ->
                                        Told.any(
                                                parts(each)
                                                        .place()
                                                        .map(Place::step)
                                                        .map(step -> step + 1)
                                                        .orElse(0))),
                        Column.text(
                                "step_title",
                                "The title of that step.",
                                each -> parts(each).place().map(told::title).orElse("")),
                        Column.anyWhole(
                                "position",
                                "Which exercise, trial, item or gate of the step, from 1.",
                                each -> Told.any(parts(each).position())),
                        Column.anyWhole(
                                "entry",
                                "The number of the entry it is about.",
                                each -> Told.any(parts(each).entry())),
                        Column.text(
                                "words",
                                "What it says: reasons, notes, what was noticed.",
                                each -> parts(each).words())),
                List.of("event"),
                List.of(Worn.DONNING, EntryTable.ENTRY),
                told.isWhole() ? told.events() : List.of());
    }

    private static EventParts parts(Recorded recorded) {
        return new EventParts(recorded.event());
    }
}
