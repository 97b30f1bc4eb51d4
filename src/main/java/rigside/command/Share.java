package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.journal.JournalReader;
import rigside.journal.NotOpened;
import rigside.journal.Reading;
import rigside.journal.Rewritten;
import rigside.report.CopyToShare;
import rigside.report.PackageFolder;

/** {@code rigside share SESSION --to FOLDER}: a copy for others. */
@Command(
        name = "share",
        description = {
            "Write a copy of a closed session to be given to others: without what is about the"
                    + " wearer, notes, free answers, typed reasons, and texts about instruments and"
                    + " folders. What was left out is told, and stands beside the copy.",
            "The protocol's text, day and times are kept."
        })
final class Share implements Callable<Integer> {
    private static final String LEFT_OUT = "left-out.txt";
    private static final String JOURNAL = "journal.jsonl";
    private static final int LONGEST_CODE = 40;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            converter = Destination.class,
            required = true,
            description = "the folder to write, empty or not there")
    private Path to;

    @Option(
            names = "--keep",
            paramLabel = "ID",
            description =
                    "a fact or field whose answer is kept all the same, such as vital-capacity;"
                            + " may be given several times")
    private List<String> keep = List.of();

    @Option(
            names = "--wearer-code",
            paramLabel = "CODE",
            description = "what stands for the wearer in the copy (nothing)")
    private Optional<String> wearerCode = Optional.empty();

    @Override
    public Integer call() {
        checkCode();
        Reading reading = JournalReader.readAsGiven(rigside.session(session));
        reading.torn().ifPresent(torn -> err().println(torn));
        if (reading.isReadOnly()) {
            reading.damage().forEach(damage -> err().println(damage));
            return wrong(
                    "a damaged session is not shared: the copy would look whole",
                    "'rigside export' writes what can be read");
        }
        if (!reading.state().course().closed()) {
            return wrong(
                    "this session is open; what it conceals would be in the copy",
                    "close it first, with 'rigside resume'");
        }
        checkKept(CopyToShare.answered(reading.state()));
        CopyToShare copy =
                CopyToShare.of(
                        reading.state(),
                        reading.events(),
                        new CopyToShare.Terms(Set.copyOf(keep), wearerCode));
        List<String> differs = copy.differs(reading.state());
        if (!differs.isEmpty()) {
            return wrong(
                    "without what is left out the copy would say something else: "
                            + String.join(", ", differs),
                    "keep the answers that steps or values depend on, with --keep ID");
        }
        return write(copy);
    }

    private void checkCode() {
        if (wearerCode.isPresent()
                && !wearerCode.get().matches("[\\p{L}\\p{N}._-]{1," + LONGEST_CODE + "}")) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--wearer-code is '"
                            + wearerCode.get()
                            + "', must be one word of letters, digits, points and hyphens");
        }
    }

    private void checkKept(Set<String> answered) {
        for (String id : keep) {
            if (!answered.contains(id)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--keep is '"
                                + id
                                + "', and nothing of that name was answered\n    answered were "
                                + String.join(", ", answered));
            }
        }
    }

    private int write(CopyToShare copy) {
        try {
            if (PackageFolder.taken(to) != PackageFolder.Taken.NOTHING) {
                return wrong(
                        "'" + to + "' holds something already",
                        "name a folder that is empty or not there");
            }
            Map<String, byte[]> files = new LinkedHashMap<>();
            files.put(JOURNAL, Rewritten.bytes(copy.events()));
            files.put(LEFT_OUT, copy.told().getBytes(StandardCharsets.UTF_8));
            PackageFolder.write(to, files);
        } catch (IOException | NotOpened trouble) {
            return wrong(
                    "'" + to + "' cannot be written: " + trouble.getMessage(),
                    "mend that, or name another folder with --to FOLDER");
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("Written to " + to + ": " + JOURNAL + " and " + LEFT_OUT);
        out.println();
        out.print(copy.told());
        copy.still()
                .forEach(
                        text ->
                                out.println(
                                        "\nLook again: '"
                                                + text.replaceAll("\\p{Cntrl}", " ")
                                                + "' was left out, and stands in the protocol's"
                                                + " text or in something that was kept."));
        out.flush();
        return Exit.DONE;
    }

    /** Prints what is wrong and what to do. */
    private int wrong(String what, String help) {
        err().println(what + "\n    " + help);
        return Exit.PROBLEMS;
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
