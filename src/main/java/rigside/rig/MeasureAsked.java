package rigside.rig;

import java.util.Optional;

/** Which measure of a protocol a question to a rig is about. */
@FunctionalInterface
public interface MeasureAsked {
    /** No measure is known. */
    MeasureAsked NONE = asked -> Optional.empty();

    /** The measure's id; empty where the question is about none. */
    Optional<String> of(Asked asked);
}
