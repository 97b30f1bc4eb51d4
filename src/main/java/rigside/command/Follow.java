package rigside.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Following;
import rigside.archive.Refusal;

/** {@code rigside follow}: one condition over time. */
@Command(
        name = "follow",
        description =
                "Follow one condition over time: a control chart of its sessions, the trend over"
                        + " days and over the wearings of each piece.")
final class Follow implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Option(
            names = "--condition",
            required = true,
            paramLabel = "ID",
            description = "the condition, by its id or title")
    private String condition;

    @Option(
            names = "--measure",
            required = true,
            paramLabel = "ID",
            description = "the measure, by its id or title")
    private String measure;

    @Mixin private ArchiveOptions options;
    @Mixin private PageOptions pages;

    @Override
    public Integer call() {
        ArchiveOptions.Found found = options.find(rigside.folders(), spec.commandLine().getErr());
        Optional<Refusal> refusal =
                found.refusal().or(() -> Following.refusal(found.sessions(), measure, condition));
        if (refusal.isPresent()) {
            return ArchiveOptions.refused(spec.commandLine().getErr(), refusal.get());
        }
        Following following = Following.of(found.sessions(), measure, condition);
        return pages.give(
                spec.commandLine(),
                () -> FollowPage.of(following, found.leftOut(), false),
                () -> FollowPage.of(following, found.leftOut(), true),
                () -> FollowJson.of(following, found.leftOut()));
    }
}
