package rigside.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Refusal;
import rigside.archive.SpreadOnRecord;

/** {@code rigside spread}: how far a measure spread so far, to plan with. */
@Command(
        name = "spread",
        description =
                "Take from the archive how far a measure spreads within a session: the expected"
                        + " spread of a new plan, and what it can settle.")
final class Spread implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Option(
            names = "--measure",
            required = true,
            paramLabel = "ID",
            description = "the measure, by its id or title")
    private String measure;

    @Option(
            names = "--condition",
            paramLabel = "ID",
            description = "of this condition alone, by its id or title (of all together)")
    private Optional<String> condition = Optional.empty();

    @Mixin private ArchiveOptions options;
    @Mixin private PageOptions pages;

    @Override
    public Integer call() {
        ArchiveOptions.Found found = options.find(rigside.folders(), spec.commandLine().getErr());
        Optional<Refusal> refusal =
                found.refusal()
                        .or(() -> SpreadOnRecord.refusal(found.sessions(), measure, condition));
        if (refusal.isPresent()) {
            return ArchiveOptions.refused(spec.commandLine().getErr(), refusal.get());
        }
        SpreadOnRecord spread = SpreadOnRecord.of(found.sessions(), measure, condition);
        return pages.give(
                spec.commandLine(),
                SpreadPage.of(spread, found.leftOut()),
                () -> SpreadOnRecordJson.of(spread, found.leftOut()));
    }
}
