package rigside.rig;

import java.util.function.Consumer;

/** Where the arrivals of one feed come from; asked by the session's thread, which never waits. */
interface Source extends AutoCloseable {
    /** Hands over what arrived until now, in order. */
    void drain(long now, Consumer<Arrival> to);

    /** How many arrivals nobody came for in time. */
    default long dropped() {
        return 0;
    }

    @Override
    void close();
}
