package rigside.protocol;

import java.util.Set;

/**
 * Where a step that is being read stands.
 *
 * @param parts the part of the procedure; for a step of a group all parts that use the group, none
 *     where no use could be read
 * @param inGroup whether it stands in a group
 */
record Where(Set<Part> parts, boolean inGroup) {
    Where {
        parts = Set.copyOf(parts);
    }

    /** Whether a donning is going on whenever the step is done. */
    boolean isInDonning() {
        return parts.stream().allMatch(part -> part == Part.DONNING);
    }

    boolean isIn(Part part) {
        return parts.contains(part);
    }
}
