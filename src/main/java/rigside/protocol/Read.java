package rigside.protocol;

import java.util.List;
import rigside.yaml.Problem;

/** What reading a protocol file gives: the protocol, or all that is wrong with the file. */
public sealed interface Read {
    /** A file without problems. */
    record Good(Protocol protocol) implements Read {}

    /**
     * A file that cannot be run.
     *
     * @param problems at least one, in the order of the file
     */
    record Bad(List<Problem> problems) implements Read {
        public Bad {
            problems = List.copyOf(problems);
        }
    }
}
