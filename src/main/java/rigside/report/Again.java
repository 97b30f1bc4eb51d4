package rigside.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Comparison;
import rigside.analysis.Meaningful;
import rigside.analysis.MeasureResult;
import rigside.analysis.TableAnalysis;
import rigside.analysis.ValueTable;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/**
 * How the values of one measure are analysed again, by the command {@code analyse} alone, and
 * whether that says what the session says.
 *
 * @param measure the measure
 * @param file the name of the table
 * @param options of the command after {@code --values FILE}, each word by itself
 * @param differs why it does not say the same, each in a sentence; empty where it does
 */
public record Again(Measure measure, String file, List<String> options, List<String> differs) {

    /** Doubles carry between 15 and 17 digits; terms that are shared out lose the last of them. */
    private static final double SAME = 1e-12;

    public Again {
        options = List.copyOf(options);
        differs = List.copyOf(differs);
    }

    static List<Again> of(Told told) {
        List<Again> all = new ArrayList<>();
        List<Resource<AgainTables.Used>> tables = AgainTables.of(told);
        for (MeasureResult result : told.shown().measures()) {
            tables.stream()
                    .filter(table -> table.name().equals(AgainTables.name(result.measure())))
                    .findFirst()
                    .ifPresent(table -> all.add(of(told, result, table)));
        }
        return List.copyOf(all);
    }

    private static Again of(Told told, MeasureResult result, Resource<AgainTables.Used> table) {
        Measure measure = result.measure();
        Compared compared = measure.compared().orElseThrow();
        Plan plan = plan(told);
        List<String> options = new ArrayList<>();
        options.addAll(List.of("--reference", told.state().protocol().reference().id()));
        options.addAll(List.of("--fewest", String.valueOf(plan.fewest())));
        options.addAll(List.of("--most", String.valueOf(plan.most())));
        options.addAll(List.of("--meaningful", meaningful(compared)));
        options.addAll(List.of("--confidence", Shortest.of(plan.confidence())));
        if (plan.exponent() != Plan.DEFAULT_EXPONENT) {
            options.addAll(List.of("--exponent", Shortest.of(plan.exponent())));
        }
        if (compared.matters() != Compared.Matters.EITHER) {
            options.addAll(List.of("--matters", Spelt.word(compared.matters())));
        }
        if (compared.scale() == Compared.Scale.DIFFERENCE) {
            options.addAll(List.of("--compare", "difference"));
        }
        if (plan.design() != Plan.Design.ROUNDS) {
            options.addAll(List.of("--design", "independent"));
        }
        if (measure.resolution() > 0) {
            options.addAll(List.of("--resolution", Shortest.of(measure.resolution())));
        }
        return new Again(
                measure, table.file(), options, differs(told, result, table, compared, plan));
    }

    /**
     * The plan with the confidence that one measure is held to: a command that knows one measure
     * only cannot share an error over several.
     */
    private static Plan plan(Told told) {
        Plan plan = told.state().protocol().plan();
        long deciding =
                told.state().protocol().measures().stream()
                        .filter(each -> each.compared().filter(Compared::decides).isPresent())
                        .count();
        double share = plan.sharedOverMeasures() ? Math.max(1, deciding) : 1;
        return plan.with(
                plan.fewest(),
                plan.most(),
                share > 1 ? 1 - (1 - plan.confidence()) / share : plan.confidence(),
                plan.exponent());
    }

    /** The protocol's own words where the command reads them as the same band, else two limits. */
    private static String meaningful(Compared compared) {
        Optional<Meaningful> read = Meaningful.parse(compared.meaningful(), compared.scale());
        boolean same =
                read.isPresent()
                        && isClose(read.get().low(), compared.bandLow())
                        && isClose(read.get().high(), compared.bandHigh());
        boolean ratio = compared.scale() == Compared.Scale.RATIO;
        double low = ratio ? Math.exp(compared.bandLow()) : compared.bandLow();
        double high = ratio ? Math.exp(compared.bandHigh()) : compared.bandHigh();
        if (same) {
            return compared.meaningful();
        }
        return !ratio && low == -high
                ? Shortest.of(high)
                : Shortest.of(low) + " to " + Shortest.of(high);
    }

    /** The comparison as the command reads it. */
    private static Compared asRead(Compared compared) {
        return Meaningful.parse(meaningful(compared), compared.scale())
                .map(
                        band ->
                                new Compared(
                                        compared.scale(),
                                        band.low(),
                                        band.high(),
                                        compared.meaningful(),
                                        compared.matters(),
                                        true,
                                        OptionalDouble.empty()))
                .orElse(compared);
    }

    private static List<String> differs(
            Told told,
            MeasureResult result,
            Resource<AgainTables.Used> table,
            Compared compared,
            Plan plan) {
        List<String> why = new ArrayList<>();
        if (plan.confidence() > Plan.MOST_CONFIDENCE) {
            why.add("the command takes no confidence above " + Plan.MOST_CONFIDENCE + ".");
            return why;
        }
        String text = new String(Csv.bytes(table), StandardCharsets.UTF_8);
        boolean ratio = compared.scale() == Compared.Scale.RATIO;
        if (!(ValueTable.read(text, ratio) instanceof ValueTable.Read.Good good)) {
            why.add("there are not values of two conditions yet.");
            return why;
        }
        ValueTable values = good.table().against(told.state().protocol().reference().id());
        double step = measureStep(result.measure(), values);
        TableAnalysis again = TableAnalysis.of(values, asRead(compared), plan, step);
        for (Comparison now : result.comparisons()) {
            Optional<Comparison> then =
                    again.comparisons().stream()
                            .filter(each -> each.condition().equals(now.condition()))
                            .findFirst();
            if (then.isEmpty() || !isSame(now, then.get())) {
                why.add(now.condition() + ": " + reason(told, result, now));
            }
        }
        return why;
    }

    private static double measureStep(Measure measure, ValueTable values) {
        return measure.resolution() > 0 ? measure.resolution() : values.resolution();
    }

    private static boolean isSame(Comparison now, Comparison then) {
        if (now.verdict() != then.verdict()
                || now.n() != then.n()
                || now.looks().size() != then.looks().size()
                || now.interval().isPresent() != then.interval().isPresent()) {
            return false;
        }
        return now.interval().isEmpty()
                || (isClose(now.estimate().orElseThrow(), then.estimate().orElseThrow())
                        && isClose(now.interval().get().low(), then.interval().get().low())
                        && isClose(now.interval().get().high(), then.interval().get().high()));
    }

    private static boolean isClose(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.max(1, Math.abs(one));
    }

    /** The first of what a table of values cannot say that holds here. */
    private static String reason(Told told, MeasureResult result, Comparison now) {
        if (AgainTables.isByTrial(told, result.measure())) {
            return "each trial is a value of its own, and looks come after whole donnings, which a"
                    + " table does not tell.";
        }
        if (now.dependsOnStruck()) {
            return "the session's verdict also has to hold with what was struck out or amended after a"
                    + " look, as it was then.";
        }
        if (!now.boundedAgrees()) {
            return "the session's verdict also has to hold with what the counter only bounded at"
                    + " half its penetration.";
        }
        if (now.atResolution()) {
            return "the steps its readings were read to are not those of the table.";
        }
        if (told.state().protocol().plan().design() != Plan.Design.ROUNDS) {
            return "a round has no value of one condition, and a table takes as many of each.";
        }
        return "the session stands by what it concluded from the values as they were then.";
    }
}
