package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rigside.measure.Breath;
import rigside.measure.PressureTrace;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Condition;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.State;
import rigside.session.Trace;

/**
 * What pressure traces say about the values of one measure, a sentence for each condition.
 *
 * @param values those of the measure, of every donning
 */
record TraceRemarks(State state, List<DonningValue> values) {

    /** How steadily inhalations were pulled; nothing where none has a trace. */
    List<String> pulls() {
        List<String> remarks = new ArrayList<>();
        for (Condition condition : state.protocol().conditions()) {
            List<Entry> trials = entries(condition);
            List<Entry> traced = trials.stream().filter(each -> each.pull().isPresent()).toList();
            if (!traced.isEmpty()) {
                remarks.add(Phrases.sentence(condition.title()) + ": " + pulls(traced, trials));
            }
        }
        if (!remarks.isEmpty()) {
            remarks.add(
                    "With a pressure trace the time at the target counts, not the clock: the"
                            + " pressure-time integral over the target pressure (linear"
                            + " resistance).");
        }
        return List.copyOf(remarks);
    }

    private String pulls(List<Entry> traced, List<Entry> trials) {
        Unit unit = step(traced.get(0)).target().unit();
        double tolerance = step(traced.get(0)).tolerance().orElse(0);
        double meanPa = mean(traced, each -> each.inhalation().meanPa());
        double share = mean(traced, each -> each.inhalation().withinShare());
        int byClock = trials.size() - traced.size();
        return Phrases.count(traced.size(), "inhalation", "inhalations")
                + " by pressure trace, held at "
                + in(unit, meanPa)
                + " on average, spread within a pull "
                + in(unit, mean(traced, each -> each.inhalation().spreadPa()))
                + (tolerance > 0
                        ? ", within "
                                + Digits.percent(tolerance)
                                + " of the target for "
                                + Digits.percent(share)
                                + " of the time"
                        : "")
                + (byClock > 0 ? "; " + byClock + " by the clock alone" : "")
                + ".";
    }

    /** How the wearer breathed; nothing where no breaths were found. */
    List<String> breaths() {
        List<String> remarks = new ArrayList<>();
        for (Condition condition : state.protocol().conditions()) {
            List<Trace.Breaths> found =
                    entries(condition).stream().flatMap(each -> each.breaths().stream()).toList();
            if (!found.isEmpty()) {
                remarks.add(Phrases.sentence(condition.title()) + ": " + breaths(found));
            }
        }
        return List.copyOf(remarks);
    }

    private static String breaths(List<Trace.Breaths> found) {
        int count = found.stream().mapToInt(Trace.Breaths::count).sum();
        return Phrases.count(count, "breath", "breaths")
                + " by pressure trace; medians: "
                + Digits.three(median(found, Breath::seconds))
                + " s a breath, in "
                + Digits.three(median(found, Breath::inhalationSeconds))
                + " s, peaks "
                + Digits.three(median(found, Breath::peakInhalationPa))
                + " Pa in and "
                + Digits.three(median(found, Breath::peakExhalationPa))
                + " Pa out, integrals "
                + Digits.three(median(found, Breath::inhalationIntegral))
                + " Pa s in and "
                + Digits.three(median(found, Breath::exhalationIntegral))
                + " Pa s out.";
    }

    /** The entries that the counting donnings of a condition rest on. */
    private List<Entry> entries(Condition condition) {
        return values.stream()
                .filter(each -> each.counts() && each.condition().equals(condition.id()))
                .flatMap(each -> each.entries().stream())
                .map(number -> state.captured().entry(number))
                .flatMap(Optional::stream)
                .toList();
    }

    private Step.Trials step(Entry entry) {
        return (Step.Trials) Procedure.step(state, entry.slot().place());
    }

    private static double mean(List<Entry> traced, ToDoubleFunction<Trace.Pull> figure) {
        return traced.stream()
                .mapToDouble(each -> figure.applyAsDouble(each.pull().orElseThrow()))
                .average()
                .orElseThrow();
    }

    private static double median(List<Trace.Breaths> found, Function<Breath, Double> figure) {
        return PressureTrace.median(
                        found.stream().map(each -> figure.apply(each.medians())).toList())
                .orElseThrow();
    }

    private static String in(Unit unit, double pascals) {
        Quantity shown = new Quantity(pascals, Unit.PASCAL).in(unit);
        return Digits.three(shown.value()) + " " + unit.symbol();
    }
}
