package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.journal.Rewritten;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

class CopyToShareTest {
    private static final String SECRET = "Secret";
    private static final List<Recorded> DEMONSTRATION =
            JournalReader.read(Path.of("demo", "recorded-session")).events();
    private static final CopyToShare.Terms NOTHING =
            new CopyToShare.Terms(Set.of(), Optional.empty());

    @TempDir Path home;

    private static CopyToShare copy(List<Recorded> events, CopyToShare.Terms terms) {
        return CopyToShare.of(Evolve.fold(events), events, terms);
    }

    /** The recorded session with a word of its own wherever a tester or a rig file may have one. */
    private static List<Recorded> secretive() {
        List<Recorded> events = new ArrayList<>();
        for (Recorded each : DEMONSTRATION) {
            for (Event event : secretive(each.event())) {
                events.add(new Recorded(events.size() + 1, each.wall(), each.at(), event));
            }
        }
        return events;
    }

    private static List<Event> secretive(Event event) {
        if (event instanceof Event.SessionOpened opened) {
            return List.of(opened(opened), selfTested());
        }
        if (event instanceof Event.EntryCaptured captured
                && captured.value() instanceof Value.Said said
                && said.text().equals("rehearsed")) {
            Value secret = new Value.Said(SECRET + captured.entry());
            return List.of(
                    new Event.EntryCaptured(
                            captured.entry(), captured.slot(), secret, captured.source()));
        }
        if (event instanceof Event.EntryCaptured captured
                && captured.slot() instanceof Slot.Field field
                && field.id().equals("vital-capacity")) {
            return List.of(
                    new Event.EntryDoubted(field, captured.value(), "4.75 L is " + SECRET), event);
        }
        if (event instanceof Event.DonningStarted started && started.donning() == 3) {
            Place place = new Place(Stage.BEFORE, 0, 0);
            return List.of(
                    new Event.NoteWritten(SECRET + " note"),
                    new Event.FeedFailed("counter", "counter: /dev/" + SECRET + " is gone"),
                    new Event.FeedBack("counter", "counter: " + SECRET + " reads again"),
                    new Event.EntryAmended(1, new Value.Said(SECRET + " 2"), SECRET + " why"),
                    new Event.EntryVoided(3, SECRET + " reason"),
                    new Event.SlotLeftOut(
                            new Slot.Field(place, "room-temperature"), SECRET + " broken"),
                    event);
        }
        if (event instanceof Event.RepeatsEnded) {
            return List.of(new Event.RepeatsEnded(SECRET + " is hungry"));
        }
        return List.of(event);
    }

    private static Event opened(Event.SessionOpened opened) {
        return new Event.SessionOpened(
                opened.programVersion(),
                "/home/" + SECRET + "/disc.yaml",
                opened.protocolText(),
                opened.seed(),
                "counter of " + SECRET,
                "feeds: [{path: /dev/" + SECRET + "}]",
                opened.simulated(),
                opened.speed(),
                "/home/" + SECRET + "/rigs");
    }

    private static Event selfTested() {
        return new Event.SelfTested(
                "2026-11-25T12:00:00Z",
                SECRET,
                3,
                0.001,
                0.002,
                0.003,
                "tones",
                List.of(0.2, 0.21),
                List.of(SECRET),
                List.of(SECRET));
    }

    @Test
    void nothingThatWasLeftOutIsAnywhereInTheBytesOfTheCopy() throws Exception {
        List<Recorded> events = secretive();
        assertTrue(events.toString().split(SECRET, -1).length > 25);
        CopyToShare copy = copy(events, NOTHING);
        String bytes = new String(Rewritten.bytes(copy.events()), StandardCharsets.UTF_8);
        assertFalse(bytes.contains(SECRET), () -> around(bytes));
        assertFalse(bytes.contains("4.75"), () -> around(bytes));
        assertFalse(copy.told().contains(SECRET));
        assertEquals(List.of(), copy.still());
        assertEquals(
                """
                This is a copy of a session, made to be shared.

                Left out:
                  2 wearer codes
                  2 answers about the wearer
                  10 free answers in forms and to observations
                  1 written note
                  4 typed reasons
                  2 texts about instruments, with their devices
                  2 folders and paths
                  2 words of instruments' troubles
                  1 terminal's name, and cues heard
                """,
                copy.told().substring(0, copy.told().indexOf("  raw readings")));
    }

    private static String around(String bytes) {
        int at = bytes.indexOf(SECRET);
        return bytes.substring(Math.max(0, at - 200), Math.min(bytes.length(), at + 50));
    }

    @Test
    void theCopyOpensIsClosedAndSaysWhatTheSessionSays() throws Exception {
        List<Recorded> events = secretive();
        CopyToShare copy = copy(events, NOTHING);
        Path folder = Files.createDirectory(home.resolve("copy"));
        Files.write(folder.resolve("journal.jsonl"), Rewritten.bytes(copy.events()));
        Reading reading = JournalReader.read(folder);
        assertEquals(List.of(), reading.damage());
        assertTrue(reading.torn().isEmpty());
        assertTrue(reading.state().course().closed());
        assertEquals(copy.state(), reading.state());
        State whole = Evolve.fold(events);
        assertEquals(List.of(), copy.differs(whole));
        assertEquals(sentences(whole), sentences(reading.state()));
        assertEquals(whole.captured().looks(), reading.state().captured().looks());
        assertEquals(
                whole.captured().entries().stream().map(Entry::number).toList(),
                reading.state().captured().entries().stream().map(Entry::number).toList());
    }

    private static List<String> sentences(State state) {
        return Analysis.of(state).comparisons().stream().map(Comparison::sentence).toList();
    }

    @Test
    void whatIsAskedForIsKeptAndACodeStandsForTheWearer() {
        CopyToShare.Terms terms =
                new CopyToShare.Terms(Set.of("vital-capacity"), Optional.of("W1"));
        State copy = copy(DEMONSTRATION, terms).state();
        assertEquals("W1", value(copy, "wearer"));
        assertEquals("4.75 L", value(copy, "vital-capacity"));
        assertEquals("small", value(copy, "mask-size"));
        assertEquals("", value(copy(DEMONSTRATION, NOTHING).state(), "vital-capacity"));
        assertEquals("", value(copy(DEMONSTRATION, NOTHING).state(), "wearer"));
        assertFalse(copy(DEMONSTRATION, terms).told().contains("Without the vital capacity"));
    }

    private static String value(State state, String id) {
        return state.captured().entries().stream()
                .filter(each -> each.slot() instanceof Slot.Field field && field.id().equals(id))
                .map(each -> each.value().toString())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatStandsElsewhereAllTheSameIsTold() {
        List<Recorded> events =
                DEMONSTRATION.stream()
                        .map(
                                each ->
                                        each.event() instanceof Event.EntryCaptured captured
                                                        && captured.entry() == 1
                                                ? new Recorded(
                                                        each.number(),
                                                        each.wall(),
                                                        each.at(),
                                                        new Event.EntryCaptured(
                                                                1,
                                                                captured.slot(),
                                                                new Value.Said("workshop"),
                                                                captured.source()))
                                                : each)
                        .toList();
        assertEquals(List.of("workshop"), copy(events, NOTHING).still());
    }

    /** The program's own words tell nothing of the tester. */
    @Test
    void reasonsThatTheProgramGaveAreKept() {
        Leaving leaving = new Leaving(Evolve.fold(DEMONSTRATION), NOTHING);
        assertEquals("the plan is used up", leaving.reason("the plan is used up"));
        ToShare toShare = new ToShare(leaving);
        toShare.voidOffered(new Event.VoidOffered(7, "shorter than 1 s"));
        assertEquals(
                Optional.of(new Event.EntryVoided(7, "shorter than 1 s")),
                toShare.entryVoided(new Event.EntryVoided(7, "shorter than 1 s")));
        assertEquals(
                Optional.of(new Event.EntryVoided(8, "reason left out")),
                toShare.entryVoided(new Event.EntryVoided(8, "shorter than 1 s")));
        String check =
                Evolve.fold(DEMONSTRATION).protocol().donning().stream()
                        .filter(Step.Checklist.class::isInstance)
                        .map(step -> ((Step.Checklist) step).items().get(0).text())
                        .findFirst()
                        .orElseThrow();
        assertEquals("check failed: " + check, leaving.reason("check failed: " + check));
        assertEquals(
                "check failed: " + check, leaving.reason("check failed: " + check + " (my nose)"));
        assertEquals("reason left out", leaving.reason("enough, says my doctor"));
    }
}
