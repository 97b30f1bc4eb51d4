package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
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
import rigside.archive.Archive;
import rigside.archive.Chosen;
import rigside.archive.DaysApart;
import rigside.archive.Refusal;
import rigside.archive.WithValues;

/** {@code rigside compare}: two conditions that were tested in different sessions. */
@Command(
        name = "compare",
        description =
                "Set two conditions of different sessions against each other, the second compared"
                        + " with the first, as far as days let. It gives no verdict.")
final class Compare implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            arity = "2",
            paramLabel = "SESSION:CONDITION",
            description =
                    "a session's folder or name, a colon, and the id of one of its conditions")
    private List<String> sides;

    @Mixin private PageOptions pages;

    /** One side as it was named. */
    private record Side(Path session, String condition) {}

    @Override
    public Integer call() {
        Side one = side(sides.get(0));
        Side two = side(sides.get(1));
        Chosen first = Chosen.read(rigside.session(one.session()));
        Chosen second = Chosen.read(rigside.session(two.session()));
        Optional<Refusal> refusal =
                DaysApart.refusal(first, one.condition(), second, two.condition());
        if (refusal.isPresent()) {
            return ArchiveOptions.refused(spec.commandLine().getErr(), refusal.get());
        }
        Archive archive = ArchiveOptions.of(rigside.folders());
        PrintWriter err = spec.commandLine().getErr();
        List<WithValues> all;
        try {
            all =
                    archive.contents(new ReadingTold(err))
                            .withValues(DaysApart.mayTell(first, second));
        } catch (IOException unreadable) {
            return ArchiveOptions.refused(err, ArchiveOptions.unreadable(archive, unreadable));
        }
        DaysApart apart = DaysApart.of(first, one.condition(), second, two.condition(), all);
        return pages.give(spec.commandLine(), ComparePage.of(apart), () -> CompareJson.of(apart));
    }

    /** At the last colon: a folder's name may hold one, a condition's id may not. */
    private Side side(String text) {
        int colon = text.lastIndexOf(':');
        if (colon < 1 || colon == text.length() - 1) {
            throw new ParameterException(
                    spec.commandLine(),
                    "'"
                            + text
                            + "' is not a session and a condition, such as"
                            + " 2026-11-25-0916-disc:plain");
        }
        try {
            return new Side(Path.of(text.substring(0, colon)), text.substring(colon + 1));
        } catch (InvalidPathException noPath) {
            throw new ParameterException(
                    spec.commandLine(), "'" + text + "' names no folder: " + noPath.getReason());
        }
    }
}
