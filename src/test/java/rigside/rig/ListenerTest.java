package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class ListenerTest {
    private final BlockingQueue<String> bytes = new LinkedBlockingQueue<>();

    /** A wire in memory; {@code END} ends it and {@code CUT} breaks it. */
    private final class Memory implements Wire {
        @Override
        public int read(byte[] into) throws IOException {
            try {
                String next = bytes.poll(20, TimeUnit.MILLISECONDS);
                if (next == null) {
                    return 0;
                }
                if (next.equals("CUT")) {
                    throw new IOException("the plug was pulled");
                }
                byte[] some = next.getBytes(StandardCharsets.US_ASCII);
                System.arraycopy(some, 0, into, 0, some.length);
                return next.equals("END") ? -1 : some.length;
            } catch (InterruptedException stopped) {
                return -1;
            }
        }

        @Override
        public boolean isMidLine() {
            return false;
        }

        @Override
        public void close() {
            bytes.clear();
        }
    }

    @Test
    void aLineIsStampedWhenItIsComplete() {
        try (HeardLines heard = new HeardLines(Memory::new)) {
            bytes.add("12.");
            bytes.add("5\n13.5\n1");
            heard.hears("12.5", "13.5");
            List<Long> stamps =
                    heard.all().stream()
                            .filter(Arrival.Line.class::isInstance)
                            .map(Arrival::at)
                            .toList();
            assertEquals(stamps.get(0), stamps.get(1), "they became complete by the same bytes");
            long opened = heard.all().get(0).at();
            assertEquals(opened + 2, stamps.get(0), "the clock was asked when bytes came");
        }
    }

    @Test
    void aWireThatBreaksOrEndsIsOpenedAgain() {
        try (HeardLines heard = new HeardLines(Memory::new)) {
            bytes.add("1\n");
            heard.hears("1");
            bytes.add("CUT");
            heard.hears(Arrival.Opened.class, 2);
            bytes.add("2\n");
            heard.hears("1", "2");
            bytes.add("END");
            heard.hears(Arrival.Opened.class, 3);
            assertEquals(
                    List.of("the plug was pulled", "it ended"),
                    heard.all().stream()
                            .filter(Arrival.Broken.class::isInstance)
                            .map(each -> ((Arrival.Broken) each).why())
                            .toList());
        }
    }

    @Test
    void everyLineIsKeptAndAFullDiskIsToldOnceAndStopsNothing() {
        AtomicBoolean full = new AtomicBoolean();
        List<String> kept = new ArrayList<>();
        RawSink sink =
                (feed, at, line) -> {
                    if (full.get()) {
                        throw new IOException("no space left");
                    }
                    kept.add(feed + " " + line);
                };
        try (HeardLines heard = new HeardLines(Memory::new, sink)) {
            bytes.add("1\n");
            heard.hears("1");
            full.set(true);
            bytes.add("2\n3\n");
            heard.hears("1", "2", "3");
            heard.hears(Arrival.NotKept.class, 1);
            full.set(false);
            bytes.add("4\n");
            heard.hears(Arrival.Kept.class, 1);
            assertEquals(List.of("test 1", "test 4"), kept);
            assertEquals(1, heard.all().stream().filter(Arrival.NotKept.class::isInstance).count());
        }
    }

    @Test
    void aQueueNobodyComesForDropsTheOldestAndCountsThem() {
        ArrivalQueue queue = new ArrivalQueue();
        for (int count = 0; count < ArrivalQueue.MOST + 5; count++) {
            queue.put(new Arrival.Line(count, "", true));
        }
        List<Arrival> all = queue.drain();
        assertEquals(ArrivalQueue.MOST, all.size());
        assertEquals(5, all.get(0).at());
        assertEquals(5, queue.dropped());
        assertTrue(queue.drain().isEmpty());
    }
}
