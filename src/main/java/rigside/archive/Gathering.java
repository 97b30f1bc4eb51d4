package rigside.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;

/** Gathers all sessions: from the index what has not changed, and from the journals the others. */
final class Gathering {
    /** So many journals at a time are in memory, each at most as long as a journal may be. */
    private static final int MOST_THREADS = 4;

    /** After so many journals the index is written, so that a long reading is not done twice. */
    private static final int BATCH = 500;

    private final Path sessions;
    private final IndexFile file;
    private final Progress progress;

    private final List<Held> held = new ArrayList<>();
    private final List<InFolder> changed = new ArrayList<>();
    private int read;

    Gathering(Path sessions, String version, Progress progress) {
        this.sessions = sessions;
        this.file = new IndexFile(sessions, version);
        this.progress = progress;
    }

    /**
     * All sessions, the one begun last first.
     *
     * @throws IOException if the folder of all sessions cannot be read
     */
    List<Held> all() throws IOException {
        if (!Files.isDirectory(sessions)) {
            return List.of();
        }
        List<InFolder> found = InFolder.in(sessions);
        Index index = file.read().map(Index::of).orElse(Index.NONE);
        Map<String, InFolder> left = new HashMap<>();
        for (InFolder each : found) {
            // Names that this system cannot tell apart: the index is not asked about them.
            Optional.ofNullable(left.put(each.name(), each)).ifPresent(changed::add);
        }
        index.still(left).stream().map(Held::of).forEach(held::add);
        held.forEach(each -> left.remove(each.session().name()));
        changed.addAll(left.values());
        boolean dropped = held.size() < index.size();
        if (changed.isEmpty() && dropped) {
            write();
        }
        readChanged(dropped);
        return sorted();
    }

    private void readChanged(boolean dropped) {
        if (changed.isEmpty()) {
            return;
        }
        int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            boolean stale = dropped;
            for (int from = 0; from < changed.size(); from += BATCH) {
                List<InFolder> batch =
                        changed.subList(from, Math.min(from + BATCH, changed.size()));
                List<Held> now =
                        pool.submit(() -> batch.parallelStream().map(this::read).toList()).join();
                held.addAll(now);
                if (stale || now.stream().anyMatch(Held::isKept)) {
                    write();
                }
                stale = false;
            }
        } finally {
            pool.shutdown();
        }
    }

    private Held read(InFolder found) {
        Held now = Held.read(found, Instant.now());
        tell();
        return now;
    }

    private synchronized void tell() {
        read++;
        progress.reading(read, changed.size());
    }

    private void write() {
        // In this order they hardly have to be sorted the next time.
        List<Index.Pieces> pieces =
                sorted().stream()
                        .filter(Held::isKept)
                        .flatMap(each -> each.pieces().stream())
                        .toList();
        file.write(Index.written(pieces));
    }

    private List<Held> sorted() {
        record Begun(Instant at, Held held) {}
        Stream<Begun> begun = held.stream().map(each -> new Begun(each.begun(), each));
        return begun.sorted(
                        Comparator.comparing(Begun::at)
                                .thenComparing(each -> each.held().session().folder())
                                .reversed())
                .map(Begun::held)
                .toList();
    }
}
