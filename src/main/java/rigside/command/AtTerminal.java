package rigside.command;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import rigside.bench.Console;
import rigside.bench.NoTerminal;
import rigside.journal.NotOpened;

/** Takes the terminal over for one command, and gives it back before anything is printed. */
final class AtTerminal {
    private AtTerminal() {}

    /** What a command does at the terminal. */
    interface Work {
        /** Returns the exit code. */
        int at(Console console) throws NotOpened, IOException;
    }

    static int run(CommandSpec spec, Work work) {
        try (Console console = Console.open()) {
            return work.at(console);
        } catch (NoTerminal none) {
            return told(spec, none.getMessage(), Exit.USAGE);
        } catch (NotOpened notOpened) {
            String words = notOpened.getMessage() + "\n    " + notOpened.help();
            return told(spec, words, Exit.PROBLEMS);
        } catch (IOException notKept) {
            return told(spec, notKept.getMessage(), Exit.PROBLEMS);
        }
    }

    private static int told(CommandSpec spec, String words, int exit) {
        spec.commandLine().getErr().println("rigside: " + words);
        return exit;
    }
}
