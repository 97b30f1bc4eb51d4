package rigside.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rigside.guide.EditorSchema;
import rigside.protocol.ProtocolElements;

/** {@code rigside schema}: the JSON Schema of protocol files. */
@Command(
        name = "schema",
        description =
                "Print the JSON Schema of protocol files, by which editors complete keys and warn"
                        + " while you type. 'rigside check' finds more.")
final class Schema implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .print(EditorSchema.of("Rigside protocol file", ProtocolElements.FILE));
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
