package rigside.report;

import java.util.List;
import java.util.stream.Stream;
import rigside.analysis.Comparison;
import rigside.analysis.Digits;
import rigside.decide.Limits;

/** One panel of {@link LooksPlot} in words. */
final class LooksWords {
    private LooksWords() {}

    /** More looks than this are told by the first, the one that settled, and the last. */
    private static final int TOLD = 10;

    static String of(Comparison comparison, Plotting of, boolean paired) {
        List<Comparison.Seen> looks = comparison.looks();
        Stream<Comparison.Seen> told =
                looks.size() <= TOLD
                        ? looks.stream()
                        : Stream.of(
                                        Stream.of(looks.get(0)),
                                        LooksPanel.settling(comparison).stream(),
                                        Stream.of(looks.get(looks.size() - 1)))
                                .flatMap(each -> each)
                                .distinct();
        return comparison.sentence()
                + " "
                + band(comparison, of)
                + " "
                + "Looks: "
                + String.join("; ", told.map(look -> told(look, comparison, paired)).toList())
                + "."
                + LooksPanel.settling(comparison)
                        .map(look -> " It settled at " + count(look.n(), paired) + ".")
                        .orElse("");
    }

    private static String band(Comparison comparison, Plotting of) {
        String unit = comparison.ratio() ? "" : " " + of.measure().unit().symbol();
        Limits band = comparison.band();
        String edges =
                switch (comparison.matters()) {
                    case EITHER ->
                            "from "
                                    + Digits.three(band.low())
                                    + " to "
                                    + Digits.three(band.high())
                                    + unit
                                    + ", too small to matter.";
                    case INCREASE ->
                            "below "
                                    + Digits.three(band.high())
                                    + unit
                                    + ", no increase that matters.";
                    case DECREASE ->
                            "above "
                                    + Digits.three(band.low())
                                    + unit
                                    + ", no decrease that matters.";
                };
        return "The shaded band is " + edges.replace("  ", " ");
    }

    private static String told(Comparison.Seen look, Comparison comparison, boolean paired) {
        return "after "
                + count(look.n(), paired)
                + " "
                + Digits.three(look.estimate())
                + ", interval "
                + end(look.interval().low())
                + " to "
                + end(look.interval().high())
                + ", "
                + comparison.words(look.verdict());
    }

    private static String end(double limit) {
        return Double.isFinite(limit) ? Digits.three(limit) : "without end";
    }

    private static String count(int n, boolean paired) {
        return paired
                ? n + (n == 1 ? " round" : " rounds")
                : n + (n == 1 ? " value" : " values") + " per condition";
    }
}
