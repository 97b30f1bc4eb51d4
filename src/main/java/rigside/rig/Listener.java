package rigside.rig;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * The thread of one feed: opens its wire, stamps each line as it is complete, keeps it, hands it
 * over, and opens the wire again after it broke.
 */
final class Listener implements Runnable, AutoCloseable {
    private static final long AGAIN_MILLIS = 500;
    private static final long LONGEST_CLOSING_MILLIS = 1000;

    private final Wire.Opener opener;
    private final LongSupplier sessionTime;
    private final Kept kept;
    private final ArrivalQueue queue;
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread thread;
    private volatile Wire open;

    /**
     * A listener that does not listen yet.
     *
     * @param sessionTime session time now, in nanoseconds; asked by this thread
     */
    Listener(
            String feed,
            Wire.Opener opener,
            LongSupplier sessionTime,
            Kept kept,
            ArrivalQueue queue) {
        this.opener = opener;
        this.sessionTime = sessionTime;
        this.kept = kept;
        this.queue = queue;
        this.thread = new Thread(this, "feed " + feed);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    @Override
    public void run() {
        while (!isStopped()) {
            try (Wire wire = opener.open()) {
                open = wire;
                queue.put(new Arrival.Opened(sessionTime.getAsLong()));
                wire.firstLine().ifPresent(this::takeHeader);
                listen(wire);
                broke("it ended");
            } catch (IOException trouble) {
                broke(Faults.words(trouble));
            } catch (RuntimeException fault) {
                // A driver's mistake must not end the feed: it is opened again like any other.
                broke("its driver failed");
            } finally {
                open = null;
            }
            pause();
        }
    }

    private void listen(Wire wire) throws IOException {
        LineSplitter splitter = new LineSplitter(wire.isMidLine());
        byte[] bytes = new byte[8192];
        while (!isStopped()) {
            int count = wire.read(bytes);
            if (count < 0) {
                return;
            }
            if (count > 0) {
                long at = sessionTime.getAsLong();
                splitter.take(bytes, count, line -> take(line, at));
            }
        }
    }

    /** It is kept too: without their header the lines after it may mean nothing. */
    private void takeHeader(LineSplitter.Split line) {
        long at = sessionTime.getAsLong();
        queue.put(new Arrival.Before(at, line.text()));
        kept.keep(at, line.bytes(), queue::put);
    }

    private void take(LineSplitter.Split line, long at) {
        queue.put(new Arrival.Line(at, line.text(), line.whole()));
        kept.keep(at, line.bytes(), queue::put);
    }

    private void broke(String why) {
        if (!isStopped()) {
            queue.put(new Arrival.Broken(sessionTime.getAsLong(), why));
        }
    }

    private boolean isStopped() {
        return stop.getCount() == 0;
    }

    private void pause() {
        try {
            if (stop.await(AGAIN_MILLIS, TimeUnit.MILLISECONDS)) {
                return;
            }
        } catch (InterruptedException hurried) {
            stop.countDown();
        }
    }

    /** The wire is closed when this returns, unless the system does not let go of it. */
    @Override
    public void close() {
        stop.countDown();
        Wire wire = open;
        try {
            if (wire != null) {
                wire.close();
            }
            thread.join(LONGEST_CLOSING_MILLIS);
        } catch (IOException closedAnyway) {
            return;
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
