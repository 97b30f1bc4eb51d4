package rigside.journey;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;

/** Programs that are not ours and that a journey cannot do without. */
final class Needed {
    private Needed() {}

    /**
     * Runs a command that has to end well. Where it does not, the journey is left out and the
     * reason printed; where everything has to be tried ({@code CI=true}) it fails.
     */
    static void toRun(String... command) {
        if (!runs(command)) {
            String reason = command[0] + " is not there; this journey needs it";
            System.out.println(reason);
            if ("true".equals(System.getenv("CI"))) {
                fail(reason);
            }
            assumeTrue(false, reason);
        }
    }

    private static boolean runs(String... command) {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException missing) {
            return false;
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
