package rigside.desk;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Work too slow for the thread that draws: begun beside it, asked for from time to time. */
final class Aside<T> {
    /** A thread of its own for each piece of work; none keeps the program from ending. */
    static final Executor THREADS =
            work -> {
                Thread thread = new Thread(work, "aside");
                thread.setDaemon(true);
                thread.start();
            };

    private final CompletableFuture<T> work;

    private Aside(CompletableFuture<T> work) {
        this.work = work;
    }

    static <T> Aside<T> begin(Executor executor, Supplier<T> work) {
        return new Aside<>(CompletableFuture.supplyAsync(work, executor));
    }

    /**
     * What came of it; empty while it goes on.
     *
     * @throws java.util.concurrent.CompletionException if the work had a fault
     */
    Optional<T> found() {
        return work.isDone() ? Optional.of(work.join()) : Optional.empty();
    }

    /**
     * The same, but waits for it a little, so that what is soon done is not drawn as undone first.
     *
     * @throws java.util.concurrent.CompletionException if the work had a fault
     */
    Optional<T> within(Duration patience) {
        try {
            work.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException goesOn) {
            return Optional.empty();
        } catch (InterruptedException left) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException fault) {
            throw new CompletionException(fault.getCause());
        }
        return found();
    }
}
