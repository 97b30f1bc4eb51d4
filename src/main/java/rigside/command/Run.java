package rigside.command;

import java.io.PrintWriter;
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
import rigside.desk.RigOnDisk;
import rigside.protocol.Protocol;

/** {@code rigside run PROTOCOL}: a new session, straight away. */
@Command(name = "run", description = "Start a session by a protocol.")
final class Run implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one, such as breathing-only")
    private String protocol;

    @Option(
            names = "--simulated",
            description = "an invented wearer answers for the instruments: every value is invented")
    private boolean simulated;

    @Option(
            names = "--rig",
            paramLabel = "FILE",
            description = "a rig file: the instruments whose readings are taken")
    private Optional<String> rig = Optional.empty();

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
        PrintWriter err = spec.commandLine().getErr();
        checkOptions();
        Optional<RigOnDisk> named =
                rig.flatMap(word -> RigFiles.sound(word, rigside.folders(), err));
        if (rig.isPresent() && named.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Choice choice = choice(named);
        if (speed.isPresent() && choice.effectiveSpeed() != speed.get()) {
            throw wrong("--speed goes with a simulated rig only: instruments run as they do");
        }
        Optional<ProtocolFile> file = Protocols.sound(protocol, simulated, rigside.folders(), err);
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

    private void checkOptions() {
        if (rig.isPresent() && simulated) {
            throw wrong("--rig and --simulated exclude each other: keep one of them");
        }
        if (speed.isPresent() && !simulated && rig.isEmpty()) {
            throw wrong("--speed goes with --simulated only: at a real bench time runs as it does");
        }
        double times = times();
        if (!(times > 0 && times <= Choice.FASTEST)) {
            throw wrong("speed '" + times + "' is not above 0 and at most 1000");
        }
    }

    private double times() {
        return speed.orElse(Choice.USUAL_SPEED);
    }

    private Choice choice(Optional<RigOnDisk> named) {
        return named.map(rig -> Choice.of(rig, times())).orElse(new Choice(simulated, times()));
    }

    private ParameterException wrong(String words) {
        CommandLine command = spec.commandLine();
        return new ParameterException(command, words);
    }
}
