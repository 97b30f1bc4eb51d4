package rigside.journey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/** A terminal of our own: one private tmux server with one window, without anybody's settings. */
final class Tmux implements AutoCloseable {
    private static final AtomicInteger COUNT = new AtomicInteger();

    private final String socket =
            "rigside-" + ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();

    Tmux(Path folder, int columns, int rows, List<String> environment) {
        List<String> command = new ArrayList<>(List.of("new-session", "-d"));
        command.addAll(List.of("-x", String.valueOf(columns), "-y", String.valueOf(rows)));
        command.addAll(List.of("-c", folder.toString()));
        environment.forEach(each -> command.addAll(List.of("-e", each)));
        command.add("sh");
        run(command);
        run(List.of("set-option", "-g", "status", "off"));
        run(List.of("set-option", "-g", "monitor-bell", "on"));
        run(List.of("resize-window", "-x", String.valueOf(columns), "-y", String.valueOf(rows)));
    }

    /** Presses one key, by tmux's name for it. */
    void press(String key) {
        run(List.of("send-keys", key));
    }

    /** Types text as it is. */
    void type(String text) {
        run(List.of("send-keys", "-l", text));
    }

    /**
     * Empties the screen, so that nothing an earlier program said can be taken for what the next
     * one says.
     */
    void wipe() {
        run(List.of("send-keys", "-R"));
    }

    void resize(int columns, int rows) {
        run(List.of("resize-window", "-x", String.valueOf(columns), "-y", String.valueOf(rows)));
    }

    /** What is on the screen, a line a row. */
    String screen() {
        return run(List.of("capture-pane", "-p"));
    }

    private String run(List<String> arguments) {
        List<String> command =
                new ArrayList<>(List.of("tmux", "-L", socket, "-f", "/dev/null", "-u"));
        command.addAll(arguments);
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            String printed =
                    new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0) {
                throw new IllegalStateException(String.join(" ", command) + ": " + printed);
            }
            return printed;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public void close() {
        run(List.of("kill-server"));
    }
}
