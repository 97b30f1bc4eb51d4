package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.Terminal;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import com.googlecode.lanterna.terminal.virtual.VirtualTerminalListener;
import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.rig.Rig;
import rigside.rig.SoundVolume;
import rigside.runner.Ledger;
import rigside.runner.Rehearsed;
import rigside.runner.Runner;
import rigside.runner.SessionTime;
import rigside.screen.View;
import rigside.session.Event;
import rigside.session.Source;
import rigside.session.State;
import rigside.session.Story;

/** Whole sittings: the keys lie ready, and the last of them leaves. */
class SittingTest {
    private static final KeyStroke LEAVE = new KeyStroke('q', false, false);
    private static final ZonedDateTime WALL =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    private final Kept kept = new Kept();
    private final Presses keys = new Presses();

    private final List<SoundVolume> remembered = new ArrayList<>();

    private final Loudness sound =
            new Loudness() {
                @Override
                public SoundVolume volume() {
                    return SoundVolume.USUAL;
                }

                @Override
                public void remember(SoundVolume volume) {
                    remembered.add(volume);
                }
            };

    private Optional<Event.Paper> paper = Optional.empty();

    /** The keys come at once, and are meant as they come. */
    private double bounce;

    /** A journal in memory, whose disk can be full. */
    private static final class Kept implements Ledger {
        private final List<Event> events = new ArrayList<>();
        private final List<Long> times = new ArrayList<>();
        private int failures;

        @Override
        public void append(List<Event> more, ZonedDateTime wall, long at) throws IOException {
            if (failures > 0 && !events.isEmpty()) {
                failures--;
                throw new IOException("the disk is full");
            }
            events.addAll(more);
            times.add(at);
        }
    }

    private void sit() throws IOException {
        DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        1,
                        "typed",
                        "",
                        false,
                        1,
                        "",
                        paper);
        Runner runner = Runner.open(kept, Rig.typed(), () -> WALL, opening);
        SessionTime time = new SessionTime(System.nanoTime(), 0, 1);
        try (Console console = new Console(terminal, keys, () -> {})) {
            Sitting.run(console, runner, time, settings(), Optional.of("welcome back"));
        }
    }

    private Settings settings() {
        return new Settings(
                new View.Style(View.Colours.NONE, false),
                sound,
                Optional.empty(),
                bounce,
                Optional.empty(),
                "test");
    }

    private List<String> happened() {
        return kept.events.stream().map(event -> event.getClass().getSimpleName()).toList();
    }

    @Test
    void keysLeadToEventsInTheirOrder() throws IOException {
        keys.press(KeyType.Enter).type("W1").press(KeyType.Enter).press(KeyType.EOF);
        sit();
        assertEquals(
                List.of("SessionOpened", "CautionsAcknowledged", "EntryCaptured", "SessionLeft"),
                happened());
    }

    /** Whatever the clock says: nothing is waited for. */
    @Test
    void aFormIsTypedInByItsKeysAlone() throws IOException {
        paper = Optional.of(new Event.Paper(Optional.empty()));
        keys.press(KeyType.Enter);
        typed("W1", "21", "");
        typed("", "", "", "", "");
        typed("", "4000", "40", "", "40", "4000");
        keys.type("1,2").press(KeyType.Enter).type("y").type("n");
        keys.type("6.7").press(KeyType.Enter).type("n");
        keys.type("6.7").press(KeyType.Enter).type("y");
        typed("");
        keys.press(LEAVE);
        sit();
        assertEquals(
                List.of(1.2, 6.7, 6.7),
                kept.events.stream()
                        .filter(Event.TrialStopped.class::isInstance)
                        .map(event -> ((Event.TrialStopped) event).seconds())
                        .toList());
        assertEquals(1, happened().stream().filter("VoidOffered"::equals).count());
        assertEquals(1, happened().stream().filter("EntryVoided"::equals).count());
        assertEquals(
                List.of("DonningCompleted", "SessionLeft"),
                happened().subList(happened().size() - 2, happened().size()));
        assertTrue(
                kept.events.stream()
                        .filter(Event.EntryCaptured.class::isInstance)
                        .allMatch(event -> ((Event.EntryCaptured) event).source() == Source.TYPED));
    }

    /** Lines, each finished with Enter. */
    private void typed(String... lines) {
        for (String line : lines) {
            keys.type(line).press(KeyType.Enter);
        }
    }

    @Test
    void timeNeverRunsBackwards() throws IOException {
        keys.press(KeyType.Enter).type("W1").press(KeyType.Enter).type("21").press(KeyType.Enter);
        keys.press(KeyType.EOF);
        sit();
        assertEquals(kept.times.stream().sorted().toList(), kept.times);
        assertTrue(kept.times.size() > 3);
    }

    @Test
    void theKeyToLeaveLeaves() throws IOException {
        keys.press(LEAVE);
        sit();
        assertEquals(List.of("SessionOpened", "SessionLeft"), happened());
    }

    @Test
    void whatIsNotOnDiskIsTriedAgainWithEnter() throws IOException {
        kept.failures = 1;
        keys.press(KeyType.Enter).press(KeyType.Enter).press(KeyType.EOF);
        sit();
        assertEquals(List.of("SessionOpened", "CautionsAcknowledged", "SessionLeft"), happened());
    }

    @Test
    void whatIsNotOnDiskIsGivenUpOnlyWhenAskedTwice() throws IOException {
        kept.failures = Integer.MAX_VALUE;
        keys.press(KeyType.Enter).press(LEAVE).press(LEAVE);
        sit();
        assertEquals(List.of("SessionOpened"), happened());
    }

    @Test
    void aTerminalThatIsGoneIsLeftAtOnceWhateverTheDiskSays() throws IOException {
        kept.failures = Integer.MAX_VALUE;
        keys.press(KeyType.Enter).press(KeyType.EOF);
        sit();
        assertEquals(List.of("SessionOpened"), happened());
    }

    @Test
    void theVolumeIsRememberedWhenAKeyChangesIt() throws IOException {
        keys.press(KeyType.F1).type("-sx").press(KeyType.EOF);
        sit();
        assertEquals(List.of(new SoundVolume(7, false), new SoundVolume(7, true)), remembered);
    }

    /** Thirty a second, as a terminal repeats it. */
    @Test
    void aKeyHeldDownIsOnePress() throws IOException {
        bounce = 0.15;
        for (int i = 0; i < 90; i++) {
            keys.press(KeyType.Enter);
        }
        keys.press(KeyType.EOF);
        sit();
        assertEquals(List.of("SessionOpened", "CautionsAcknowledged", "SessionLeft"), happened());
    }

    @Test
    void whatIsTypedMayRepeat() throws IOException {
        bounce = 0.15;
        keys.press(KeyType.Enter).type("WWW").press(KeyType.Enter).press(KeyType.EOF);
        sit();
        Event.EntryCaptured captured = (Event.EntryCaptured) kept.events.get(2);
        assertEquals("WWW", captured.value().toString());
    }

    /** Up to the purge, which a press starts: with or without a sound device that is kept. */
    @Test
    void whatIsCuedIsKept() throws IOException {
        keys.press(KeyType.Enter).type("W1").press(KeyType.Enter).type("21").press(KeyType.Enter);
        keys.press(KeyType.Enter).press(KeyType.Enter);
        keys.type("yyy").press(KeyType.Enter).press(KeyType.EOF);
        sit();
        int started = happened().indexOf("CountdownStarted");
        assertEquals("Cued", happened().get(started + 1));
        assertEquals("start", ((Event.Cued) kept.events.get(started + 1)).cue());
    }

    /** The first line is a donning's, which takes neither key: the page has to say what does. */
    @Test
    void whoCorrectsAClosedSessionIsToldToChooseAnEntry() throws IOException {
        DefaultVirtualTerminal terminal = new DefaultVirtualTerminal(new TerminalSize(80, 24));
        List<String> pictures = new ArrayList<>();
        terminal.addVirtualTerminalListener(
                new VirtualTerminalListener() {
                    @Override
                    public void onFlush() {
                        pictures.add(picture(terminal));
                    }

                    @Override
                    public void onBell() {}

                    @Override
                    public void onClose() {}

                    @Override
                    public void onResized(Terminal resized, TerminalSize size) {}
                });
        State closed =
                Rehearsed.withoutDifference("small.yaml", Story.text("/session/small.yaml"), 1)
                        .end();
        Runner runner = Runner.correcting(kept, () -> WALL, closed, 0);
        keys.press(LEAVE);
        try (Console console = new Console(terminal, keys, () -> {})) {
            SessionTime time = new SessionTime(System.nanoTime(), 0, 1);
            Sitting.correct(console, runner, time, settings());
        }
        assertTrue(
                pictures.stream().anyMatch(each -> each.contains("> choose the entry that")),
                pictures.toString());
        assertEquals(List.of(), kept.events);
    }

    private static String picture(DefaultVirtualTerminal terminal) {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < 24; row++) {
            for (int column = 0; column < 80; column++) {
                text.append(terminal.getCharacter(column, row).getCharacterString());
            }
            text.append('\n');
        }
        return text.toString();
    }
}
