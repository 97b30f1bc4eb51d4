package rigside.desk;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
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
}
