package rigside.rig;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A named pipe. It is opened for writing too, so that opening does not wait for a writer, and
 * writers may come and go. A read waits until bytes come or another thread closes the wire.
 */
final class PipeWire implements Wire {
    private final FileChannel channel;

    private PipeWire(FileChannel channel) {
        this.channel = channel;
    }

    static Wire open(Path pipe) throws IOException {
        if (!Files.exists(pipe)) {
            throw new IOException("there is no such pipe");
        }
        if (Files.isRegularFile(pipe) || Files.isDirectory(pipe)) {
            throw new IOException("it is no pipe; write 'file:' for a file that grows");
        }
        return new PipeWire(
                FileChannel.open(
                        pipe.toRealPath(new LinkOption[0]),
                        StandardOpenOption.READ,
                        StandardOpenOption.WRITE));
    }

    @Override
    public int read(byte[] into) throws IOException {
        return channel.read(ByteBuffer.wrap(into));
    }

    @Override
    public boolean isMidLine() {
        return false;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
