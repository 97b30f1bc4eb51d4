package rigside.decide;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a new plan, a forecast after a round, and many campaigns take. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PlanBenchmark {

    private static final double BAND = Math.log(1.1);

    private final Schedule twentyPairedLooks = Schedule.paired(3, 22);
    private final Schedule twentyIndependentLooks = Schedule.independent(3, 22);
    private final Schedule longestPaired = Schedule.paired(2, 50);
    private final Schedule longestIndependent = Schedule.independent(2, 50);
    private final Rules rules = rules(Schedule.paired(3, 10));
    private final Rules longRules = rules(Schedule.paired(3, 22));
    private final double[] differences = {0.05, 0.11, 0.02, 0.13, 0.08};
    private long seed = 1;

    private static Rules rules(Schedule schedule) {
        return new Rules(schedule, 0.05, 2, new Band(-BAND, BAND), Matters.EITHER, 0);
    }

    /** Critical values of 20 looks at pairs, computed anew: limit 100 ms. */
    @Benchmark
    public double[] newPlanOfTwentyPairedLooks() {
        return anew(twentyPairedLooks);
    }

    /** The same of independent arms. */
    @Benchmark
    public double[] newPlanOfTwentyIndependentLooks() {
        return anew(twentyIndependentLooks);
    }

    /** Critical values of the longest plan there is, pairs from 2 to 50 rounds: no limit. */
    @Benchmark
    public double[] newPlanOfFiftyRounds() {
        return anew(longestPaired);
    }

    /** The same of independent arms. */
    @Benchmark
    public double[] newPlanOfFiftyValuesAnArm() {
        return anew(longestIndependent);
    }

    /** Not by way of the kept plans. */
    private static double[] anew(Schedule schedule) {
        return CriticalValues.spending(schedule, CriticalValues.spent(schedule, 0.05, 2));
    }

    /** A forecast after five of ten rounds: limit 50 ms. */
    @Benchmark
    public Forecast forecastUpdate() {
        return Forecasts.paired(
                rules, differences, OptionalDouble.empty(), new SplittableRandom(seed++));
    }

    /** A forecast after three of twenty-two rounds: limit 50 ms. */
    @Benchmark
    public Forecast forecastUpdateOfALongPlan() {
        return Forecasts.paired(
                longRules,
                Arrays.copyOf(differences, 3),
                OptionalDouble.empty(),
                new SplittableRandom(seed++));
    }

    /** 100 000 campaigns of three to ten rounds: limit 1000 ms. */
    @Benchmark
    public Outlook hundredThousandCampaigns() {
        return Planning.outlook(rules, BAND, 0.07, 100_000, new SplittableRandom(seed++));
    }
}
