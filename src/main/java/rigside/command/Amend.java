package rigside.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.Shown;
import rigside.bench.Bench;
import rigside.bench.Settings;
import rigside.bench.Wall;
import rigside.journal.Journal;
import rigside.journal.NotOpened;
import rigside.journal.SessionClock;
import rigside.runner.JournalLedger;
import rigside.runner.Result;
import rigside.runner.Runner;
import rigside.session.Applicable;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Recorded;

/** {@code rigside amend SESSION}: puts right what was entered wrong, also in a closed session. */
@Command(
        name = "amend",
        description =
                "Put right what was entered wrong, also in a closed session: at the terminal, or one"
                        + " entry by its number (see 'rigside entries'). The value before stays on"
                        + " record, and a verdict that had used it has to hold both ways.")
final class Amend implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            index = "0",
            paramLabel = "SESSION",
            description = "the session's folder, or its name below the folder of sessions")
    private Path session;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "ENTRY",
            description = "the entry's number; without one the entries are shown at the terminal")
    private Optional<Integer> entry = Optional.empty();

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "VALUE",
            description =
                    "the right value, as it would have been typed, such as '12.4' or '12.4 s'")
    private Optional<String> value = Optional.empty();

    @Option(names = "--reason", paramLabel = "WORDS", description = "why; it is kept")
    private Optional<String> reason = Optional.empty();

    @Option(
            names = "--strike-out",
            description = "strike the entry out instead, where there is no right value")
    private boolean strikeOut;

    @Option(names = "--sure", description = "take a value outside what is plausible all the same")
    private boolean sure;

    @Override
    public Integer call() {
        if (entry.isEmpty()) {
            return atTerminal();
        }
        if (value.isPresent() == strikeOut) {
            throw new ParameterException(
                    spec.commandLine(), "name either the right value, or --strike-out");
        }
        if (reason.filter(words -> !words.isBlank()).isEmpty()) {
            throw new ParameterException(spec.commandLine(), "say why, with --reason");
        }
        Input input =
                value.<Input>map(
                                text -> new Input.AmendAsked(entry.get(), text, reason.get(), sure))
                        .orElseGet(() -> new Input.VoidAsked(entry.get(), reason.get()));
        try (Journal journal = Journal.correct(rigside.session(session))) {
            return correct(journal, input);
        } catch (NotOpened notOpened) {
            return complain(notOpened.getMessage() + "\n    " + notOpened.help());
        }
    }

    private int atTerminal() {
        if (reason.isPresent() || strikeOut || sure) {
            throw new ParameterException(
                    spec.commandLine(), "name the entry, or none of these options");
        }
        Settings settings = rigside.settings();
        return AtTerminal.run(
                spec,
                console -> {
                    Bench.correct(console, rigside.session(session), settings);
                    return Exit.DONE;
                });
    }

    private int correct(Journal journal, Input input) {
        List<Recorded> events = journal.events();
        Recorded last = events.get(events.size() - 1);
        long at = SessionClock.resumedAt(last, Wall.now());
        Runner runner =
                Runner.correcting(new JournalLedger(journal), Wall::now, journal.state(), at);
        Result result = runner.accept(input, at);
        if (result instanceof Result.Refused refused) {
            return complain(
                    refused.why()
                            + (input instanceof Input.AmendAsked && !sure ? hint(refused) : ""));
        }
        if (result instanceof Result.NotKept notKept) {
            return complain(notKept.why());
        }
        said(runner, ((Result.Done) result).events());
        return Exit.DONE;
    }

    private static String hint(Result.Refused refused) {
        return refused.why().endsWith("if it is meant") ? "\n    say so with --sure" : "";
    }

    private void said(Runner runner, List<Event> events) {
        PrintWriter out = spec.commandLine().getOut();
        Shown shown = runner.shown();
        runner.state()
                .captured()
                .entry(entry.orElseThrow())
                .ifPresent(now -> out.println(EntryLine.of(runner.state(), shown, now).strip()));
        Applicable.missed(runner.state(), entry.get())
                .forEach(
                        step ->
                                out.println(
                                        "not done, though it should have been, and stays undone: "
                                                + step));
        if (events.stream().anyMatch(Event.LookTaken.class::isInstance)) {
            out.println("Looked at anew.");
            shown.measures().stream()
                    .flatMap(measure -> measure.comparisons().stream())
                    .forEach(
                            comparison -> {
                                out.println(comparison.sentence());
                                if (comparison.dependsOnStruck()) {
                                    comparison.remarks().stream()
                                            .limit(1)
                                            .forEach(words -> out.println("    " + words));
                                }
                            });
        }
        out.flush();
    }

    private int complain(String words) {
        spec.commandLine().getErr().println("rigside: " + words);
        return Exit.PROBLEMS;
    }
}
