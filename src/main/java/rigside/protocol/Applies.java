package rigside.protocol;

import java.util.List;

/**
 * When a step is done.
 *
 * @param conditions the conditions it is for; empty for all
 * @param onlyAfterPuttingOn whether it is left out where the mask stayed on since the condition
 *     before
 * @param onlyIf the earlier answers it depends on; all have to be as they say
 */
public record Applies(List<String> conditions, boolean onlyAfterPuttingOn, List<OnlyIf> onlyIf) {
    /** A step that is always done. */
    public static final Applies ALWAYS = only(List.of());

    public Applies {
        conditions = List.copyOf(conditions);
        onlyIf = List.copyOf(onlyIf);
    }

    /** A step for some conditions, or for all when none are named. */
    public static Applies only(List<String> conditions) {
        return new Applies(conditions, false, List.of());
    }

    /** Whether the step is for a condition, as far as the condition decides. */
    public boolean to(String condition) {
        return conditions.isEmpty() || conditions.contains(condition);
    }

    /** Whether it may be passed over because of an answer. */
    public boolean depends() {
        return !onlyIf.isEmpty();
    }

    /** The same for other conditions. */
    Applies to(List<String> others) {
        return new Applies(others, onlyAfterPuttingOn, onlyIf);
    }

    /** The same, depending on these answers. */
    Applies with(List<OnlyIf> answers) {
        return new Applies(conditions, onlyAfterPuttingOn, answers);
    }
}
