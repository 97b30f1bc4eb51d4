package rigside.rig;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Waiting for what another thread or program does, no longer than it may take. */
final class Patiently {
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(20);
    private static final long GLANCE_NANOS = TimeUnit.MILLISECONDS.toNanos(2);

    private Patiently() {}

    static void until(BooleanSupplier wanted, Supplier<String> otherwise) {
        long end = System.nanoTime() + LONGEST_NANOS;
        while (!wanted.getAsBoolean()) {
            if (System.nanoTime() > end) {
                fail("it did not come: " + otherwise.get());
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
    }
}
