package rigside.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.analysis.PlanTable;
import rigside.analysis.PlanTerms;
import rigside.desk.ProtocolFile;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;

/** {@code rigside plan}: what a plan can be expected to bring, before the first donning. */
@Command(
        name = "plan",
        description =
                "Say what a plan can be expected to bring: how often it settles, after how many"
                        + " rounds, and what would be a better one.")
public final class Plan implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            arity = "0..1",
            paramLabel = "PROTOCOL",
            description =
                    "a protocol file, or the name of one, such as breathing-only; without it"
                            + " --fewest, --most, --meaningful and --spread say the plan")
    private Optional<String> protocol = Optional.empty();

    @Mixin private PlanOptions options;
    @Mixin private PlanOnRecord onRecord;

    @Option(
            names = "--measure",
            paramLabel = "ID",
            description = "the measure of the protocol to plan for (the first that decides)")
    private Optional<String> measure = Optional.empty();

    @Option(
            names = "--settle",
            defaultValue = "0.8",
            paramLabel = "SHARE",
            description = "the wished chance to settle, 0.8 or 80%% (default ${DEFAULT-VALUE})")
    private String settle;

    @Option(
            names = "--seed",
            defaultValue = "1",
            paramLabel = "NUMBER",
            description = "of the simulation; the same seed gives the same table")
    private long seed;

    @Option(names = "--json", description = "print JSON instead of a table")
    private boolean json;

    @Override
    public Integer call() {
        CommandLine command = spec.commandLine();
        double wished = OptionRules.chance(command, "--settle", settle);
        if (protocol.isEmpty() && measure.isPresent()) {
            throw new ParameterException(
                    command, "--measure names a measure of a protocol, and no protocol is named");
        }
        onRecord.refuseMisuse(command, protocol.isPresent(), options.saysSpread(command));
        return protocol.isPresent()
                ? ofProtocol(command, wished)
                : print(options.terms(command), wished, Optional.empty());
    }

    private int print(PlanTerms terms, double wished, Optional<SpreadsTaken> spreads) {
        PlanTable table = PlanTable.of(terms, wished, seed);
        CommandLine command = spec.commandLine();
        command.getOut().print(json ? PlanJson.of(table, spreads) : PlanText.of(table, spreads));
        command.getOut().flush();
        return Exit.DONE;
    }

    /** Where the protocol or the archive cannot be used, everything wrong is printed. */
    private int ofProtocol(CommandLine command, double wished) {
        Optional<Protocol> sound =
                Protocols.sound(protocol.orElseThrow(), false, rigside.folders(), command.getErr())
                        .flatMap(ProtocolFile::protocol);
        if (sound.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Protocol read = sound.get();
        Measure planned = measure(command, read);
        if (!onRecord.isAsked()) {
            PlanTerms terms = options.terms(command, read, planned, PlanOnRecord.UNKNOWN);
            sayOthers(command, read);
            return print(terms, wished, Optional.empty());
        }
        ArchiveOptions.Found found = onRecord.find(rigside.folders(), command.getErr());
        if (found.refusal().isPresent()) {
            return ArchiveOptions.refused(command.getErr(), found.refusal().get());
        }
        SpreadsTaken taken = SpreadsTaken.of(read, found, onRecord.isCautious());
        PlanTerms terms =
                options.terms(command, read, taken.with(planned), PlanOnRecord.UNKNOWN_ANYWHERE);
        sayOthers(command, read);
        return print(terms, wished, Optional.of(taken));
    }

    /** Says on the other stream which measures a table of one leaves out. */
    private void sayOthers(CommandLine command, Protocol read) {
        if (measure.isEmpty()
                && read.measures().stream().filter(each -> each.compared().isPresent()).count()
                        > 1) {
            command.getErr()
                    .println(
                            "rigside: the protocol compares "
                                    + compared(read)
                                    + "; this is the first that decides, --measure names another");
        }
    }

    private Measure measure(CommandLine command, Protocol read) {
        if (measure.isPresent()) {
            return read.measure(measure.get())
                    .filter(each -> each.compared().isPresent())
                    .orElseThrow(
                            () ->
                                    new ParameterException(
                                            command,
                                            "the protocol compares nothing called '"
                                                    + measure.get()
                                                    + "'; it compares "
                                                    + compared(read)));
        }
        return read.measures().stream()
                .filter(each -> each.compared().filter(Measure.Compared::decides).isPresent())
                .findFirst()
                .or(
                        () ->
                                read.measures().stream()
                                        .filter(each -> each.compared().isPresent())
                                        .findFirst())
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        "the protocol compares no measure, so nothing can be"
                                                + " planned"));
    }

    private static String compared(Protocol read) {
        return String.join(
                ", ",
                read.measures().stream()
                        .filter(each -> each.compared().isPresent())
                        .map(each -> "'" + each.id() + "'")
                        .toList());
    }
}
