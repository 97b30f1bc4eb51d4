package rigside.protocol;

import java.util.List;

/**
 * When a step is done.
 *
 * @param conditions the conditions it is for; empty for all
 * @param onlyAfterPuttingOn whether it is left out where the mask stayed on since the condition
 *     before
 */
public record Applies(List<String> conditions, boolean onlyAfterPuttingOn) {
    /** A step that is always done. */
    public static final Applies ALWAYS = new Applies(List.of(), false);

    public Applies {
        conditions = List.copyOf(conditions);
    }

    /** Whether the step is for a condition. */
    public boolean to(String condition) {
        return conditions.isEmpty() || conditions.contains(condition);
    }
}
