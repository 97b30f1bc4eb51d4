package rigside.runner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rehearsal is to assume true: how far conditions differ, and how far values spread.
 *
 * @param changes against the reference; of several about one thing the last holds
 * @param spreads of values
 */
public record Assumed(List<Size> changes, List<Size> spreads) {
    /** Nothing in particular. */
    public static final Assumed NOTHING = new Assumed(List.of(), List.of());

    public Assumed {
        changes = List.copyOf(changes);
        spreads = List.copyOf(spreads);
    }

    /**
     * One size.
     *
     * @param condition the condition it holds for; empty for all (of a change: all but the
     *     reference)
     * @param measure the measure's id
     * @param size of a ratio the natural log, of a difference in the measure's unit
     */
    public record Size(Optional<String> condition, String measure, double size) {
        private boolean isAbout(String one, String id) {
            return measure.equals(id) && condition.map(one::equals).orElse(true);
        }
    }

    boolean mentions(String measure) {
        return changes.stream().anyMatch(each -> each.measure().equals(measure))
                || spreads.stream().anyMatch(each -> each.measure().equals(measure));
    }

    OptionalDouble change(String condition, String measure) {
        return last(changes, condition, measure);
    }

    OptionalDouble spread(String condition, String measure) {
        return last(spreads, condition, measure);
    }

    private static OptionalDouble last(List<Size> sizes, String condition, String measure) {
        return sizes.stream()
                .filter(each -> each.isAbout(condition, measure))
                .mapToDouble(Size::size)
                .reduce((earlier, later) -> later);
    }
}
