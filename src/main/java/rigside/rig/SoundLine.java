package rigside.rig;

import java.io.IOException;

/** Where samples go: a sound device, or what a test listens with. Used by one thread. */
interface SoundLine extends AutoCloseable {
    /** Takes samples; may wait until there is room for them. */
    void write(short[] samples, int from, int count) throws IOException;

    /** Drops what was written and is not heard yet. */
    void cut();

    @Override
    void close();

    /** Finds a line. */
    interface Opener {
        /**
         * A line ready for {@link ToneSamples#RATE} samples a second; may take long.
         *
         * @throws IOException if there is none; the message is for the tester
         */
        SoundLine open() throws IOException;
    }
}
