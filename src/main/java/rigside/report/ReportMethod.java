package rigside.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigside.analysis.Comparison;
import rigside.analysis.MeasureResult;
import rigside.analysis.Repeatability;
import rigside.protocol.Plan;
import rigside.report.Block.Part;

/** How verdicts and spreads come about; what is said of every measure alike is said once. */
final class ReportMethod {
    /** Of the interval, which every comparison has, also one that is only planned. */
    private static final List<String> OF_INTERVALS =
            List.of(
                    "Jennison C., Turnbull B. W. (1989): Interim analyses: the repeated confidence"
                            + " interval approach (with discussion). Journal of the Royal"
                            + " Statistical Society, Series B 51, 305-361.",
                    "Kim K., DeMets D. L. (1987): Design and analysis of group sequential tests"
                            + " based on the type I error spending rate function. Biometrika 74,"
                            + " 149-154.");

    private static final String OF_PARTS =
            "Satterthwaite F. E. (1946): An approximate distribution of estimates of variance"
                    + " components. Biometrics Bulletin 2, 110-114.";

    private ReportMethod() {}

    /** None where nothing is measured, or it is concealed. */
    static List<Block> of(Material of) {
        List<MeasureResult> told =
                of.measures().stream().filter(each -> !each.method().isEmpty()).toList();
        Set<String> shared = shared(told);
        List<Block> blocks = new ArrayList<>();
        if (!shared.isEmpty()) {
            blocks.add(new Block.Words(String.join(" ", shared)));
        }
        if (!sources(told).isEmpty()) {
            blocks.add(new Block.Points(sources(told)));
        }
        for (MeasureResult result : told) {
            List<Block> own = own(of, result, shared);
            if (!own.isEmpty()) {
                blocks.add(Part.of(result.measure().title(), "", own));
            }
        }
        return blocks;
    }

    /** What is said of all that are compared, or of all studied, alike; of a single one all. */
    private static Set<String> shared(List<MeasureResult> told) {
        List<MeasureResult> main =
                told.stream()
                        .filter(each -> !each.comparisons().isEmpty() || isStudied(each))
                        .toList();
        Set<String> shared = new LinkedHashSet<>();
        main.forEach(each -> shared.addAll(each.method()));
        main.forEach(each -> shared.retainAll(each.method()));
        return shared;
    }

    private static boolean isStudied(MeasureResult result) {
        return result.repeatability().flatMap(Repeatability::limits).isPresent();
    }

    private static List<String> sources(List<MeasureResult> told) {
        List<String> sources = new ArrayList<>();
        if (told.stream().anyMatch(each -> !each.comparisons().isEmpty() || isStudied(each))) {
            sources.addAll(OF_INTERVALS);
        }
        if (told.stream()
                .anyMatch(
                        each -> each.repeatability().stream().anyMatch(Repeatability::hasParts))) {
            sources.add(OF_PARTS);
        }
        return sources;
    }

    /** In symbols, of the design and the scale there are. */
    private static Optional<Block> formulas(Material of, MeasureResult result) {
        if (isStudied(result)) {
            return Optional.of(new Block.Points(studied(result.repeatability().orElseThrow())));
        }
        if (result.comparisons().isEmpty()) {
            return Optional.empty();
        }
        boolean ratio = result.comparisons().get(0).ratio();
        boolean paired = of.protocol().plan().design() == Plan.Design.ROUNDS;
        return Optional.of(new Block.Points(compared(ratio, paired)));
    }

    private static List<String> compared(boolean ratio, boolean paired) {
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
        return List.of(
                "change = " + (ratio ? "exp(D), D = " : "D = ") + change,
                "standard error se = " + error,
                "interval = "
                        + (ratio ? "exp(D - c se) to exp(D + c se)" : "D - c se to D + c se"));
    }

    private static List<String> studied(Repeatability study) {
        List<String> all = new ArrayList<>();
        all.add(
                "s = sqrt(sum (x - mean x)^2 / (n - 1)), x = "
                        + (study.isRatio() ? "ln(value)" : "value"));
        all.add(
                "limits of s = s sqrt((n - 1) / q), q the chi-square quantiles with n - 1 degrees of"
                        + " freedom that leave half of the error on each side");
        if (study.hasParts()) {
            all.add(
                    "variance of a trial = MS within; of a donning = (MS between - MS within) /"
                            + " trials a donning");
        }
        return all;
    }

    private static List<Block> own(Material of, MeasureResult result, Set<String> shared) {
        List<Block> blocks = new ArrayList<>();
        List<String> own = result.method().stream().filter(each -> !shared.contains(each)).toList();
        if (!own.isEmpty()) {
            blocks.add(new Block.Words(String.join(" ", own)));
        }
        formulas(of, result).ifPresent(blocks::add);
        result.repeatability()
                .flatMap(Repeatability::technical)
                .map(Block.Words::new)
                .ifPresent(blocks::add);
        for (Comparison each : result.comparisons()) {
            String against =
                    of.protocol().conditions().size() > 2 ? of.title(each.condition()) + ": " : "";
            blocks.add(new Block.Words(against + each.words().technical()));
        }
        return blocks;
    }
}
