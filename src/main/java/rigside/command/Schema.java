package rigside.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigside.guide.EditorSchema;
import rigside.protocol.ProtocolElements;
import rigside.rig.RigElements;

/** {@code rigside schema}: the JSON Schema of protocol files, or of rig files. */
@Command(
        name = "schema",
        description =
                "Print the JSON Schema of protocol files, or of rig files, by which editors"
                        + " complete keys and warn while you type. 'rigside check' finds more.")
final class Schema implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Option(names = "--rig", description = "of rig files instead")
    private boolean rig;

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .print(
                        rig
                                ? EditorSchema.of(
                                        "Rigside rig file",
                                        RigElements.DECLARES_INSTRUMENTS,
                                        RigElements.INSTRUMENTS,
                                        RigElements.SIMULATED)
                                : EditorSchema.of("Rigside protocol file", ProtocolElements.FILE));
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
