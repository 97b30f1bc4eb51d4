package rigside.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.desk.RigOnDisk;
import rigside.rig.Feeds;
import rigside.rig.RawSink;
import rigside.rig.RigFile;

/** {@code rigside feed RIGFILE}: what instruments send, before a session relies on it. */
@Command(
        name = "feed",
        description = {
            "Show what the instruments of a rig file send, line by line: what is read in it, how"
                    + " fast it comes, and what is wrong. Nothing is recorded.",
            "Ctrl-C ends it. The exit code is 1 when a feed is not well at the end."
        })
final class Feed implements Callable<Integer> {
    private static final long LOOK_MILLIS = 50;
    private static final double LONGEST_SECONDS = 24 * 3600;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "RIGFILE",
            description = "a rig file that declares instruments, or the name of one of your own")
    private String rig;

    @Option(
            names = "--seconds",
            paramLabel = "NUMBER",
            description = "end after so many seconds instead of by Ctrl-C")
    private Optional<Double> seconds = Optional.empty();

    @Override
    public Integer call() throws InterruptedException {
        double longest = seconds.orElse(LONGEST_SECONDS);
        if (!(longest > 0 && longest <= LONGEST_SECONDS)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "seconds '" + longest + "' is not above 0 and at most a day");
        }
        PrintWriter err = spec.commandLine().getErr();
        Optional<RigOnDisk> file = RigFiles.sound(rig, rigside.folders(), err);
        if (file.isEmpty()) {
            return Exit.PROBLEMS;
        }
        if (!(file.get().file().orElseThrow() instanceof RigFile.Attached attached)) {
            err.println(
                    "rigside: "
                            + rig
                            + " describes a simulated rig: it sends nothing\n    name a rig file"
                            + " with 'feeds'");
            return Exit.PROBLEMS;
        }
        return show(attached, Math.round(longest * 1e9));
    }

    /** Until the time is up, or somebody asks the program to end. */
    private int show(RigFile.Attached attached, long longest) throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        CountDownLatch printed = new CountDownLatch(1);
        Thread hook = new Thread(() -> end(asked, printed), "end");
        Runtime.getRuntime().addShutdownHook(hook);
        long origin = System.nanoTime();
        LongSupplier now = () -> System.nanoTime() - origin;
        FeedLines lines = new FeedLines(attached.instruments(), spec.commandLine().getOut());
        try (Feeds feeds = Feeds.open(attached.instruments(), now, RawSink.NONE)) {
            lines.begin();
            boolean ends = false;
            while (!ends) {
                ends =
                        asked.await(LOOK_MILLIS, TimeUnit.MILLISECONDS)
                                || now.getAsLong() >= longest;
                long at = now.getAsLong();
                feeds.pass(at, lines::line).forEach(lines::trouble);
                lines.pass(at, feeds.states());
            }
            lines.end(feeds.states());
            return lines.allWell() ? Exit.DONE : Exit.PROBLEMS;
        } finally {
            printed.countDown();
            forget(hook);
        }
    }

    /** Asked to end, the program waits until the last lines are printed. */
    private static void end(CountDownLatch asked, CountDownLatch printed) {
        asked.countDown();
        try {
            printed.await(2, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            return;
        }
    }
}
