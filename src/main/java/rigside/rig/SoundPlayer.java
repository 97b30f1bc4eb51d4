package rigside.rig;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Plays cues without ever holding up who asks: a thread of its own looks for a sound device and
 * feeds it. A new cue cuts the one before. Whatever goes wrong there only makes it silent, with the
 * reason, and the caller rings a bell instead.
 */
public final class SoundPlayer implements AutoCloseable {
    /** So much is written at once: how long a new cue may have to wait for the old one to stop. */
    private static final int PIECE = ToneSamples.count(20);

    private final Executor worker;
    private final Runnable end;
    private final AtomicInteger latest = new AtomicInteger();
    private volatile Optional<SoundLine> line = Optional.empty();
    private volatile Optional<String> silence = Optional.of("the sound device was not found yet");

    private SoundPlayer(Executor worker, Runnable end) {
        this.worker = worker;
        this.end = end;
    }

    /** Plays on the computer's sound device, if one answers. */
    public static SoundPlayer onDevice() {
        ExecutorService thread =
                Executors.newSingleThreadExecutor(
                        work -> {
                            Thread made = new Thread(work, "sound");
                            made.setDaemon(true);
                            return made;
                        });
        return on(SoundDevice::open, thread, thread::shutdown);
    }

    /**
     * Plays on a line.
     *
     * @param worker does one thing after the other
     * @param end after which it takes no more
     */
    static SoundPlayer on(SoundLine.Opener opener, Executor worker, Runnable end) {
        SoundPlayer player = new SoundPlayer(worker, end);
        worker.execute(() -> player.open(opener));
        return player;
    }

    /**
     * Sounds a cue, now.
     *
     * @param gain from 0 to 1
     * @return false when there is nothing to sound it with, or not yet
     */
    public boolean play(Cue cue, double gain) {
        if (line.isEmpty()) {
            return false;
        }
        short[] samples = ToneSamples.of(cue, gain);
        int turn = latest.incrementAndGet();
        worker.execute(() -> sound(turn, samples));
        return true;
    }

    /** Why nothing is heard, in words; empty while a sound device answers. */
    public Optional<String> silence() {
        return silence;
    }

    private void open(SoundLine.Opener opener) {
        try {
            line = Optional.of(opener.open());
            silence = Optional.empty();
        } catch (IOException | RuntimeException | LinkageError none) {
            fail(none);
        }
    }

    private void sound(int turn, short[] samples) {
        try {
            if (line.isPresent()) {
                line.get().cut();
                write(line.get(), turn, samples);
            }
        } catch (IOException | RuntimeException | LinkageError broken) {
            fail(broken);
        }
    }

    private void write(SoundLine to, int turn, short[] samples) throws IOException {
        for (int from = 0; from < samples.length && turn == latest.get(); from += PIECE) {
            to.write(samples, from, Math.min(PIECE, samples.length - from));
        }
    }

    private void fail(Throwable why) {
        line = Optional.empty();
        silence =
                Optional.of(why.getMessage() == null ? "the sound device fails" : why.getMessage());
    }

    @Override
    public void close() {
        latest.incrementAndGet();
        worker.execute(
                () -> {
                    line.ifPresent(SoundLine::close);
                    line = Optional.empty();
                });
        end.run();
    }
}
