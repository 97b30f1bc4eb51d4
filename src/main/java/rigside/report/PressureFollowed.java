package rigside.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigside.analysis.DonningValue;
import rigside.analysis.Standing;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/**
 * An entry whose pressure was followed: an inhalation, or the breathing of an exercise.
 *
 * @param entry as it was captured
 * @param donning the value of the donning it belongs to; one that has ended
 * @param title which one of its donning: "trial 2", or the exercise's title
 * @param trials what was asked for; empty for an exercise
 */
record PressureFollowed(
        Entry entry, DonningValue donning, String title, Optional<Step.Trials> trials) {

    /**
     * Those of a measure, of donnings that have ended, by round, condition and entry. None while
     * the measure's results are concealed.
     */
    static List<PressureFollowed> all(Material of, Plotting plotting) {
        if (!of.shown().isOut(plotting.measure())) {
            return List.of();
        }
        List<PressureFollowed> all =
                plotting.measure().kind() instanceof Measure.TimedInhalation
                        ? Inhaled.all(of.state(), of.shown(), plotting).stream()
                                .map(PressureFollowed::of)
                                .toList()
                        : of.state().captured().entries().stream()
                                .flatMap(entry -> breathing(of, plotting, entry).stream())
                                .toList();
        return all.stream()
                .filter(PressureFollowed::wasFollowed)
                .sorted(
                        Comparator.<PressureFollowed>comparingInt(each -> each.donning().round())
                                .thenComparing(
                                        each ->
                                                plotting.conditions()
                                                        .indexOf(each.donning().condition()))
                                .thenComparing(each -> each.entry().number()))
                .toList();
    }

    private static PressureFollowed of(Inhaled trial) {
        return new PressureFollowed(
                trial.entry(),
                trial.donning(),
                "trial " + (trial.trial() + 1),
                Optional.of(trial.step()));
    }

    private static Optional<PressureFollowed> breathing(
            Material of, Plotting plotting, Entry entry) {
        if (!(entry.slot() instanceof Slot.Pressure slot)
                || slot.place().stage() != Stage.DONNING
                || !(of.protocol().donning().get(slot.place().step())
                        instanceof Step.Exercises step)
                || !step.pressureTrace().equals(Optional.of(plotting.measure().id()))) {
            return Optional.empty();
        }
        return plotting.result()
                .value(slot.place().donning())
                .filter(each -> each.standing() != Standing.OPEN)
                .map(
                        donning ->
                                new PressureFollowed(
                                        entry,
                                        donning,
                                        step.exercises().get(slot.exercise()).title(),
                                        Optional.empty()));
    }

    /** Whether an instrument was there to follow it: it gave a trace, or it is told why not. */
    private boolean wasFollowed() {
        return entry.trace().isPresent()
                || entry.untraced().isPresent()
                || entry.earlier().stream().anyMatch(each -> each.trace().isPresent());
    }

    /** Whether it enters what is compared. */
    boolean counts() {
        return donning.counts() && donning.entries().contains(entry.number()) && entry.stands();
    }

    /** Why it does not count; empty where it does. */
    String standing() {
        return counts() ? "" : entry.stands() ? "not counted" : "struck out";
    }

    /** The value captured, in the measure's unit; empty where it is no finite number. */
    Optional<Double> value(Plotting of) {
        return entry.value() instanceof Value.Measured measured
                ? Optional.of(measured.quantity().in(of.measure().unit()).value())
                        .filter(Double::isFinite)
                : Optional.empty();
    }

    PressureTrace trace(PressureTraces traces) {
        return traces.of(entry.number()).orElseThrow();
    }

    /** The part of its trace that its value is taken of, in seconds from the window's zero. */
    Part part(PressureWindow window) {
        return entry.pull()
                .filter(pull -> Double.isFinite(pull.inhalation().startSeconds()))
                .filter(pull -> Double.isFinite(pull.inhalation().endSeconds()))
                .map(
                        pull ->
                                new Part(
                                        pull.inhalation().startSeconds(),
                                        pull.inhalation().endSeconds(),
                                        true))
                .orElse(new Part(0, window.seconds(), trials.isEmpty()));
    }

    /**
     * From one moment to another, in seconds.
     *
     * @param traced whether it is where the trace shows it; false for the time between the presses
     */
    record Part(double start, double end, boolean traced) {
        boolean holds(double seconds) {
            return seconds >= start && seconds <= end;
        }
    }
}
