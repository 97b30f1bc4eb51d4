package rigside.archive;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * How long a command takes from its start to its end, as who types it waits for it: the wall clock
 * of whole processes, one after another, their output thrown away.
 */
public final class WholeProcesses {
    private static final String NOWHERE = "/dev/null";

    private WholeProcesses() {}

    /**
     * Runs a command again and again.
     *
     * @param args how often, a file that is deleted before each run ("-" for none), and the command
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        double[] seconds = new double[Integer.parseInt(args[0])];
        List<String> command = List.of(args).subList(2, args.length);
        for (int run = 0; run < seconds.length; run++) {
            if (!args[1].equals("-")) {
                Files.deleteIfExists(Path.of(args[1]));
            }
            long begin = System.nanoTime();
            Process process =
                    new ProcessBuilder(command)
                            .redirectOutput(new File(NOWHERE))
                            .redirectError(new File(NOWHERE))
                            .start();
            int exit = process.waitFor();
            seconds[run] = (System.nanoTime() - begin) / 1e9;
            if (exit != 0) {
                throw new IOException("the command ended with " + exit);
            }
        }
        Arrays.sort(seconds);
        System.out.printf(
                "least %.2f s, median %.2f s, most %.2f s of %d runs%n",
                seconds[0],
                (seconds[(seconds.length - 1) / 2] + seconds[seconds.length / 2]) / 2,
                seconds[seconds.length - 1],
                seconds.length);
    }
}
