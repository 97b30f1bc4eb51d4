package rigside.rig;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Says cues by a command of the tester's: it is run once for each, by the shell, with the words as
 * a line of its standard input. It never holds up who asks; what is said later cuts what is said
 * now, and a command that takes too long is ended.
 */
public final class SpokenCommand implements AutoCloseable {
    /** Longer than any cue takes to say. */
    private static final long PATIENCE_SECONDS = 10;

    /** How often it is asked whether something else is to be said. */
    private static final long LOOK_MILLIS = 20;

    private final String command;
    private final long patienceMillis;
    private final Executor worker;
    private final Runnable end;
    private final AtomicInteger latest = new AtomicInteger();
    private final AtomicReference<Optional<String>> trouble =
            new AtomicReference<>(Optional.empty());
    private volatile boolean failed;

    private SpokenCommand(String command, long patienceMillis, Executor worker, Runnable end) {
        this.command = command;
        this.patienceMillis = patienceMillis;
        this.worker = worker;
        this.end = end;
    }

    /** Speaks by a command line for the shell. */
    public static SpokenCommand of(String command) {
        ExecutorService thread =
                Executors.newSingleThreadExecutor(
                        work -> {
                            Thread made = new Thread(work, "spoken");
                            made.setDaemon(true);
                            return made;
                        });
        long patience = TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS);
        return new SpokenCommand(command, patience, thread, thread::shutdownNow);
    }

    /**
     * Speaks by a command line.
     *
     * @param worker does one thing after the other
     */
    static SpokenCommand on(Executor worker, String command, long patienceMillis) {
        return new SpokenCommand(command, patienceMillis, worker, () -> {});
    }

    /** Says the words, as soon as it can; what is said now or waits to be is dropped. */
    public void say(String words) {
        int turn = latest.incrementAndGet();
        worker.execute(
                () -> {
                    if (turn == latest.get()) {
                        speak(words, turn);
                    }
                });
    }

    /** What went wrong, in words for the tester, told once: the first time only. */
    public Optional<String> trouble() {
        return trouble.getAndSet(Optional.empty());
    }

    private void speak(String words, int turn) {
        try {
            Process process =
                    new ProcessBuilder("sh", "-c", command)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            try {
                write(process, words);
                boolean ended = ends(process, turn);
                if (turn == latest.get()) {
                    judge(process, ended);
                }
            } finally {
                kill(process);
            }
        } catch (IOException broken) {
            fail(broken.getMessage());
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether it ends by itself, in time and before something else is to be said. */
    private boolean ends(Process process, int turn) throws InterruptedException {
        for (long left = patienceMillis; left > 0 && turn == latest.get(); left -= LOOK_MILLIS) {
            if (process.waitFor(Math.min(left, LOOK_MILLIS), TimeUnit.MILLISECONDS)) {
                return true;
            }
        }
        return false;
    }

    private void judge(Process process, boolean ended) {
        if (!ended) {
            fail("it takes longer than " + patienceMillis / 1000.0 + " s");
        } else if (process.exitValue() != 0) {
            fail("it ends with " + process.exitValue());
        }
    }

    /** A command that does not read its input is no trouble as long as it ends well. */
    private static void write(Process process, String words) {
        try (OutputStream input = process.getOutputStream()) {
            input.write((words + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException unread) {
            // How it ends tells.
        }
    }

    private void fail(String why) {
        if (!failed) {
            failed = true;
            trouble.set(
                    Optional.of(
                            "spoken cues: '"
                                    + command
                                    + "' does not work, "
                                    + why
                                    + "; try it in a terminal"));
        }
    }

    private static void kill(Process process) {
        if (process.isAlive()) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    @Override
    public void close() {
        latest.incrementAndGet();
        end.run();
    }
}
