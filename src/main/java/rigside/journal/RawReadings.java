package rigside.journal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The lines of a session's instruments as they came, one file a feed in the session's folder:
 * {@code raw-gauge.tsv}, each line the seconds of session time, a tab and the line. They are handed
 * to the system at once and so outlive the program, but not a power cut. When the session is closed
 * they are compressed: {@code raw-gauge.tsv.gz}. For any number of threads.
 */
public final class RawReadings implements AutoCloseable {
    private static final String BEGIN = "raw-";
    private static final String END = ".tsv";
    private static final String HEADER = "seconds\tline\n";
    private static final Pattern TIME = Pattern.compile("[0-9]{1,12}\\.[0-9]{6}");

    private final Path folder;
    private final Map<String, Growing> open = new HashMap<>();
    private boolean closed;

    private RawReadings(Path folder) {
        this.folder = folder;
    }

    /** Those of the session in a folder; a file is made when its first line comes. */
    public static RawReadings in(Path folder) {
        return new RawReadings(folder);
    }

    /** The file of a feed while the session is open. */
    public static Path file(Path folder, String feed) {
        return folder.resolve(BEGIN + feed + END);
    }

    /**
     * Keeps a line. After a failure the same call can be made again.
     *
     * @param feed the feed's id, fit for a file's name
     * @param at when it came, in nanoseconds of session time
     * @param line without its end, each character one of its bytes (Latin 1)
     * @throws IOException if it cannot be kept; the message says why, in words
     */
    public synchronized void keep(String feed, long at, String line) throws IOException {
        if (closed) {
            return;
        }
        try {
            Growing file = open.get(feed);
            if (file == null) {
                file = Growing.at(file(folder, feed));
                open.put(feed, file);
            }
            file.append(stamped(at, line));
        } catch (IOException trouble) {
            throw new IOException(Trouble.words(trouble), trouble);
        }
    }

    /** Takes lines over. */
    public interface Reader {
        /**
         * One line.
         *
         * @param at when it came, in nanoseconds of session time
         * @param line as it was given to be kept
         */
        void line(long at, String line);
    }

    /**
     * Reads what was kept of a feed so far, packed or not, in order; what cannot be read is passed
     * over.
     */
    public void read(String feed, Reader reader) {
        Path plain = file(folder, feed);
        Path file = Files.isRegularFile(plain) ? plain : packed(plain);
        if (!Files.isRegularFile(file)) {
            return;
        }
        try (InputStream bytes = Files.newInputStream(file);
                InputStream text = file.equals(plain) ? bytes : new GZIPInputStream(bytes);
                BufferedReader lines =
                        new BufferedReader(
                                new InputStreamReader(text, StandardCharsets.ISO_8859_1))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                int tab = line.indexOf('\t');
                if (tab > 0 && TIME.matcher(line.substring(0, tab)).matches()) {
                    long at = Math.round(Double.parseDouble(line.substring(0, tab)) * 1e9);
                    reader.line(at, line.substring(tab + 1));
                }
            }
        } catch (IOException noMoreThen) {
            return;
        }
    }

    /** The file of a closed session. */
    private static Path packed(Path plain) {
        return plain.resolveSibling(plain.getFileName() + ".gz");
    }

    private static byte[] stamped(long at, String line) {
        return (seconds(at) + "\t" + line + "\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    /** With six decimals. */
    private static String seconds(long nanos) {
        long micros = nanos / 1000;
        return micros / 1_000_000 + String.format(Locale.ROOT, ".%06d", micros % 1_000_000);
    }

    /** A file that grows; what a failure left half written is written over. */
    private static final class Growing {
        private final FileChannel channel;
        private long length;

        private Growing(FileChannel channel) throws IOException {
            this.channel = channel;
            this.length = channel.size();
        }

        static Growing at(Path file) throws IOException {
            Growing growing =
                    new Growing(
                            FileChannel.open(
                                    file,
                                    StandardOpenOption.CREATE,
                                    StandardOpenOption.READ,
                                    StandardOpenOption.WRITE));
            if (growing.length == 0) {
                growing.append(HEADER.getBytes(StandardCharsets.ISO_8859_1));
            } else if (!growing.endsLine()) {
                growing.append(new byte[] {'\n'});
            }
            return growing;
        }

        private boolean endsLine() throws IOException {
            ByteBuffer last = ByteBuffer.allocate(1);
            channel.read(last, length - 1);
            return last.get(0) == '\n';
        }

        void append(byte[] bytes) throws IOException {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            long at = length;
            while (buffer.hasRemaining()) {
                at += channel.write(buffer, at);
            }
            length = at;
        }

        void close() throws IOException {
            try (channel) {
                channel.truncate(length);
                channel.force(true);
            }
        }
    }

    /**
     * Compresses every file of the session. One that cannot be stays as it is, and nothing of it is
     * lost.
     */
    public synchronized void compress() {
        close();
        for (Path file : plain()) {
            Path packed = packed(file);
            Path half = file.resolveSibling(file.getFileName() + ".part");
            try {
                try (InputStream in = Files.newInputStream(file);
                        OutputStream out = new GZIPOutputStream(Files.newOutputStream(half))) {
                    in.transferTo(out);
                }
                try (FileChannel whole = FileChannel.open(half, StandardOpenOption.WRITE)) {
                    whole.force(true);
                }
                Files.move(half, packed, StandardCopyOption.ATOMIC_MOVE);
                SessionFolder.force(folder);
                Files.delete(file);
            } catch (IOException staysPlain) {
                forget(half);
            }
        }
    }

    private List<Path> plain() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(RawReadings::isPlain).sorted().toList();
        } catch (IOException none) {
            return List.of();
        }
    }

    private static boolean isPlain(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith(BEGIN) && name.endsWith(END);
    }

    private static void forget(Path half) {
        try {
            Files.deleteIfExists(half);
        } catch (IOException staysThen) {
            return;
        }
    }

    /** Nothing more is kept. */
    @Override
    public synchronized void close() {
        closed = true;
        for (Growing file : new ArrayList<>(open.values())) {
            try {
                file.close();
            } catch (IOException late) {
                // What was written has long been handed to the system.
            }
        }
        open.clear();
    }
}
