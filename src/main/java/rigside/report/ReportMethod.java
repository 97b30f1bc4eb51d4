package rigside.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigside.analysis.Comparison;
import rigside.analysis.MeasureResult;
import rigside.protocol.Plan;
import rigside.report.Block.Part;

/** How the verdicts come about; what is said of every measure alike is said once. */
final class ReportMethod {
    /** Of the interval, which every comparison has. */
    private static final List<String> SOURCES =
            List.of(
                    "Jennison C., Turnbull B. W. (1989): Interim analyses: the repeated confidence"
                            + " interval approach (with discussion). Journal of the Royal"
                            + " Statistical Society, Series B 51, 305-361.",
                    "Kim K., DeMets D. L. (1987): Design and analysis of group sequential tests"
                            + " based on the type I error spending rate function. Biometrika 74,"
                            + " 149-154.");

    private ReportMethod() {}

    /** None where nothing is compared, or it is concealed. */
    static List<Block> of(Material of) {
        List<MeasureResult> compared =
                of.measures().stream().filter(each -> !each.method().isEmpty()).toList();
        if (compared.isEmpty()) {
            return List.of();
        }
        Set<String> shared = new LinkedHashSet<>(compared.get(0).method());
        compared.forEach(each -> shared.retainAll(each.method()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(String.join(" ", shared)));
        blocks.add(new Block.Points(SOURCES));
        for (MeasureResult result : compared) {
            blocks.add(Part.of(result.measure().title(), "", own(of, result, shared)));
        }
        return blocks;
    }

    /** The interval in symbols, of the design and the scale there are. */
    private static Optional<Block> formulas(Material of, MeasureResult result) {
        if (result.comparisons().isEmpty()) {
            return Optional.empty();
        }
        boolean ratio = result.comparisons().get(0).ratio();
        boolean paired = of.protocol().plan().design() == Plan.Design.ROUNDS;
        String other = ratio ? "ln(condition)" : "condition";
        String reference = ratio ? "ln(reference)" : "reference";
        String change =
                paired
                        ? "mean d, of the differences d = "
                                + other
                                + " - "
                                + reference
                                + " of n rounds"
                        : "mean " + other + " - mean " + reference;
        String error =
                paired
                        ? "s / sqrt(n), with n - 1 degrees of freedom"
                        : "s sqrt(1/m + 1/n), s pooled over m and n values with m + n - 2 degrees of"
                                + " freedom";
        return Optional.of(
                new Block.Points(
                        List.of(
                                "change = " + (ratio ? "exp(D), D = " : "D = ") + change,
                                "standard error se = " + error,
                                "interval = "
                                        + (ratio
                                                ? "exp(D - c se) to exp(D + c se)"
                                                : "D - c se to D + c se"))));
    }

    private static List<Block> own(Material of, MeasureResult result, Set<String> shared) {
        List<Block> blocks = new ArrayList<>();
        List<String> own = result.method().stream().filter(each -> !shared.contains(each)).toList();
        if (!own.isEmpty()) {
            blocks.add(new Block.Words(String.join(" ", own)));
        }
        formulas(of, result).ifPresent(blocks::add);
        for (Comparison each : result.comparisons()) {
            String against =
                    of.protocol().conditions().size() > 2 ? of.title(each.condition()) + ": " : "";
            blocks.add(new Block.Words(against + each.words().technical()));
        }
        return blocks;
    }
}
