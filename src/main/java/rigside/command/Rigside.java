package rigside.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import rigside.bench.Ability;
import rigside.bench.Settings;
import rigside.bench.Trigger;
import rigside.desk.Choice;
import rigside.desk.Folders;
import rigside.desk.Home;
import rigside.desk.KeptVolume;
import rigside.journal.SelfTestFile;
import rigside.screen.Stroke;

/** The command {@code rigside}; alone it opens the home screen. */
@Command(
        name = "rigside",
        scope = ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Steps one person through respirator comparisons at a bench and says when enough"
                    + " repeats are done. Without a command it opens the home screen.",
            "It is not a certified fit test."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:a file or a journal has problems; all are printed",
            "2:wrong usage",
            "3:a fault of the program"
        })
public final class Rigside implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Option(
            names = "--home",
            scope = ScopeType.INHERIT,
            paramLabel = "FOLDER",
            description =
                    "where sessions and your own protocols are kept (otherwise what RIGSIDE_HOME"
                            + " names, otherwise 'rigside' in your own folder)")
    private Optional<Path> home = Optional.empty();

    @Option(
            names = "--ascii",
            scope = ScopeType.INHERIT,
            description = "draw with plain ASCII characters only")
    private boolean ascii;

    @Option(
            names = "--mute",
            scope = ScopeType.INHERIT,
            description = "begin without sound: neither tones nor bell nor words")
    private boolean mute;

    @Option(
            names = "--speak",
            scope = ScopeType.INHERIT,
            paramLabel = "COMMAND",
            description =
                    "a command that says cues: it gets the words on its standard input (otherwise"
                            + " what RIGSIDE_SPEAK holds, otherwise cues are tones only)")
    private Optional<String> speak = Optional.empty();

    @Option(
            names = "--trigger",
            scope = ScopeType.INHERIT,
            paramLabel = "KEY",
            defaultValue = "space",
            description =
                    "the key that starts and stops timing, such as one a foot switch sends (default"
                            + " ${DEFAULT-VALUE})")
    private String trigger;

    @Option(
            names = "--bounce",
            scope = ScopeType.INHERIT,
            paramLabel = "SECONDS",
            description =
                    "presses of one key closer together than this are one press, as from a switch"
                            + " that bounces or a key held down (0 to 0.7, default 0.15)")
    private double bounce = Settings.USUAL_BOUNCE_SECONDS;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "print a stack trace when the program has a fault")
    private boolean debug;

    /**
     * Runs a command line.
     *
     * @return the exit code
     */
    public static int run(String... args) {
        return line(Commands.meant(args)).execute(args);
    }

    /** What reads a command line with all commands. */
    static CommandLine commandLine() {
        return line(Commands.all());
    }

    private static CommandLine line(CommandLine commands) {
        Messages messages = new Messages();
        return NoEffect.hidden(NumberWords.in(commands))
                .setExecutionStrategy(LegibleWriter::run)
                .setParameterExceptionHandler(messages)
                .setExecutionExceptionHandler(messages);
    }

    @Override
    public Integer call() {
        Settings settings = settings();
        return AtTerminal.run(
                spec,
                console -> {
                    Home.run(console, folders(), settings, Choice.TYPED);
                    return Exit.DONE;
                });
    }

    boolean debug() {
        return debug;
    }

    Folders folders() {
        return Folders.of(home, System.getenv(), System.getProperty("user.home"));
    }

    /** A command as it has to be typed for the same folders: {@code rigside resume NAME}. */
    String line(String words) {
        return "rigside " + words + home.map(folder -> " --home '" + folder + "'").orElse("");
    }

    /** The folder of a session, or its journal: as named, or by name below the sessions' folder. */
    Path session(Path named) {
        Path below = folders().sessions().resolve(named);
        return !Files.exists(named) && Files.isDirectory(below) ? below : named;
    }

    /**
     * How the bench looks and sounds.
     *
     * @throws ParameterException if the key named cannot be the trigger, or presses would be lost
     */
    Settings settings() {
        Stroke key =
                Trigger.parse(trigger)
                        .orElseThrow(
                                () ->
                                        new ParameterException(
                                                spec.commandLine(), Trigger.refusal(trigger)));
        if (!(bounce >= 0 && bounce <= Settings.MOST_BOUNCE_SECONDS)) {
            throw new ParameterException(
                    spec.commandLine(), "bounce '" + bounce + "' is not from 0 to 0.7 seconds");
        }
        return new Settings(
                Ability.of(System.getenv(), ascii, key),
                KeptVolume.in(folders().root(), mute),
                speak.or(() -> Optional.ofNullable(System.getenv("RIGSIDE_SPEAK")))
                        .filter(command -> !command.isBlank()),
                bounce,
                SelfTestFile.read(folders().root()),
                Version.number());
    }
}
