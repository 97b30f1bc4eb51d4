package rigside.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

import rigside.analysis.ProtocolAdvice;
import rigside.desk.ProtocolFile;
import rigside.protocol.BenchTime;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.RigFile;
import rigside.yaml.Document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** {@code rigside check FILE...}: says whether protocol files can be run, and what they are. */
@Command(
        name = "check",
        description =
                "Check protocol files, and rig files (.rig.yaml), and print everything that is"
                        + " wrong, and of a protocol that is sound what to think over.")
final class Check implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Protocol files.")
    private final List<Path> files = new ArrayList<>();

    @Override
    public Integer call() {
        int bad = 0;
        for (Path file : files) {
            bad += isClean(file) ? 0 : 1;
        }
        return bad == 0 ? Exit.DONE : Exit.PROBLEMS;
    }

    private boolean isClean(Path file) {
        try {
            return ProtocolFile.isRigName(file.toString())
                    ? isCleanRig(file)
                    : isCleanProtocol(file);
        } catch (IOException e) {
            complain(file + ": " + FileWords.of(file, e));
        }
        return false;
    }

    private boolean isCleanProtocol(Path file) throws IOException {
        Read read = ProtocolReader.read(file.toString(), bytes(file));
        if (read instanceof Read.Good good) {
            say(file + ": ok, " + summary(good.protocol()));
            ProtocolAdvice.of(good.protocol()).forEach(each -> say("    think over: " + each));
            return true;
        }
        ((Read.Bad) read).problems().forEach(problem -> complain(problem.toString()));
        return false;
    }

    private boolean isCleanRig(Path file) throws IOException {
        Document<RigFile> rig =
                RigFile.read(
                        file.toString(),
                        bytes(file),
                        file.toAbsolutePath().normalize().getParent());
        rig.value()
                .ifPresent(read -> say(file + ": ok, " + kind(read) + ", '" + read.title() + "'"));
        rig.problems().forEach(problem -> complain(problem.toString()));
        return rig.value().isPresent();
    }

    private static String kind(RigFile file) {
        if (!(file instanceof RigFile.Attached attached)) {
            return "a simulated rig";
        }
        int feeds = attached.instruments().feeds().size();
        return feeds + (feeds == 1 ? " instrument" : " instruments");
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
