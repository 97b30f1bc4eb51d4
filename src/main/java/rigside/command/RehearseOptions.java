package rigside.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import rigside.protocol.Protocol;
import rigside.runner.Assumed;
import rigside.runner.AssumedReader;
import rigside.runner.Faults;

/** What a rehearsal is to assume, and what is to go wrong in it. */
final class RehearseOptions {
    @Option(
            names = "--change",
            paramLabel = "MEASURE=SIZE",
            description =
                    "the true change against the reference: breathing=15%%, seal='0.5 times',"
                            + " effort='25 Pa', breathing=none; with-disc.breathing=15%% for one"
                            + " condition")
    private List<String> changes = List.of();

    @Option(
            names = "--spread",
            paramLabel = "MEASURE=SIZE",
            description =
                    "the true spread of a donning's value, as expected-spread words it:"
                            + " breathing=5%%; with-disc.breathing=5%% for one condition")
    private List<String> spreads = List.of();

    @Option(
            names = "--fault",
            paramLabel = "FAULT[:DONNING]",
            description =
                    "what is to go wrong: failed-seal-check, feed-lost, odd-value, not-held,"
                            + " left-out, stopped, done-again, abandoned, struck-out, ended-early;"
                            + " odd-value:3 in the third donning, else where the seed says")
    private List<String> faults = List.of();

    /** What was asked for, checked. */
    record Asked(Assumed assumed, List<Faults.Asked> faults) {}

    /** Empty when something is wrong; all of it was printed then. */
    Optional<Asked> read(Protocol protocol, PrintWriter err) {
        AssumedReader.Read read = AssumedReader.read(protocol, changes, spreads);
        List<String> problems = new ArrayList<>(read.problems());
        List<Faults.Asked> asked = new ArrayList<>();
        faults.forEach(text -> Faults.read(protocol, text, problems).ifPresent(asked::add));
        problems.forEach(each -> err.println("rigside: " + each));
        return problems.isEmpty()
                ? Optional.of(new Asked(read.assumed(), asked))
                : Optional.empty();
    }
}
