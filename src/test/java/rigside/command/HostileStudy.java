package rigside.command;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Named;
import rigside.protocol.Answers;
import rigside.protocol.HostileTexts;
import rigside.protocol.Shipped;
import rigside.yaml.Problem;

/**
 * Hostile texts, and a file of 50 MB, read in a small heap: run as DEVELOPERS.md says. It ends with
 * an exception if one is answered wrongly or the heap is too small.
 */
public final class HostileStudy {
    private static final double NANOS_PER_MS = 1e6;
    private static final int MEGABYTES = 50;

    private HostileStudy() {}

    /** Prints how long each took and how much was said. */
    @SuppressWarnings("SystemOut")
    public static void main(String[] args) throws IOException {
        for (Named<String> text : HostileTexts.all().toList()) {
            long begin = System.nanoTime();
            List<Problem> problems = Shipped.problems(text.getPayload());
            double ms = (System.nanoTime() - begin) / NANOS_PER_MS;
            Answers.assertHelpful(text.getPayload(), problems);
            System.out.printf(
                    Locale.ROOT, "%-32s %6.0f ms %4d%n", text.getName(), ms, problems.size());
        }
        Path large = Files.createTempFile("large", ".yaml");
        try {
            fill(large);
            System.out.println(
                    "check of a file of 50 MB: exit " + Rigside.run("check", large.toString()));
        } finally {
            Files.delete(large);
        }
        System.out.println("heap: " + (Runtime.getRuntime().maxMemory() >> 20) + " MiB");
    }

    private static void fill(Path file) throws IOException {
        byte[] megabyte = new byte[1 << 20];
        byte[] line = "- step: note\n".getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < megabyte.length; i++) {
            megabyte[i] = line[i % line.length];
        }
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int i = 0; i < MEGABYTES; i++) {
                out.write(megabyte);
            }
        }
    }
}
