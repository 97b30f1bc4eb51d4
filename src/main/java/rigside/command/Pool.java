package rigside.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Chosen;
import rigside.archive.Refusal;

/** {@code rigside pool}: what sessions of one protocol and wearer say together. */
@Command(
        name = "pool",
        description =
                "Put sessions of one protocol and one wearer together, each a block of its own: the"
                        + " pooled difference and how far sessions differ. It gives no verdict.")
final class Pool implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside parent;

    @Parameters(
            arity = "0..*",
            paramLabel = "SESSION",
            description =
                    "the folders of sessions, or their names below the folder of sessions; without"
                            + " any the options choose")
    private List<Path> named = List.of();

    @Mixin private ArchiveOptions options;
    @Mixin private PageOptions pages;

    private record Picked(
            List<Chosen> sessions, Optional<String> leftOut, Optional<Refusal> refusal) {}

    @Override
    public Integer call() {
        if (named.isEmpty() != options.isAsked()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "name two sessions or more, or let --protocol, --wearer or --simulated choose"
                            + " them");
        }
        Picked picked = named.isEmpty() ? fromArchive() : new Picked(read(), none(), none());
        Optional<Refusal> refusal =
                picked.refusal().or(() -> rigside.archive.Pool.refusal(picked.sessions()));
        if (refusal.isPresent()) {
            return ArchiveOptions.refused(spec.commandLine().getErr(), refusal.get());
        }
        rigside.archive.Pool pool = rigside.archive.Pool.of(picked.sessions());
        return pages.give(
                spec.commandLine(),
                PoolPage.of(pool, picked.leftOut()),
                () -> PoolJson.of(pool, picked.leftOut()));
    }

    private List<Chosen> read() {
        return named.stream().map(parent::session).map(Chosen::read).toList();
    }

    private Picked fromArchive() {
        ArchiveOptions.Found found = options.find(parent.folders(), spec.commandLine().getErr());
        return new Picked(
                found.sessions().stream()
                        .map(each -> Chosen.read(each.session().folder()))
                        .toList(),
                found.leftOut(),
                found.refusal());
    }

    private static <T> Optional<T> none() {
        return Optional.empty();
    }
}
