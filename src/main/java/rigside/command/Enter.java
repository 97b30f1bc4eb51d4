package rigside.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.archive.Archive;
import rigside.bench.Bench;
import rigside.bench.Settings;
import rigside.bench.Wall;
import rigside.desk.Openings;
import rigside.desk.ProtocolFile;
import rigside.protocol.Protocol;
import rigside.session.Event;

/** {@code rigside enter PROTOCOL}: a form that was filled in by hand, typed in. */
@Command(
        name = "enter",
        description =
                "Type in a form of 'rigside outline --form' that was filled in by hand: nothing is"
                        + " timed, and the session is marked as entered from paper.")
final class Enter implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one, such as breathing-only")
    private String protocol;

    @Option(
            names = "--seed",
            required = true,
            paramLabel = "NUMBER",
            description = "the seed printed on the form, so that the order is the form's")
    private long seed;

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "the day the form was filled in, such as 2026-11-20")
    private Optional<LocalDate> on = Optional.empty();

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        if (on.filter(day -> day.isAfter(Wall.now().toLocalDate())).isPresent()) {
            throw new ParameterException(
                    spec.commandLine(), "the day '" + on.get() + "' is still to come");
        }
        Optional<ProtocolFile> file =
                Protocols.sound(protocol, false, rigside.folders(), spec.commandLine().getErr());
        if (file.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Protocol read = file.get().protocol().orElseThrow();
        Event.SessionOpened form =
                Openings.ofPaper(file.get(), new Event.Paper(on), seed, settings.version());
        Path sessions = rigside.folders().sessions();
        Optional<Path> begun = halfTyped(sessions, form, settings.version());
        if (begun.isPresent()) {
            String name = begun.get().getFileName().toString();
            spec.commandLine()
                    .getErr()
                    .println(
                            "rigside: this form is half typed in, as the session "
                                    + name
                                    + "\n    this goes on with it: "
                                    + rigside.line("resume " + name));
            return Exit.PROBLEMS;
        }
        return AtTerminal.run(
                spec,
                console -> {
                    Bench.begin(console, sessions, form, read, settings);
                    return Exit.DONE;
                });
    }

    /** A folder that cannot be read is said when the session is to be kept in it. */
    private static Optional<Path> halfTyped(
            Path sessions, Event.SessionOpened form, String version) {
        try {
            return new Archive(sessions, version).halfTyped(form);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
