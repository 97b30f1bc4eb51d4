package rigside.command;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * What is said when a command cannot do what it was asked: in words, with a stack trace only on
 * request.
 */
final class Messages implements IParameterExceptionHandler, IExecutionExceptionHandler {

    /** What went wrong, and how the command is used. */
    @Override
    public int handleParseException(ParameterException wrong, String[] args) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("rigside: " + wrong.getMessage());
        if (wrong instanceof MissingParameterException missing) {
            missing.getMissing().forEach(each -> err.println("    " + meaning(each)));
        }
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
            err.println(
                    "    '"
                            + command.getCommandSpec().qualifiedName()
                            + " --help' tells how it is used");
        }
        return Exit.USAGE;
    }

    /** The command's own mistake, not the user's. */
    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        Rigside rigside = root(command).getCommand();
        err.println("rigside: a fault of the program: " + words(fault));
        if (rigside.debug()) {
            fault.printStackTrace(err);
        } else {
            err.println("    the same command with --debug tells where");
        }
        err.flush();
        return Exit.FAULT;
    }

    /** What is to be given, in the words of {@code --help}. */
    private static String meaning(ArgSpec missing) {
        String name =
                missing instanceof OptionSpec option ? option.longestName() : missing.paramLabel();
        // The words are a format, in which a per cent sign is doubled.
        return name + ": " + String.join(" ", missing.description()).replace("%%", "%");
    }

    private static String words(Throwable fault) {
        String message = fault.getMessage();
        return message == null || message.isBlank() ? fault.getClass().getSimpleName() : message;
    }

    private static CommandLine root(CommandLine command) {
        CommandLine at = command;
        while (at.getParent() != null) {
            at = at.getParent();
        }
        return at;
    }
}
