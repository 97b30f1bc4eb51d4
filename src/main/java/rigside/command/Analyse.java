package rigside.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.analysis.TableAnalysis;
import rigside.analysis.ValueTable;
import rigside.desk.FileWords;
import rigside.journal.JournalReader;
import rigside.journal.Reading;

/** {@code rigside analyse}: what a session, or a table of values, says. */
@Command(
        name = "analyse",
        description =
                "Say what a session, or a table of values, shows: estimate, interval, verdict and"
                        + " whether more repeats are needed.")
public final class Analyse implements Callable<Integer> {
    /** Some hundred thousand values. */
    private static final int MOST_BYTES = 4 << 20;

    /** So many problems of a table are printed; the others are counted. */
    private static final int SHOWN = 50;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            arity = "0..1",
            paramLabel = "SESSION",
            description =
                    "the folder of a session, its name below the folder of sessions, or its journal")
    private Path session;

    @ArgGroup(exclusive = false, heading = "A table instead of a session:%n")
    private TableOptions table;

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    @Override
    public Integer call() {
        if ((session == null) == (table == null)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "name either the folder of a session, or a table with --values");
        }
        if (session != null && session.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            throw new ParameterException(
                    spec.commandLine(),
                    session + " is a table, not a session: read it with --values " + session);
        }
        return table == null ? session() : table(table.terms(spec.commandLine()));
    }

    private int session() {
        Reading reading = JournalReader.readAsGiven(rigside.session(session));
        reading.torn().ifPresent(torn -> err().println(torn));
        reading.damage().forEach(damage -> err().println(damage));
        if (reading.state().opening().isPresent()) {
            Shown shown =
                    Shown.of(reading.state(), Analysis.of(reading.state(), reading.isReadOnly()));
            out().print(
                            json
                                    ? AnalysisJson.of(reading.state(), shown)
                                    : AnalysisText.of(reading.state(), shown));
            out().flush();
        }
        return reading.damage().isEmpty() ? Exit.DONE : Exit.PROBLEMS;
    }

    private int table(TableOptions.Terms terms) {
        String text;
        try {
            text = text(terms.file());
        } catch (IOException cannotBeRead) {
            err().println(terms.file() + ": " + FileWords.of(terms.file(), cannotBeRead));
            return Exit.PROBLEMS;
        }
        ValueTable.Read read = ValueTable.read(text, terms.isRatio());
        if (read instanceof ValueTable.Read.Good good) {
            Optional<String> unknown =
                    terms.reference().filter(name -> !good.table().conditions().contains(name));
            if (unknown.isPresent()) {
                err().println(terms.file() + ": there is no condition '" + unknown.get() + "'");
                err().println("    it has " + String.join(", ", good.table().conditions()));
                return Exit.PROBLEMS;
            }
            ValueTable table = terms.reference().map(good.table()::against).orElse(good.table());
            TableAnalysis analysis =
                    TableAnalysis.of(
                            table,
                            terms.compared(),
                            terms.plan(),
                            terms.resolution().orElseGet(table::resolution));
            out().print(json ? AnalysisJson.of(analysis) : AnalysisText.of(analysis));
            if (json) {
                analysis.leftOut().forEach(err()::println);
            }
            out().flush();
            return Exit.DONE;
        }
        complain(terms.file(), (ValueTable.Read.Bad) read);
        return Exit.PROBLEMS;
    }

    private void complain(Path file, ValueTable.Read.Bad bad) {
        List<ValueTable.Problem> problems = bad.problems();
        for (ValueTable.Problem problem : problems.subList(0, Math.min(SHOWN, problems.size()))) {
            err().println(
                            file
                                    + ":"
                                    + problem.line()
                                    + ":"
                                    + problem.column()
                                    + ": "
                                    + problem.what());
            err().println("    " + problem.help());
        }
        if (problems.size() > SHOWN) {
            err().println(file + ": " + (problems.size() - SHOWN) + " more problems");
        }
    }

    private static String text(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException("it is larger than 4 MiB");
            }
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        }
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
