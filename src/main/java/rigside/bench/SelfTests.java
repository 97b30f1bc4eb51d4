package rigside.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import rigside.analysis.SelfTestWords;
import rigside.journal.SelfTestFile;
import rigside.rig.Cue;
import rigside.screen.SelfTestScreen;
import rigside.screen.SelfTestView;
import rigside.session.Event;

/** A self-test at the terminal. */
public final class SelfTests {
    private SelfTests() {}

    /**
     * Runs one and keeps what it finds.
     *
     * @param home the folder below which everything is kept
     * @param random decides when signals come
     * @return what was found; empty when it was left early, and nothing is kept
     * @throws IOException if it cannot be kept
     */
    public static Optional<Event.SelfTested> run(
            Console console, Settings settings, Path home, RandomGenerator random)
            throws IOException {
        try (Signals signals = Signals.of(Optional.empty(), console::bell)) {
            SelfTest test =
                    new SelfTest(
                            new Terminal(console, signals, settings),
                            random,
                            settings.style(),
                            settings.bounceSeconds());
            ZonedDateTime now = Wall.now();
            String terminal = Optional.ofNullable(System.getenv("TERM")).orElse("unknown");
            Optional<Event.SelfTested> found =
                    test.run(DateTimeFormatter.ISO_ZONED_DATE_TIME.format(now), terminal);
            if (found.isPresent()) {
                Path file = SelfTestFile.write(home, found.get(), now);
                test.tell(found.get(), "Kept in " + file + "; sessions record it.");
            }
            return found;
        }
    }

    /** What was found, in words, for the shell. */
    public static List<String> words(Event.SelfTested found) {
        return SelfTestWords.of(found);
    }

    private record Terminal(Console console, Signals signals, Settings settings)
            implements SelfTest.World {
        @Override
        public long nanos() {
            return System.nanoTime();
        }

        @Override
        public Optional<Pressed> next(long waitNanos) {
            return console.next(waitNanos);
        }

        @Override
        public void draw(SelfTestView view) {
            console.draw(graphics -> SelfTestScreen.draw(graphics, view));
        }

        @Override
        public void askTerminal() {
            console.askCursor();
        }

        @Override
        public String give(Cue cue) {
            return signals.give(List.of(cue), settings.sound().volume())
                    .map(Signals.Given::how)
                    .orElseThrow();
        }
    }
}
