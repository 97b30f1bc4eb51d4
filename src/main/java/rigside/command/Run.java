package rigside.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Bench;
import rigside.bench.Settings;
import rigside.desk.Choice;
import rigside.desk.Openings;
import rigside.desk.ProtocolFile;
import rigside.protocol.Protocol;

/** {@code rigside run PROTOCOL}: a new session, straight away. */
@Command(name = "run", description = "Start a session by a protocol.")
final class Run implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one that the home screen lists")
    private String protocol;

    @Option(
            names = "--simulated",
            description = "an invented wearer answers for the instruments: every value is invented")
    private boolean simulated;

    @Option(
            names = "--speed",
            paramLabel = "TIMES",
            description = "how much faster time runs when simulated (default 30)")
    private Optional<Double> speed = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "decides the order of conditions; drawn unless given, and recorded")
    private Optional<Long> seed = Optional.empty();

    @Override
    public Integer call() {
        Settings settings = rigside.settings();
        Choice choice = choice();
        Optional<ProtocolFile> file =
                Protocols.sound(
                        protocol, simulated, rigside.folders(), spec.commandLine().getErr());
        if (file.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Protocol read = file.get().protocol().orElseThrow();
        long chosen = seed.orElseGet(Openings::anySeed);
        return AtTerminal.run(
                spec,
                console -> {
                    Bench.begin(
                            console,
                            rigside.folders().sessions(),
                            Openings.of(file.get(), read, choice, chosen, settings.version()),
                            read,
                            settings);
                    return Exit.DONE;
                });
    }

    private Choice choice() {
        if (speed.isPresent() && !simulated) {
            throw wrong("--speed goes with --simulated only: at a real bench time runs as it does");
        }
        double times = speed.orElse(Choice.USUAL_SPEED);
        if (!(times > 0 && times <= Choice.FASTEST)) {
            throw wrong("speed '" + times + "' is not above 0 and at most 1000");
        }
        return new Choice(simulated, times);
    }

    private ParameterException wrong(String words) {
        CommandLine command = spec.commandLine();
        return new ParameterException(command, words);
    }
}
