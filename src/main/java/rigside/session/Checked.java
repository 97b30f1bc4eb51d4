package rigside.session;

import java.util.Optional;

/** What became of an item of a checklist. */
public enum Checked {
    SO,
    NOT_SO,
    /** Passed over with a reason: neither yes nor no. */
    LEFT_OUT;

    /** The answer in a sentence. */
    String said() {
        return switch (this) {
            case SO -> "a yes";
            case NOT_SO -> "a no";
            case LEFT_OUT -> "passed over";
        };
    }

    /** The answer as steps that depend on it name it; empty where there is none. */
    Optional<String> word() {
        return switch (this) {
            case SO -> Optional.of("yes");
            case NOT_SO -> Optional.of("no");
            case LEFT_OUT -> Optional.empty();
        };
    }
}
