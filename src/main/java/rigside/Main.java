package rigside;

import rigside.command.Rigside;

/** The program's entry: hands the arguments over and returns the exit code. */
public final class Main {
    private Main() {}

    /** Runs the program and ends it with the command's exit code. */
    public static void main(String[] args) {
        System.exit(Rigside.run(args));
    }
}
