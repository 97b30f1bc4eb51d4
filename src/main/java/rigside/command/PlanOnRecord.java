package rigside.command;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigside.desk.Folders;

/** The options of {@code plan} that take expected spreads from the archive. */
final class PlanOnRecord {
    static final String UNKNOWN =
            "the protocol names no expected-spread of this measure; say what you expect with"
                    + " --spread, or take it from your own sessions with --spread-on-record";

    static final String UNKNOWN_ANYWHERE =
            "neither the sessions on record nor the protocol tell how far this measure spreads; say"
                    + " what you expect with --spread in the place of --spread-on-record";

    @Option(
            names = "--spread-on-record",
            description =
                    "for each measure of the protocol take the expected spread from the sessions on"
                            + " record, where they tell it, in the place of the file's")
    private boolean asked;

    @Option(
            names = "--cautious",
            description =
                    "with --spread-on-record: what each spread is at most, with 80 %% confidence,"
                            + " in the place of what was seen")
    private boolean cautious;

    @Mixin private ArchiveOptions options;

    boolean isAsked() {
        return asked;
    }

    boolean isCautious() {
        return cautious;
    }

    ArchiveOptions.Found find(Folders folders, PrintWriter err) {
        return options.find(folders, err);
    }

    /**
     * Refuses what does not go together.
     *
     * @param ofProtocol whether a protocol is named
     * @param spreadSaid whether an option says the spread itself
     */
    void refuseMisuse(CommandLine command, boolean ofProtocol, boolean spreadSaid) {
        if (!asked && (cautious || options.isAsked())) {
            throw new ParameterException(
                    command,
                    "--cautious, --protocol, --wearer and --simulated say which spread on record is"
                            + " taken, and --spread-on-record is not given");
        }
        if (asked && !ofProtocol) {
            throw new ParameterException(
                    command,
                    "--spread-on-record is for the measures of a protocol, and no protocol is"
                            + " named");
        }
        if (asked && spreadSaid) {
            throw new ParameterException(
                    command,
                    "--spread and --spread-on-record both say the spread; leave one of them out");
        }
    }
}
