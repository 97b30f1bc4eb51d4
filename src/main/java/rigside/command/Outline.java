package rigside.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.desk.ProtocolFile;
import rigside.protocol.Protocol;
import rigside.report.Form;
import rigside.report.Page;

/** {@code rigside outline PROTOCOL}: a whole protocol on one page, to read or print. */
@Command(
        name = "outline",
        description =
                "Print a whole protocol on one page: steps, entries, order, time at the bench.")
final class Outline implements Callable<Integer> {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 400;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside parent;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one, such as breathing-only")
    private String protocol;

    @Option(names = "--html", description = "print one HTML page instead of text")
    private boolean html;

    @Option(
            names = "--form",
            description =
                    "print a form to be filled in by hand, in the order that --seed draws; 'rigside"
                            + " enter' types it in later")
    private boolean form;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "tells the order that a session with this seed draws for every round")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            defaultValue = "80",
            description = "how wide the text may be (default ${DEFAULT-VALUE})")
    private int width;

    @Override
    public Integer call() {
        if (width < NARROWEST || width > WIDEST) {
            throw new ParameterException(
                    spec.commandLine(),
                    "width '" + width + "' is not from " + NARROWEST + " to " + WIDEST);
        }
        if (form && seed.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--form needs --seed NUMBER, which draws the order\n"
                            + "    any whole number does; it stands on the form, and 'rigside"
                            + " enter' asks for it");
        }
        PrintWriter err = spec.commandLine().getErr();
        Optional<ProtocolFile> file = Protocols.sound(protocol, false, parent.folders(), err);
        if (file.isEmpty()) {
            return Exit.PROBLEMS;
        }
        Page page = page(file.get().protocol().orElseThrow());
        PrintWriter out = spec.commandLine().getOut();
        out.print(html ? page.html() : page.text(width));
        out.flush();
        return Exit.DONE;
    }

    private Page page(Protocol read) {
        return form
                ? Form.of(read, protocol, seed.orElseThrow())
                : rigside.report.Outline.of(
                        read, seed.map(OptionalLong::of).orElse(OptionalLong.empty()));
    }
}
