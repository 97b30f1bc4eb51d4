package rigside.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import rigside.archive.Search;
import rigside.archive.VerdictAsked;
import rigside.archive.Wanted;
import rigside.yaml.Words;

/** The options that say which sessions are wanted. */
final class WantedOptions {
    @Parameters(
            arity = "0..*",
            paramLabel = "WORD",
            description = "words that all have to be found")
    private List<String> words = new ArrayList<>();

    @Option(names = "--wearer", paramLabel = "CODE", description = "of the wearer with this code")
    private Optional<String> wearer = Optional.empty();

    @Option(
            names = "--mask",
            paramLabel = "TEXT",
            description = "words in what was answered about the mask, or marked on a piece worn")
    private Optional<String> mask = Optional.empty();

    @Option(
            names = "--protocol",
            paramLabel = "TEXT",
            description = "words in the protocol's title or file name")
    private Optional<String> protocol = Optional.empty();

    @Option(
            names = "--condition",
            paramLabel = "TEXT",
            description = "words in the title of a condition, or its id")
    private Optional<String> condition = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "on this day or later, such as 2026-11-20")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY", description = "on this day or earlier")
    private Optional<LocalDate> to = Optional.empty();

    @Option(
            names = "--verdict",
            paramLabel = "WORDS",
            description =
                    "closed with this verdict in one of its comparisons, such as 'meaningful"
                            + " increase' or 'not settled'; of several given, any")
    private List<String> verdicts = new ArrayList<>();

    @ArgGroup private State state;

    /** Open or closed, not both. */
    static final class State {
        @Option(names = "--open", description = "open ones only")
        private boolean open;

        @Option(names = "--closed", description = "closed ones only")
        private boolean closed;
    }

    @Option(
            names = "--simulated",
            negatable = true,
            description = "only those whose values are invented, or only real ones")
    private Optional<Boolean> simulated = Optional.empty();

    Wanted read(CommandLine command) {
        if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
            throw new ParameterException(
                    command,
                    "--from " + from.get() + " is after --to " + to.get() + ": no day is between");
        }
        return new Wanted(
                new Search(words),
                wearer,
                mask,
                protocol,
                condition,
                from,
                to,
                verdicts.stream().map(each -> verdict(command, each)).toList(),
                Optional.ofNullable(state).map(each -> each.closed || !each.open),
                simulated);
    }

    private static VerdictAsked verdict(CommandLine command, String typed) {
        return VerdictAsked.parse(typed)
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        "there is no verdict "
                                                + Words.quoted(typed)
                                                + "\n    "
                                                + Words.suggestion(typed, VerdictAsked.WORDS)));
    }
}
