package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.analysis.SelfTestWords;
import rigside.rig.Cue;
import rigside.screen.SelfTestView;
import rigside.screen.View;
import rigside.session.Event;

/** Whole self-tests with a tester whose clock, ears and hands are made up. */
class SelfTestTest {
    private static final long MILLI = 1_000_000L;
    private static final View.Style STYLE = new View.Style(View.Colours.NONE, false);

    private final Tester tester = new Tester();

    /** Answers what is drawn, after a time of its own. */
    private static final class Tester implements SelfTest.World {
        private final Deque<Double> reactions = new ArrayDeque<>();
        private final List<SelfTestView> seen = new ArrayList<>();
        private final List<Cue> given = new ArrayList<>();
        private final Deque<Pressed> coming = new ArrayDeque<>();
        private double answer = 0.004;
        private Optional<Cue> deafTo = Optional.empty();
        private boolean impatient;
        private int lost;
        private String leaveAt = "never";
        private String how = "tones";
        private long now;

        @Override
        public long nanos() {
            return now;
        }

        @Override
        public Optional<Pressed> next(long waitNanos) {
            Pressed first = coming.peek();
            if (first == null || first.nanos() > now + waitNanos) {
                now += waitNanos;
                return Optional.empty();
            }
            now = Math.max(now, first.nanos());
            return Optional.of(coming.remove());
        }

        @Override
        public void draw(SelfTestView view) {
            seen.add(view);
            if (view.title().startsWith(leaveAt)) {
                press('q', 0.1);
            } else if ((shows(view, "WAIT") || shows(view, "LISTEN")) && impatient) {
                impatient = false;
                press(' ', 0.3);
            } else if (shows(view, "NOW")) {
                press(' ', reactions.remove());
            } else if (view.keys().get(0).help().equals("I heard it") && coming.isEmpty()) {
                press(Optional.of(given.get(given.size() - 1)).equals(deafTo) ? 'n' : 'y', 0.5);
            } else if (view.keys().get(0).help().equals("begin") && coming.isEmpty()) {
                press(new KeyStroke(KeyType.Enter), 1);
            }
        }

        private static boolean shows(SelfTestView view, String word) {
            return view.big().equals(Optional.of(word));
        }

        private void press(char character, double after) {
            press(new KeyStroke(character, false, false), after);
        }

        private void press(KeyStroke key, double after) {
            coming.add(new Pressed(key, now + Math.round(after * 1e9), Pressed.FIRST));
        }

        @Override
        public void askTerminal() {
            if (answer > 0 && lost-- <= 0) {
                press(new KeyStroke(KeyType.CursorLocation), answer);
            }
        }

        @Override
        public String give(Cue cue) {
            given.add(cue);
            if (shows(seen.get(seen.size() - 1), "LISTEN")) {
                press(' ', reactions.remove());
            }
            return how;
        }
    }

    private Optional<Event.SelfTested> run(Double... reactions) {
        tester.reactions.addAll(List.of(reactions));
        return new SelfTest(tester, new Random(1), STYLE, 0.15).run("2026-01-05T08:00Z", "xterm");
    }

    private Optional<Event.SelfTested> usual() {
        return run(0.2, 0.21, 0.22, 0.23, 0.24, 0.25, 0.26, 0.27, 0.28, 0.29);
    }

    @Test
    void everythingIsTriedAndFound() {
        tester.deafTo = Optional.of(Cue.HALF_WAY);
        Event.SelfTested found = usual().orElseThrow();
        assertEquals(50, found.answers());
        assertEquals(0.004, found.median(), 1e-12);
        assertEquals(List.of("half-way"), found.unheard());
        assertEquals(Cue.values().length - 1, found.heard().size());
        assertEquals(
                List.of(0.2, 0.21, 0.22, 0.23, 0.24, 0.25, 0.26, 0.27, 0.28, 0.29),
                found.reactions());
        assertEquals("tones", found.signal());
        assertEquals(
                Stream.concat(Stream.of(Cue.values()), Stream.generate(() -> Cue.GO).limit(10))
                        .toList(),
                tester.given);
    }

    @Test
    void whoDoesNotHearTheSignalIsShownItAndElseTheScreenDoesNotGiveItAway() {
        usual();
        assertTrue(tester.seen.stream().noneMatch(view -> Tester.shows(view, "NOW")));
        tester.deafTo = Optional.of(Cue.GO);
        assertEquals("picture", usual().orElseThrow().signal());
        assertTrue(tester.seen.stream().anyMatch(view -> Tester.shows(view, "NOW")));
    }

    @Test
    void aGuessAndAnAbsurdTryAreToldAndMadeAgain() {
        tester.impatient = true;
        Event.SelfTested found =
                run(0.2, 0.02, 0.22, 3.0, 0.24, 0.25, 0.26, 0.27, 0.28, 0.29, 0.2, 0.21)
                        .orElseThrow();
        assertEquals(10, found.reactions().size());
        assertTrue(found.reactions().stream().allMatch(each -> each >= 0.2 && each <= 0.29));
        List<String> said = tester.seen.stream().flatMap(view -> view.message().stream()).toList();
        assertEquals(
                List.of(
                        "that was before the signal; it is tried once more",
                        "that was before the signal; it is tried once more",
                        "that took 3.0 s; it is tried once more"),
                said);
    }

    @Test
    void aFirstAnswerThatGetsLostIsMadeUpFor() {
        tester.lost = 1;
        Event.SelfTested found = usual().orElseThrow();
        assertEquals(50, found.answers());
        assertEquals(0.004, found.most(), 1e-12);
    }

    @Test
    void aTerminalThatDoesNotAnswerIsSaidNotToBeKnown() {
        tester.answer = 0;
        Event.SelfTested found = usual().orElseThrow();
        assertEquals(0, found.answers());
        assertTrue(SelfTestWords.of(found).get(0).endsWith("so its delay is not known."));
    }

    @Test
    void whatWasFoundIsSaidInWords() {
        tester.how = "bell";
        assertEquals(
                List.of(
                        "Terminal: there and back in 4.0 ms (median of 50, the longest"
                                + " 4.0 ms).",
                        "Cues: all heard.",
                        "Reaction: a start and a stop by you spread by 43 ms (standard deviation,"
                                + " from 10 tries at bell). The usual figure is 100"
                                + " ms."),
                SelfTestWords.of(usual().orElseThrow()));
    }

    @Test
    void leftEarlyItHasFoundNothing() {
        for (String where : List.of("What is tried", "1 of 3", "2 of 3", "3 of 3")) {
            Tester leaving = new Tester();
            leaving.leaveAt = where;
            leaving.reactions.addAll(List.of(0.2, 0.3, 0.2, 0.3, 0.2, 0.3, 0.2, 0.3, 0.2, 0.3));
            assertFalse(
                    new SelfTest(leaving, new Random(1), STYLE, 0.15).run("", "").isPresent(),
                    where);
            assertTrue(leaving.now < 60_000 * MILLI, where);
        }
    }
}
