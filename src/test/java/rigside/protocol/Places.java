package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import rigside.yaml.Problem;

/** Whether problems stand inside the text they are about. */
final class Places {
    private Places() {}

    /** Fails unless each problem is on a line of the text, at most one column after its end. */
    static void assertInside(String text, List<Problem> problems) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (Problem problem : problems) {
            assertTrue(
                    problem.line() >= 1 && problem.line() <= lines.length,
                    () -> problem + " of " + lines.length + " lines");
            String line = lines[problem.line() - 1];
            assertTrue(
                    problem.column() >= 1
                            && problem.column() <= line.codePointCount(0, line.length()) + 1,
                    () -> problem + " of line '" + line + "'");
        }
    }
}
