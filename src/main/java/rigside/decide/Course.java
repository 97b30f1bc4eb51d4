package rigside.decide;

import java.util.List;
import java.util.Optional;

/**
 * All looks so far, in order.
 *
 * @param looks one finding a look, at least one; a single one without interval before the first
 *     look
 */
public record Course(List<Finding> looks) {

    /**
     * @throws IllegalArgumentException if there is no finding
     */
    public Course {
        looks = List.copyOf(looks);
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("a course needs at least one finding");
        }
    }

    /** What the latest look says by itself. */
    public Finding latest() {
        return looks.get(looks.size() - 1);
    }

    /** The first look that settled the question: a verdict once reached stays. */
    public Optional<Finding> settling() {
        return looks.stream().filter(look -> look.verdict().settled()).findFirst();
    }

    /** The verdict that holds: the settling one if there is one, else the latest. */
    public Verdict standing() {
        return conclusion().verdict();
    }

    /** The verdict that holds, with the direction it claims. */
    public Conclusion conclusion() {
        return settling().orElse(latest()).conclusion();
    }
}
