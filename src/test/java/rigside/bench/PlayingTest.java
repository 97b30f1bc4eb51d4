package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.protocol.Protocol;
import rigside.rig.SimulatedRig;
import rigside.rig.SoundVolume;
import rigside.rig.Wearer;
import rigside.runner.Faults;
import rigside.runner.Ledger;
import rigside.runner.Rehearsal;
import rigside.runner.Tester;
import rigside.screen.View;
import rigside.session.Event;
import rigside.session.Story;

/** Rehearsals played in the screens, by a clock that the test passes in. */
class PlayingTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    private static final double SPEED = 20;

    private static final double FAST = 100;

    private final DefaultVirtualTerminal terminal =
            new DefaultVirtualTerminal(new TerminalSize(80, 24));

    private final List<String> pictures = new ArrayList<>();

    /** Reading a picture takes longer than drawing it: where pictures matter only. */
    private Runnable watched = () -> {};

    /** Never waits: what would have been waited for has passed. */
    private final class Passed implements Playing.Pace {
        private final List<KeyStroke> keys;
        private final int from;
        private long nanos;
        private int asked;

        /** Keys that come from a picture on, one a picture. */
        Passed(int from, KeyStroke... keys) {
            this.from = from;
            this.keys = new ArrayList<>(List.of(keys));
        }

        @Override
        public long nanos() {
            return nanos;
        }

        @Override
        public Optional<Pressed> next(long waitNanos) {
            watched.run();
            nanos += Math.max(waitNanos, 1000);
            asked++;
            return asked < from || keys.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Pressed(keys.remove(0), nanos, Pressed.FIRST));
        }
    }

    private String picture() {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < 24; row++) {
            for (int column = 0; column < 80; column++) {
                text.append(terminal.getCharacter(column, row).getCharacterString());
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static final class Kept implements Ledger {
        private final List<String> lines = new ArrayList<>();

        @Override
        public void append(List<Event> events, ZonedDateTime wall, long at) {
            events.forEach(event -> lines.add(wall + " " + at + " " + event));
        }
    }

    private static Rehearsal begun(Kept kept, boolean gauge, String... faults) throws IOException {
        Wearer plain = Wearer.plain(List.of("bare", "disc"));
        Wearer wearer =
                new Wearer(
                        plain.title(),
                        plain.ambient(),
                        plain.ambientSpread(),
                        plain.conditions(),
                        plain.otherwise(),
                        gauge);
        SimulatedRig rig = new SimulatedRig(wearer, 11);
        String text = Story.text("/session/small.yaml");
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "small.yaml", text, 11, rig.words(), "", true, 1);
        Protocol protocol = Story.opened(opening).state().protocol();
        List<String> problems = new ArrayList<>();
        List<Faults.Asked> asked = new ArrayList<>();
        for (String fault : faults) {
            Faults.read(protocol, fault, problems).ifPresent(asked::add);
        }
        assertEquals(List.of(), problems);
        Tester tester = new Tester(rig, Faults.of(protocol, asked, 11));
        return Rehearsal.begin(kept, tester, MORNING, opening);
    }

    private boolean played(Rehearsal rehearsal, Playing.Pace pace, double speed)
            throws IOException {
        Settings settings =
                new Settings(
                        new View.Style(View.Colours.NONE, false),
                        new Loudness() {
                            @Override
                            public SoundVolume volume() {
                                return new SoundVolume(5, true);
                            }

                            @Override
                            public void remember(SoundVolume volume) {}
                        },
                        Optional.empty(),
                        0,
                        Optional.empty(),
                        "test");
        try (Console console = new Console(terminal, new Presses(), () -> {})) {
            return Playing.run(console, pace, rehearsal, speed, settings);
        }
    }

    private static List<String> withoutScreens(boolean gauge, String... faults) throws IOException {
        Kept kept = new Kept();
        Rehearsal rehearsal = begun(kept, gauge, faults);
        while (!rehearsal.isOver()) {
            rehearsal.next();
        }
        return kept.lines;
    }

    /** However often the picture was drawn meanwhile: to the event, and to the nanosecond. */
    @ParameterizedTest
    @ValueSource(doubles = {100, 700})
    void theSessionIsTheOneWithoutScreens(double speed) throws IOException {
        Kept kept = new Kept();
        assertTrue(played(begun(kept, false), new Passed(0), speed));
        assertEquals(withoutScreens(false), kept.lines);
    }

    @Test
    void withAGaugeItIsTheSameToo() throws IOException {
        Kept kept = new Kept();
        assertTrue(played(begun(kept, true), new Passed(0), FAST));
        assertEquals(withoutScreens(true), kept.lines);
    }

    @Test
    void withFaultsItIsTheSameTooAndTheirReasonsAreSeenAsTheyAreTyped() throws IOException {
        watched = () -> pictures.add(picture());
        String[] faults = {"failed-seal-check:1", "not-held:2", "left-out:3", "stopped:3"};
        Kept kept = new Kept();
        assertTrue(played(begun(kept, false, faults), new Passed(0), FAST));
        assertEquals(withoutScreens(false, faults), kept.lines);
        assertTrue(pictures.stream().anyMatch(each -> each.contains("Why is it left out: ")));
        assertTrue(pictures.stream().anyMatch(each -> each.contains("rehearsed: not read")));
    }

    @Test
    void everyPictureSaysThatItIsARehearsalWithInventedValues() throws IOException {
        watched = () -> pictures.add(picture());
        played(begun(new Kept(), true), new Passed(0), FAST);
        assertTrue(pictures.size() > 500, () -> String.valueOf(pictures.size()));
        assertEquals(
                List.of(),
                pictures.stream()
                        .filter(
                                each ->
                                        !each.contains("[rehearsal: invented values]")
                                                || !each.contains(
                                                        "[q][Esc] stop the rehearsal; at the bench:"))
                        .toList());
    }

    /** A key every 2 s of the session, five times slower than what is timed: half a second. */
    @Test
    void aKeyIsSeenForHalfASecondBeforeItIsPressed() throws IOException {
        Kept kept = new Kept();
        Rehearsal rehearsal = begun(kept, false);
        Passed pace = new Passed(0);
        long[] first = {0};
        Playing.Pace spied =
                new Playing.Pace() {
                    @Override
                    public long nanos() {
                        return pace.nanos();
                    }

                    @Override
                    public Optional<Pressed> next(long waitNanos) {
                        if (kept.lines.size() == 1) {
                            first[0] = pace.nanos() + waitNanos;
                        }
                        return pace.next(waitNanos);
                    }
                };
        played(rehearsal, spied, SPEED);
        assertEquals(0.5, first[0] / 1e9, 0.001);
    }

    @ParameterizedTest
    @ValueSource(strings = {"q", "escape", "end"})
    void oneKeyStopsItAndWhatWasPlayedIsKept(String which) throws IOException {
        KeyStroke key =
                switch (which) {
                    case "q" -> new KeyStroke('q', false, false);
                    case "escape" -> new KeyStroke(KeyType.Escape);
                    default -> new KeyStroke(KeyType.EOF);
                };
        Kept kept = new Kept();
        Rehearsal rehearsal = begun(kept, false);
        assertFalse(played(rehearsal, new Passed(300, key), SPEED));
        assertFalse(rehearsal.isOver());
        List<String> whole = withoutScreens(false);
        assertTrue(kept.lines.size() < whole.size());
        assertEquals(whole.subList(0, 10), kept.lines.subList(0, 10));
        String last = kept.lines.get(kept.lines.size() - 1);
        assertTrue(last.contains("SessionLeft"), last);
    }

    @Test
    void anyOtherKeyDoesNothingAndSaysSo() throws IOException {
        watched = () -> pictures.add(picture());
        Kept kept = new Kept();
        KeyStroke enter = new KeyStroke(KeyType.Enter);
        KeyStroke space = new KeyStroke(' ', false, false);
        KeyStroke stop = new KeyStroke('q', false, false);
        assertFalse(played(begun(kept, false), new Passed(100, enter, space, stop), FAST));
        assertEquals(withoutScreens(false).subList(0, 10), kept.lines.subList(0, 10));
        assertTrue(pictures.stream().anyMatch(each -> each.contains("presses its own keys")));
    }
}
