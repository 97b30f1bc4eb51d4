package rigside.analysis;

import java.util.Optional;
import java.util.OptionalInt;
import rigside.decide.Verdict;

/**
 * How likely it is to settle, and after how many more rounds (values per condition where each trial
 * or donning stands for itself).
 *
 * @param settlesWithinPlan the chance that the plan settles it, 0 to 1
 * @param median further rounds until it has settled in half of all continuations; empty beyond the
 *     plan
 * @param low further rounds until it has settled in 10 % of all continuations; empty beyond the
 *     plan
 * @param high further rounds until it has settled in 90 % of all continuations; empty beyond the
 *     plan
 * @param likely the verdict it would most likely settle on, if it settles
 */
public record Outlook(
        double settlesWithinPlan,
        OptionalInt median,
        OptionalInt low,
        OptionalInt high,
        Optional<Verdict> likely) {}
