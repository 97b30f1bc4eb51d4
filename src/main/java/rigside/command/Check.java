package rigside.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.ProtocolAdvice;
import rigside.analysis.ProtocolAdvice.Counter;
import rigside.desk.FileWords;
import rigside.desk.ProtocolFile;
import rigside.desk.Shelf;
import rigside.protocol.BenchTime;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.RigFile;
import rigside.rig.Signal;
import rigside.yaml.Document;

/** {@code rigside check FILE...}: says whether protocol files can be run, and what they are. */
@Command(
        name = "check",
        description =
                "Check protocol files, and rig files (.rig.yaml), and print everything that is"
                        + " wrong, and of a protocol that is sound what to think over.")
final class Check implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "protocol files or their names, such as breathing-only, and rig files")
    private final List<Path> files = new ArrayList<>();

    @Option(
            names = "--rig",
            paramLabel = "FILE",
            description =
                    "the rig file of the instruments that are to be used: sample windows are then"
                            + " held against how long the counter settles")
    private Path rig;

    @Override
    public Integer call() {
        int bad = 0;
        Optional<RigFile> attached = Optional.empty();
        if (rig != null) {
            attached = sound(rig, this::rigFile);
            bad += attached.isPresent() ? 0 : 1;
        }
        Optional<Counter> counter = attached.flatMap(Check::counter);
        for (Path file : files) {
            boolean clean =
                    ProtocolFile.isRigName(file.toString())
                            ? sound(file, this::rigFile).isPresent()
                            : sound(file, each -> protocol(each, counter)).isPresent();
            bad += clean ? 0 : 1;
        }
        return bad == 0 ? Exit.DONE : Exit.PROBLEMS;
    }

    /** Reads a file and says what it is; empty, and its problems told, when it is not sound. */
    private interface Reading<T> {
        Optional<T> of(Path file) throws IOException;
    }

    private <T> Optional<T> sound(Path file, Reading<T> reading) {
        try {
            return reading.of(file);
        } catch (IOException e) {
            complain(file + ": " + FileWords.of(file, e));
            return Optional.empty();
        }
    }

    private Optional<Protocol> protocol(Path file, Optional<Counter> counter) throws IOException {
        Read read = ProtocolReader.read(file.toString(), text(file));
        if (read instanceof Read.Good good) {
            say(file + ": ok, " + summary(good.protocol()));
            ProtocolAdvice.of(good.protocol(), counter)
                    .forEach(each -> say("    think over: " + each));
            return Optional.of(good.protocol());
        }
        ((Read.Bad) read).problems().forEach(problem -> complain(problem.toString()));
        return Optional.empty();
    }

    private Optional<RigFile> rigFile(Path file) throws IOException {
        Document<RigFile> read =
                RigFile.read(
                        file.toString(),
                        bytes(file),
                        file.toAbsolutePath().normalize().getParent());
        read.value()
                .ifPresent(each -> say(file + ": ok, " + kind(each) + ", '" + each.title() + "'"));
        read.problems().forEach(problem -> complain(problem.toString()));
        return read.value();
    }

    /** The counter that samples the mask; of two that stand side by side none is switched. */
    private static Optional<Counter> counter(RigFile file) {
        return file instanceof RigFile.Attached attached
                ? attached.instruments()
                        .feed(Signal.MASK)
                        .map(feed -> new Counter(feed.settling(), feed.tellsSide()))
                : Optional.empty();
    }

    private static String kind(RigFile file) {
        if (!(file instanceof RigFile.Attached attached)) {
            return "a simulated rig";
        }
        int feeds = attached.instruments().feeds().size();
        return feeds + (feeds == 1 ? " instrument" : " instruments");
    }

    /** A file, or else the protocol of that name. */
    private byte[] text(Path file) throws IOException {
        Optional<ProtocolFile> named =
                Files.exists(file)
                        ? Optional.empty()
                        : Shelf.find(file.toString(), rigside.folders().protocols());
        Optional<Path> onDisk = named.isPresent() ? named.get().at() : Optional.of(file);
        return onDisk.isPresent()
                ? bytes(onDisk.get())
                : named.get().text().getBytes(StandardCharsets.UTF_8);
    }

    /** The file, or of one that is too large just enough to show that it is. */
    private static byte[] bytes(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            return stream.readNBytes(Document.MOST_BYTES + 1);
        }
    }

    private static String summary(Protocol protocol) {
        return "'"
                + protocol.title()
                + "', "
                + switch (protocol.purpose()) {
                    case INSTRUMENT_CHECK ->
                            "an instrument check, takes about "
                                    + BenchTime.words(BenchTime.before(protocol));
                    case REPEATABILITY ->
                            "a repeatability study of one condition, a donning takes about "
                                    + BenchTime.words(BenchTime.round(protocol));
                    case COMPARISON ->
                            protocol.conditions().size()
                                    + " conditions, a round takes about "
                                    + BenchTime.words(BenchTime.round(protocol));
                };
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }

    private void complain(String line) {
        spec.commandLine().getErr().println(line);
    }
}
