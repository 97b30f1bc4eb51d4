package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rigside.decide.Course;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * The analysis of a table of values: the same looks, verdicts and forecasts as of a session. A
 * table has no record of looks, so its verdicts are those of the latest look by itself; an earlier
 * one that had settled is said in a remark.
 *
 * @param comparisons one for each condition but the first met, which is the reference
 * @param remarks what was left out of the table, in words; may be empty
 */
public record TableAnalysis(List<Comparison> comparisons, List<String> remarks) {

    public TableAnalysis {
        comparisons = List.copyOf(comparisons);
        remarks = List.copyOf(remarks);
    }

    /**
     * Analyses a table.
     *
     * @param compared how values are compared
     * @param plan fewest and most rounds (values per condition when independent), confidence,
     *     exponent and design
     */
    public static TableAnalysis of(ValueTable table, Measure.Compared compared, Plan plan) {
        Measure measure =
                new Measure(
                        "value",
                        "value",
                        new Measure.TypedNumber("value"),
                        Unit.ONE,
                        table.resolution(),
                        Optional.of(compared));
        List<String> conditions = table.conditions();
        Setting setting = new Setting(measure, plan, conditions.size() - 1, 1);
        List<Comparison> comparisons = new ArrayList<>();
        for (String condition : conditions.subList(1, conditions.size())) {
            comparisons.add(comparison(table, setting, conditions.get(0), condition));
        }
        return new TableAnalysis(comparisons, remarks(table, setting));
    }

    private static Comparison comparison(
            ValueTable table, Setting setting, String reference, String condition) {
        Rows rows =
                rows(setting, values(table, setting, reference), values(table, setting, condition));
        Course course = setting.course(rows);
        Optional<Comparison.Settled> settled =
                course.settling().map(each -> new Comparison.Settled(each.n(), each.conclusion()));
        Judged judged =
                new Judged(
                        course,
                        course.latest().verdict(),
                        settled,
                        course.latest().planUsedUp(),
                        true,
                        false);
        Wording wording = new Wording(setting, condition, reference);
        List<String> remarks = new ArrayList<>();
        if (course.contradicted()) {
            remarks.add(wording.earlier(settled.orElseThrow()));
        }
        if (rows.reference().size() != rows.other().size()) {
            remarks.add(
                    "Values that have no partner yet wait for it: "
                            + rows.reference().size()
                            + " of "
                            + reference
                            + ", "
                            + rows.other().size()
                            + " of "
                            + condition
                            + ".");
        }
        return judged.comparison(
                wording,
                new Judged.Ids(condition, reference),
                judged.forecast(setting, rows, 0, course.latest().n()),
                false,
                List.of(),
                remarks);
    }

    private static Rows rows(Setting setting, List<Double> reference, List<Double> other) {
        double step = setting.measure().resolution();
        DoubleStream steps =
                Stream.concat(reference.stream(), other.stream())
                        .mapToDouble(value -> setting.scale().step(step, value));
        return new Rows(reference, other, Rows.resolution(steps), List.of());
    }

    private static List<Double> values(ValueTable table, Setting setting, String condition) {
        List<Integer> complete = table.completeRounds();
        return table.of(condition).stream()
                .filter(row -> !setting.isPaired() || complete.contains(row.round()))
                .map(ValueTable.Row::value)
                .toList();
    }

    private static List<String> remarks(ValueTable table, Setting setting) {
        List<String> remarks = new ArrayList<>();
        List<Integer> lacking = table.incompleteRounds();
        if (setting.isPaired() && !lacking.isEmpty()) {
            remarks.add(
                    "Left out, since a condition has no value there: "
                            + (lacking.size() == 1 ? "round " : "rounds ")
                            + Figures.list(lacking)
                            + ".");
        }
        int most = setting.plan().most();
        if (table.completeRounds().size() > most) {
            remarks.add("Values beyond the most the plan allows (" + most + ") are not used.");
        }
        return remarks;
    }
}
