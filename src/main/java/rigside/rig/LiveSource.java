package rigside.rig;

import java.util.function.Consumer;

/** A feed that a thread of its own listens to. */
record LiveSource(Listener listener, ArrivalQueue queue) implements Source {
    @Override
    public void drain(long now, Consumer<Arrival> to) {
        queue.drain().forEach(to);
    }

    @Override
    public long dropped() {
        return queue.dropped();
    }

    @Override
    public void close() {
        listener.close();
    }
}
