package rigside.report;

import java.util.List;
import java.util.Optional;
import rigside.analysis.DonningValue;
import rigside.analysis.Shown;
import rigside.analysis.Standing;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/**
 * One timed inhalation as it was captured.
 *
 * @param entry its entry
 * @param donning the value of the donning it belongs to
 * @param trial its position in the step, from 0
 * @param step what was asked for
 * @param value its time, in the measure's unit
 */
record Inhaled(Entry entry, DonningValue donning, int trial, Step.Trials step, double value) {

    /** Share of a round's room that its trials take. */
    static final double TAKEN = 0.8;

    /**
     * Those of a measure, of donnings that have ended, as captured. None while times or results are
     * concealed: side by side they are a running result.
     */
    static List<Inhaled> all(State state, Shown shown, Plotting of) {
        if (!shown.isOut(of.measure())) {
            return List.of();
        }
        return state.captured().entries().stream()
                .flatMap(entry -> of(state, of, entry).stream())
                .toList();
    }

    private static Optional<Inhaled> of(State state, Plotting of, Entry entry) {
        if (!(entry.slot() instanceof Slot.Trial slot)
                || slot.place().stage() != Stage.DONNING
                || !(entry.value() instanceof Value.Measured measured)
                || !(state.protocol().donning().get(slot.place().step())
                        instanceof Step.Trials step)
                || !step.measure().equals(of.measure().id())) {
            return Optional.empty();
        }
        double value = measured.quantity().in(of.measure().unit()).value();
        return of.result()
                .value(slot.place().donning())
                .filter(each -> each.standing() != Standing.OPEN && Double.isFinite(value))
                .map(donning -> new Inhaled(entry, donning, slot.trial(), step, value));
    }

    boolean isOf(String condition) {
        return donning.condition().equals(condition);
    }

    /** Whether it enters what is compared. */
    boolean counts() {
        return donning.counts() && donning.entries().contains(entry.number()) && entry.stands();
    }

    /** Its place among the trials of its round. */
    double x(Panel panel) {
        double within = trial + 0.5 - step.count() / 2.0;
        return panel.x(donning.round()) + within * room(panel);
    }

    /** How large its sign may be so that trials stay apart. */
    double size(Panel panel) {
        return Math.max(1, Math.min(3, room(panel) * 0.4));
    }

    private double room(Panel panel) {
        return panel.slot() * TAKEN / step.count();
    }
}
