package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** A tester at a real terminal, in the tester's words. */
final class Journey implements AutoCloseable {
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(20);

    /** A press so soon after the last that it was taken for a bouncing switch is made again. */
    private static final long AGAIN_NANOS = TimeUnit.SECONDS.toNanos(1);

    private static final long GLANCE_MILLIS = 20;

    /** Longer than presses of one key are one, with what the terminal may add. */
    private static final long HAND_NANOS = TimeUnit.MILLISECONDS.toNanos(180);

    static final String JAVA = Path.of(System.getProperty("java.home"), "bin/java") + "";
    static final String JAR = Path.of("target/rigside.jar").toAbsolutePath().toString();

    private final Path home;
    private final Path pid;
    private final Tmux terminal;
    private String last = "";
    private long lastAt;

    private Journey(Path home, int columns, int rows, List<String> environment) {
        this.home = home;
        this.pid = home.resolve("pid");
        this.terminal = new Tmux(home, columns, rows, environment);
    }

    /**
     * Sits down at a terminal.
     *
     * @param home the folder for sessions and own protocols
     */
    static Journey at(Path home, int columns, int rows, String... environment) {
        Needed.toRun("tmux", "-V");
        List<String> settings =
                Stream.concat(
                                Stream.of("PS1=$ ", "LC_ALL=C.UTF-8", "ENV=", "HISTFILE="),
                                Stream.of(environment))
                        .toList();
        return new Journey(home, columns, rows, settings);
    }

    /** Starts the program and goes on at once; what it says when it ends is {@code left with 0}. */
    Journey start(String... arguments) {
        Path script = home.resolve("start.sh");
        write(
                script,
                "echo $$ > '%s'%nexec '%s' -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar '%s' --home '%s' %s%n"
                        .formatted(pid, JAVA, JAR, home, String.join(" ", arguments)));
        terminal.wipe();
        return shell("clear; sh '" + script + "'; echo \"left with $?\"");
    }

    /** Types a line at the shell. */
    Journey shell(String line) {
        terminal.type(line);
        terminal.press("Enter");
        return this;
    }

    /**
     * Presses keys one after another, by tmux's names for them; the same one as slowly as a hand.
     */
    Journey press(String... keys) {
        for (String key : keys) {
            while (key.equals(last) && System.nanoTime() < lastAt + HAND_NANOS) {
                pause();
            }
            terminal.press(key);
            last = key;
            lastAt = System.nanoTime();
        }
        return this;
    }

    /** As long as a hand takes. */
    Journey hesitate() {
        long until = System.nanoTime() + HAND_NANOS;
        while (System.nanoTime() < until) {
            pause();
        }
        return this;
    }

    Journey trigger() {
        return press("Space");
    }

    /** Types an answer and confirms it. */
    Journey answer(String text) {
        terminal.type(text);
        return press("Enter");
    }

    Journey type(String text) {
        terminal.type(text);
        return this;
    }

    /** Waits until the text is on the screen. */
    Journey sees(String text) {
        if (!comes(() -> screen().contains(text))) {
            fail("'" + text + "' did not come; the screen shows\n" + screen());
        }
        return this;
    }

    /** Waits until the text is no longer on the screen. */
    Journey seesNo(String text) {
        if (!comes(() -> !screen().contains(text))) {
            fail("'" + text + "' did not go; the screen shows\n" + screen());
        }
        return this;
    }

    String screen() {
        return terminal.screen();
    }

    Journey resize(int columns, int rows) {
        terminal.resize(columns, rows);
        return this;
    }

    /**
     * Does what the bottom line asks for, answers what is asked, and waits while something runs,
     * until the bottom line shows some words.
     */
    Journey doesAsAskedUntil(String words) {
        String before = "";
        long done = System.nanoTime();
        long until = done + PATIENCE_NANOS;
        while (System.nanoTime() < until) {
            String picture = screen();
            if (picture.contains(words)) {
                return this;
            }
            boolean waits = picture.equals(before) && System.nanoTime() < done + AGAIN_NANOS;
            Optional<Asked> asked = waits ? Optional.empty() : Asked.by(picture);
            if (asked.isPresent()) {
                asked.get().doneOn(this);
                until = picture.equals(before) ? until : System.nanoTime() + PATIENCE_NANOS;
                before = picture;
                done = System.nanoTime();
            }
            pause();
        }
        return fail("'" + words + "' did not come; the screen shows\n" + screen());
    }

    /** Goes to the end of cautions that are longer than the window. */
    Journey readsToTheEnd() {
        return sees("[Enter] read on").press("End").sees("read and understood");
    }

    /** Ends the program without any warning. */
    Journey kill9() {
        return signal("KILL").sees("left with 137");
    }

    /** Sends the program a signal. */
    Journey signal(String name) {
        assertTrue(comes(() -> Files.exists(pid)), "the program never started");
        try {
            String number = Files.readString(pid).strip();
            new ProcessBuilder("kill", "-" + name, number).inheritIO().start().waitFor();
            Files.delete(pid);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        return this;
    }

    /** The only session's folder. */
    Path session() {
        return onlyFolder(home.resolve("sessions"));
    }

    static Path onlyFolder(Path above) {
        try (Stream<Path> folders = Files.list(above)) {
            return folders.filter(Files::isDirectory).findFirst().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The lines of the only session's journal. */
    List<String> journal() {
        try {
            return Files.readAllLines(session().resolve("journal.jsonl"), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** How many events of a kind the journal holds. */
    long events(String kind) {
        return journal().stream().filter(line -> isOf(kind, line)).count();
    }

    /** The last line of the journal that holds a text. */
    String line(String text) {
        return journal().stream()
                .filter(line -> line.contains(text))
                .reduce((first, last) -> last)
                .orElseThrow();
    }

    /** The journal's last line. */
    String lastEvent() {
        List<String> lines = journal().stream().filter(line -> !isOf("cued", line)).toList();
        return lines.get(lines.size() - 1);
    }

    /** Waits until the last event is of a kind. */
    Journey recorded(String kind) {
        assertTrue(
                comes(() -> isOf(kind, lastEvent())), () -> kind + " is not last\n" + lastEvent());
        return this;
    }

    private static boolean isOf(String kind, String line) {
        return line.contains("\"event\":\"" + kind + "\"");
    }

    /** A file of the test resources, copied into a folder. */
    static Path resource(String name, Path folder) throws IOException {
        Path copy = folder.resolve(name.substring(name.lastIndexOf('/') + 1));
        try (InputStream in = Journey.class.getResourceAsStream(name)) {
            Files.copy(in, copy);
        }
        return copy;
    }

    private static boolean comes(BooleanSupplier wanted) {
        long until = System.nanoTime() + PATIENCE_NANOS;
        while (System.nanoTime() < until) {
            if (wanted.getAsBoolean()) {
                return true;
            }
            pause();
        }
        return wanted.getAsBoolean();
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(GLANCE_MILLIS);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void close() {
        terminal.close();
    }
}
