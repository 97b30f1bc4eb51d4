package rigside.desk;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rigside.bench.Console;
import rigside.bench.Pressed;
import rigside.screen.WatchScreen;
import rigside.screen.WatchView;
import rigside.yaml.Document;

/** A file on disk, watched at a terminal. */
final class WatchedPath implements Watch.World {
    private final Console console;
    private final Path file;
    private Optional<WatchView> drawn = Optional.empty();

    WatchedPath(Console console, Path file) {
        this.console = console;
        this.file = file;
    }

    @Override
    public long nanos() {
        return System.nanoTime();
    }

    @Override
    public Optional<Pressed> next(long waitNanos) {
        return console.next(waitNanos);
    }

    @Override
    public String read() throws IOException {
        return text(file);
    }

    /** No more of a file than it takes to see that it is too large. A pipe would never answer. */
    static String text(Path file) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
            throw new IOException("it is no ordinary file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(Document.MOST_BYTES + 1), StandardCharsets.UTF_8);
        }
    }

    @Override
    public TerminalSize size() {
        return console.size();
    }

    @Override
    public void draw(WatchView view) {
        if (drawn.filter(view::equals).isEmpty() || console.isStale()) {
            console.draw(graphics -> WatchScreen.draw(graphics, view));
            drawn = Optional.of(view);
        }
    }
}
