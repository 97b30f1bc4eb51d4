package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class SoundPlayerTest {
    private final Queue<Runnable> work = new ArrayDeque<>();
    private final Tape tape = new Tape();
    private final SoundPlayer player = SoundPlayer.on(() -> tape, work::add, () -> {});

    /** A line that keeps what it is given. */
    private static final class Tape implements SoundLine {
        private final List<Short> samples = new ArrayList<>();
        private Runnable interruption = () -> {};
        private int interruptAt = Integer.MAX_VALUE;
        private boolean broken;
        private int cuts;
        private boolean closed;

        @Override
        public void write(short[] given, int from, int count) throws IOException {
            if (broken) {
                throw new IOException("the plug was pulled");
            }
            for (int i = from; i < from + count; i++) {
                samples.add(given[i]);
            }
            if (samples.size() >= interruptAt) {
                interruptAt = Integer.MAX_VALUE;
                interruption.run();
            }
        }

        @Override
        public void cut() {
            cuts++;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    private void works() {
        while (!work.isEmpty()) {
            work.remove().run();
        }
    }

    private short[] played() {
        short[] played = new short[tape.samples.size()];
        for (int i = 0; i < played.length; i++) {
            played[i] = tape.samples.get(i);
        }
        return played;
    }

    @Test
    void aCueReachesTheLineSampleForSample() {
        works();
        assertTrue(player.play(Cue.HALF_WAY, 0.7));
        works();
        assertTrue(Arrays.equals(ToneSamples.of(Cue.HALF_WAY, 0.7), played()));
        assertEquals(Optional.empty(), player.silence());
    }

    @Test
    void nothingWaitsForADeviceThatIsNotFoundYet() {
        assertFalse(player.play(Cue.GO, 1));
        assertTrue(player.silence().isPresent());
        works();
        assertEquals(0, tape.samples.size(), "and it is not sounded late");
    }

    /** The old one stops within a piece of 20 ms, and what the line still holds is dropped. */
    @Test
    void aNewCueCutsTheOneBefore() {
        works();
        tape.interruptAt = ToneSamples.count(50);
        tape.interruption = () -> player.play(Cue.STOP, 1);
        player.play(Cue.LAST_SECONDS, 1);
        works();
        int before = played().length - ToneSamples.of(Cue.STOP, 1).length;
        assertTrue(before <= ToneSamples.count(70), () -> before + " samples of the old one");
        assertEquals(2, tape.cuts);
    }

    @Test
    void whereNoDeviceAnswersTheReasonIsToldAndTheBellIsLeftToRing() {
        SoundPlayer silent =
                SoundPlayer.on(
                        () -> {
                            throw new IOException("no sound device answers");
                        },
                        Runnable::run,
                        () -> {});
        assertFalse(silent.play(Cue.GO, 1));
        assertEquals(Optional.of("no sound device answers"), silent.silence());
    }

    /** The library throws what it pleases where there is nothing to throw at. */
    @Test
    void noFailureOfTheLibraryComesThrough() {
        for (Throwable each :
                List.of(
                        new IllegalArgumentException("no line matching"),
                        new NullPointerException(),
                        new NoClassDefFoundError("javax/sound/sampled/AudioSystem"),
                        new ExceptionInInitializerError("no mixer"))) {
            SoundPlayer silent =
                    SoundPlayer.on(
                            () -> {
                                throwAny(each);
                                return tape;
                            },
                            Runnable::run,
                            () -> {});
            assertFalse(silent.play(Cue.GO, 1));
            assertTrue(silent.silence().isPresent());
        }
    }

    private static void throwAny(Throwable any) {
        if (any instanceof RuntimeException exception) {
            throw exception;
        }
        throw (Error) any;
    }

    @Test
    void aDeviceThatIsPulledOutLeavesTheRestToTheBell() {
        works();
        tape.broken = true;
        assertTrue(player.play(Cue.GO, 1), "not known yet");
        works();
        assertFalse(player.play(Cue.STOP, 1));
        assertEquals(Optional.of("the plug was pulled"), player.silence());
    }

    @Test
    void closingStopsWhatIsSoundingAndClosesTheLine() {
        works();
        tape.interruptAt = ToneSamples.count(50);
        tape.interruption = player::close;
        player.play(Cue.LAST_SECONDS, 1);
        works();
        assertTrue(tape.closed);
        assertTrue(tape.samples.size() <= ToneSamples.count(70));
    }

    /** With or without a sound device here: asking for one must neither hold up nor throw. */
    @Test
    void theRealDeviceIsAskedWithoutHarm() {
        try (SoundPlayer real = SoundPlayer.onDevice()) {
            real.play(Cue.LEAD_IN, 0);
        }
    }
}
