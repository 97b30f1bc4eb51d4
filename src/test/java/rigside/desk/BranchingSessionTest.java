package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.analysis.Looks;
import rigside.analysis.Shown;
import rigside.journal.Journal;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.journal.Stamp;
import rigside.runner.Rehearsed;
import rigside.session.Activity;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Input;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Story;

/**
 * A whole session of a protocol that repeats, branches and calculates: worked through to its close,
 * kept, read back, analysed and reviewed.
 */
class BranchingSessionTest {
    private static final String PROTOCOL = "/session/groups.yaml";
    private static final int MOST_KEYS = 500;

    /** Where a session stood when its journal had so many events. */
    private final Map<Integer, State> stood = new LinkedHashMap<>();

    private boolean undone;
    private boolean struck;

    @Test
    void aSessionOfAllBranchesIsTheSameFromItsJournalEventByEvent(@TempDir Path sessions)
            throws Exception {
        Story story = worked();
        Reading reading = JournalReader.read(kept(sessions, story.journal()));
        assertEquals(events(story.journal()), events(reading.events()));
        for (Map.Entry<Integer, State> each : stood.entrySet()) {
            assertEquals(each.getValue(), Evolve.fold(reading.events().subList(0, each.getKey())));
        }
        assertEquals(story.state(), reading.state());
        assertTrue(reading.state().course().closed());
    }

    @Test
    void itIsAnalysedByWhatWasDone() {
        State state = worked().state();
        Captured captured = state.captured();
        long donnings = state.course().donnings().size();
        assertEquals(donnings - 1, captured.failedChecks().size(), "one no was taken back");
        assertEquals(1, captured.notes().size());
        assertEquals(1, Applicable.noLonger(state).size());
        Analysis analysis = Analysis.of(state);
        Comparison drop = analysis.measure("drop").orElseThrow().comparison("disc").orElseThrow();
        assertEquals(donnings / 2, drop.n());
        assertEquals(1.5, drop.estimate().orElseThrow(), 0.05);
        assertEquals(
                donnings,
                analysis.measure("resistance").orElseThrow().values().stream()
                        .filter(value -> value.value().isPresent())
                        .count());
    }

    @Test
    void itsReviewTellsWhatDoesNotCountAndWhatWasTakenBack() {
        Story story = worked();
        Shown shown = Shown.of(story.state(), Analysis.of(story.state()));
        List<String> review = new ReviewLines(story.state(), shown, story.journal()).all();
        for (String heading : List.of("Failed checks", "Not counted", "Notes", "Entries")) {
            assertTrue(review.contains(heading), heading + ": " + review);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void itIsRehearsedToItsClose(long seed) throws Exception {
        Rehearsed rehearsed =
                Rehearsed.withoutDifference("groups.yaml", Story.text(PROTOCOL), seed);
        assertTrue(rehearsed.end().course().closed());
        assertEquals(rehearsed.end(), Evolve.fold(rehearsed.events()));
        assertTrue(rehearsed.end().captured().looks().size() >= 2);
    }

    private Story worked() {
        Story story = Story.of(PROTOCOL);
        for (int key = 0; key < MOST_KEYS && !story.state().course().closed(); key++) {
            press(story);
            assertEquals("", story.refusal(), story.activity().toString());
            if (story.last().stream().anyMatch(BranchingSessionTest::completesRound)) {
                State now = story.state();
                story.send(new Input.LookArrived(Looks.of(Analysis.of(now), now)));
            }
            stood.put(story.journal().size(), story.state());
        }
        assertTrue(story.state().course().closed());
        return story;
    }

    private static boolean completesRound(Event event) {
        return event instanceof Event.DonningCompleted done && done.donning() % 2 == 0;
    }

    /** The first seal check of each donning fails; in the third that was a mistake. */
    private void press(Story story) {
        int donning = story.state().course().open().map(Donning::number).orElse(0);
        if (story.activity() instanceof Activity.Checking check
                && check.place().step() == 0
                && check.item() == 0
                && !(donning == 3 && undone)) {
            story.answer(false);
        } else if (donning == 3 && !undone && story.activity() instanceof Activity.Checking) {
            undone = true;
            story.send(new Input.UndoAsked());
        } else if (story.activity() instanceof Activity.Filling filling) {
            story.type(answer(story.state(), ((Slot.Field) filling.slot()).id()));
        } else if (!struck && donning == 4 && story.activity() instanceof Activity.DonningDone) {
            struck = true;
            story.send(new Input.VoidAsked(last(story.state(), "end-drop").number(), "misread"));
        } else {
            story.goOn();
        }
    }

    /** Half again as much pressure drops over the disc; the fourth donning ends with much. */
    private String answer(State state, String id) {
        int donning = state.course().open().map(Donning::number).orElse(0);
        boolean disc =
                state.course().open().filter(is -> is.condition().equals("disc")).isPresent();
        return switch (id) {
            case "flow" -> "60";
            case "beard" -> "stubble";
            case "drop-read" -> String.valueOf((disc ? 75 : 50) + donning % 3);
            case "end-drop" -> donning == 4 && !struck ? "130" : "60";
            case "comfort" -> "2";
            default -> "wet";
        };
    }

    private static Entry last(State state, String id) {
        return state.captured().entries().stream()
                .filter(entry -> entry.slot() instanceof Slot.Field field && field.id().equals(id))
                .reduce((first, next) -> next)
                .orElseThrow();
    }

    private static Path kept(Path sessions, List<Recorded> events) throws Exception {
        try (Journal journal = Journal.create(sessions, "groups.yaml", events.get(0).wall())) {
            for (Recorded each : events) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            return journal.folder();
        }
    }

    private static List<Event> events(List<Recorded> recorded) {
        return recorded.stream().map(Recorded::event).toList();
    }

    /** The session goes through every kind of event that a branch can lead to. */
    @Test
    void everyBranchIsTaken() {
        Set<String> kinds =
                worked().journal().stream()
                        .map(each -> each.event().getClass().getSimpleName())
                        .collect(Collectors.toSet());
        assertTrue(
                kinds.containsAll(List.of("ItemFailed", "ItemReopened", "NoteRead", "EntryVoided")),
                kinds.toString());
    }
}
