package rigside.command;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Options that every command takes, and that change nothing in some. Those are taken there all the
 * same, so that what is put before a command may stand behind it too, but {@code --help} leaves
 * them out.
 */
final class NoEffect {
    private static final List<String> PRINT_ONLY =
            List.of(
                    "check",
                    "outline",
                    "feed",
                    "plan",
                    "analyse",
                    "sessions",
                    "report",
                    "export",
                    "share",
                    "pool",
                    "compare",
                    "follow",
                    "spread",
                    "entries",
                    "verify",
                    "explain",
                    "schema");

    private static final List<String> AT_TERMINAL =
            List.of("--ascii", "--mute", "--speak", "--trigger", "--bounce");

    private static final List<String> WITHOUT_FOLDERS = List.of("explain", "schema");

    /** At the terminal, but nothing is timed there and nothing sounds. */
    private static final List<String> UNTIMED = List.of("draft", "watch");

    private static final List<String> OF_TIMING = List.of("--mute", "--speak", "--trigger");

    private NoEffect() {}

    /** Leaves them out of the help of the commands a command line has, and returns it. */
    static CommandLine hidden(CommandLine line) {
        PRINT_ONLY.forEach(command -> AT_TERMINAL.forEach(option -> hide(line, command, option)));
        WITHOUT_FOLDERS.forEach(command -> hide(line, command, "--home"));
        UNTIMED.forEach(command -> OF_TIMING.forEach(option -> hide(line, command, option)));
        hide(line, "watch", "--bounce");
        return line;
    }

    private static void hide(CommandLine line, String command, String option) {
        CommandLine there = line.getSubcommands().get(command);
        if (there != null) {
            CommandSpec spec = there.getCommandSpec();
            OptionSpec shown = spec.findOption(option);
            spec.remove(shown).addOption(OptionSpec.builder(shown).hidden(true).build());
        }
    }
}
