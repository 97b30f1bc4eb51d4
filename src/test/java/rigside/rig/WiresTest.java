package rigside.rig;

import static java.nio.file.StandardOpenOption.APPEND;
import static java.nio.file.StandardOpenOption.WRITE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real files, pipes and pseudo terminals. */
class WiresTest {
    @TempDir Path folder;

    @Test
    void aFileIsFollowedFromItsEnd() throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), "t,p\n1,2\n");
        List<String> kept = new CopyOnWriteArrayList<>();
        RawSink sink = (feed, at, line) -> kept.add(line);
        try (HeardLines heard = new HeardLines(Wires.to(new Origin.Appended(file)), sink)) {
            heard.hears(Arrival.Before.class, 1);
            append(file, "3,4\n5");
            append(file, ",6\n");
            heard.hears("3,4", "5,6");
            assertEquals(
                    "t,p",
                    heard.all().stream()
                            .filter(Arrival.Before.class::isInstance)
                            .map(each -> ((Arrival.Before) each).text())
                            .findFirst()
                            .orElseThrow());
            assertEquals(List.of("t,p", "3,4", "5,6"), kept, "with the header they need");
        }
    }

    @Test
    void aLineHalfWrittenWhenFollowingBeganIsLeftOut() throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), "1\n12");
        try (HeardLines heard = followed(file)) {
            append(file, "34\n5\n");
            heard.hears("5");
        }
    }

    @Test
    void aFileThatWasEmptiedIsReadFromItsBeginning() throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), "1\n2\n3\n");
        try (HeardLines heard = followed(file)) {
            append(file, "4\n");
            heard.hears("4");
            Files.writeString(file, "5\n");
            heard.hears("4", "5");
            append(file, "6\n");
            heard.hears("4", "5", "6");
        }
    }

    @Test
    void aNewFileOfTheSameNameIsReadAfterTheOldOneIsFinished() throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), "1\n");
        try (HeardLines heard = followed(file)) {
            Path old = folder.resolve("log.csv.1");
            Files.move(file, old);
            append(old, "2\n");
            Files.writeString(folder.resolve("next"), "3\n");
            Files.move(folder.resolve("next"), file, StandardCopyOption.ATOMIC_MOVE);
            heard.hears("2", "3");
            append(file, "4\n");
            heard.hears("2", "3", "4");
        }
    }

    @Test
    void aFileThatIsNotThereYetIsWaitedFor() throws IOException {
        Path file = folder.resolve("later.csv");
        try (HeardLines heard = new HeardLines(Wires.to(new Origin.Appended(file)))) {
            heard.hears(Arrival.Broken.class, 1);
            Files.writeString(folder.resolve("made"), "1\n");
            Files.move(folder.resolve("made"), file);
            append(file, "2\n");
            heard.hears("1", "2");
            assertEquals("there is no such file", ((Arrival.Broken) heard.all().get(0)).why());
        }
    }

    @Test
    void aPipeIsReadHoweverOftenItsWriterComesAndGoes() throws Exception {
        Path pipe = pipe();
        try (HeardLines heard = new HeardLines(Wires.to(new Origin.Piped(pipe)))) {
            heard.hears(Arrival.Opened.class, 1);
            append(pipe, "1\n2\n");
            heard.hears("1", "2");
            append(pipe, "3\n");
            heard.hears("1", "2", "3");
        }
    }

    @Test
    void whatIsNoPipeOrNoFileIsSaidToBeSo() throws Exception {
        Path file = Files.createFile(folder.resolve("plain"));
        assertTrue(why(new Origin.Piped(file)).contains("it is no pipe"));
        assertTrue(why(new Origin.Piped(folder.resolve("none"))).contains("no such pipe"));
        assertTrue(why(new Origin.Appended(pipe())).contains("no plain file"));
        assertTrue(why(new Origin.Appended(folder)).contains("it is a folder"));
        assertTrue(
                why(new Origin.Serial("" + folder.resolve("x"), 9600, 8, Origin.Parity.NONE, 1))
                        .contains("no such port"));
        assertTrue(
                why(new Origin.Serial("" + file, 9600, 8, Origin.Parity.NONE, 1))
                        .contains("cannot be opened"));
    }

    @Test
    void aSerialPortIsReadAndReadAgainAfterItWasUnplugged() throws Exception {
        Path ours = folder.resolve("ours");
        Path theirs = folder.resolve("theirs");
        Process pair = pair(ours, theirs);
        Origin.Serial serial = new Origin.Serial(ours.toString(), 19200, 8, Origin.Parity.NONE, 1);
        try (HeardLines heard = new HeardLines(Wires.to(serial))) {
            heard.hears(Arrival.Opened.class, 1);
            try (OutputStream out = Files.newOutputStream(theirs, WRITE)) {
                out.write("9\n12.5\r\n13.5\r\n".getBytes(StandardCharsets.US_ASCII));
            }
            heard.hears("12.5", "13.5");
            end(pair);
            heard.hears(Arrival.Broken.class, 1);
            pair = pair(ours, theirs);
            heard.hears(Arrival.Opened.class, 2);
            try (OutputStream out = Files.newOutputStream(theirs, WRITE)) {
                out.write("9\n14.5\n".getBytes(StandardCharsets.US_ASCII));
            }
            heard.hears("12.5", "13.5", "14.5");
        } finally {
            end(pair);
        }
    }

    private static String why(Origin origin) {
        try (HeardLines heard = new HeardLines(Wires.to(origin))) {
            heard.hears(Arrival.Broken.class, 1);
            return ((Arrival.Broken) heard.all().get(0)).why();
        }
    }

    /** A followed file; what is appended after this is news. */
    private static HeardLines followed(Path file) {
        return new HeardLines(Wires.to(new Origin.Appended(file))).hears(Arrival.Before.class, 1);
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, text, WRITE, file.toString().endsWith("pipe") ? WRITE : APPEND);
    }

    private Path pipe() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assumeTrue(runs(List.of("mkfifo", pipe.toString())), "this system has no named pipes");
        return pipe;
    }

    private static boolean runs(List<String> command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException missing) {
            return false;
        }
    }

    /** Two ends of a serial line, made by socat. */
    private static Process pair(Path ours, Path theirs) throws IOException, InterruptedException {
        boolean there = runs(List.of("socat", "-V"));
        if (!there) {
            String reason = "socat is not installed; pseudo serial ports need it";
            System.out.println(reason);
            assertTrue(!"true".equals(System.getenv("CI")), reason);
            assumeTrue(false, reason);
        }
        Process socat =
                new ProcessBuilder(
                                "socat",
                                "pty,raw,echo=0,link=" + ours,
                                "pty,raw,echo=0,link=" + theirs)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        Patiently.until(
                () -> Files.exists(ours) && Files.exists(theirs), () -> "two ends of a line");
        return socat;
    }

    private static void end(Process process) throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
