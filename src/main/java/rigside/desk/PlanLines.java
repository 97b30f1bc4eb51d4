package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.PlanTable;
import rigside.analysis.PlanTerms;
import rigside.protocol.BenchTime;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * What a protocol's plan can be expected to bring, as lines under a heading for each measure that
 * decides. Thousands of campaigns are played for it, which takes seconds: never while drawing.
 */
final class PlanLines {
    /** The wished chance to settle, and the seed, that {@code rigside plan} takes too. */
    private static final double SETTLE = 0.8;

    private static final long SEED = 1;

    private PlanLines() {}

    static List<String> of(Protocol protocol) {
        List<String> lines = new ArrayList<>(List.of("Bench time"));
        Plan plan = protocol.plan();
        double round = BenchTime.round(protocol);
        lines.add("  a round takes about " + BenchTime.words(round));
        lines.add(
                "  "
                        + plan.fewest()
                        + " rounds take about "
                        + BenchTime.words(plan.fewest() * round)
                        + ", all "
                        + plan.most()
                        + " about "
                        + BenchTime.words(plan.most() * round));
        protocol.measures().stream()
                .filter(each -> each.compared().filter(Measure.Compared::decides).isPresent())
                .forEach(each -> lines.addAll(of(protocol, each)));
        return List.copyOf(lines);
    }

    private static List<String> of(Protocol protocol, Measure measure) {
        List<String> lines = new ArrayList<>(List.of("", "Plan for: " + measure.title()));
        Optional<PlanTerms> terms = PlanTerms.of(protocol, measure, OptionalDouble.empty());
        if (terms.isEmpty()) {
            lines.add(
                    "  it has no expected-spread, so nobody knows what the plan can settle;"
                            + " 'rigside plan' tries some");
            return lines;
        }
        PlanTable table = PlanTable.of(terms.get(), SETTLE, SEED);
        table.terms().forEach(each -> lines.add("  " + each));
        table.advice().forEach(each -> lines.add("  - " + each));
        return lines;
    }
}
