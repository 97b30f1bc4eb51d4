package rigside.rig;

import java.io.IOException;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The computer's sound device; the only class that knows the sound library. */
final class SoundDevice implements SoundLine {
    /** A tenth of a second: what is cut is not heard for longer than that. */
    private static final int BUFFER_BYTES = ToneSamples.RATE / 10 * Short.BYTES;

    private final SourceDataLine line;

    private SoundDevice(SourceDataLine line) {
        this.line = line;
    }

    /** Asks first whether there is any: where there is none the library throws what it pleases. */
    static SoundLine open() throws IOException {
        AudioFormat format = new AudioFormat(ToneSamples.RATE, Short.SIZE, 1, true, false);
        DataLine.Info wanted = new DataLine.Info(SourceDataLine.class, format);
        if (!AudioSystem.isLineSupported(wanted)) {
            throw new IOException("no sound device answers");
        }
        try {
            SourceDataLine line = (SourceDataLine) AudioSystem.getLine(wanted);
            line.open(format, BUFFER_BYTES);
            line.start();
            return new SoundDevice(line);
        } catch (LineUnavailableException taken) {
            throw new IOException("the sound device is taken: " + taken.getMessage(), taken);
        }
    }

    @Override
    public void write(short[] samples, int from, int count) throws IOException {
        byte[] bytes = new byte[count * Short.BYTES];
        for (int i = 0; i < count; i++) {
            bytes[2 * i] = (byte) samples[from + i];
            bytes[2 * i + 1] = (byte) (samples[from + i] >> Byte.SIZE);
        }
        if (line.write(bytes, 0, bytes.length) < bytes.length && !line.isOpen()) {
            throw new IOException("the sound device has gone away");
        }
    }

    @Override
    public void cut() {
        line.flush();
    }

    @Override
    public void close() {
        line.close();
    }
}
