package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigside.protocol.Gate;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Entry;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/**
 * What came of a session in which nothing is worn: which gates are met. Nothing of it is concealed.
 *
 * @param gates in the order of the procedure; those of steps that an answer led past left away
 * @param failedChecks items of checklists that were not so, those set right since among them
 */
public record InstrumentCheck(List<Of> gates, List<String> failedChecks) {
    public InstrumentCheck {
        gates = List.copyOf(gates);
        failedChecks = List.copyOf(failedChecks);
    }

    /** How a gate stands. */
    public enum Standing {
        MET,
        NOT_MET,
        NOT_READ;

        /** The word for it in files: {@code not_met}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One gate.
     *
     * @param title what it reads, in words
     * @param needs what it needs, in words
     * @param read what was read last and stands; empty without
     */
    public record Of(String title, String needs, Optional<String> read, Standing standing) {
        private String words() {
            return title
                    + " ("
                    + read.map(each -> each + ", ").orElse("not read, ")
                    + "needed "
                    + needs
                    + ")";
        }
    }

    /** Of a session; empty where something is worn. */
    public static Optional<InstrumentCheck> of(State state) {
        if (state.protocol().purpose() != Protocol.Purpose.INSTRUMENT_CHECK) {
            return Optional.empty();
        }
        List<Of> gates = new ArrayList<>();
        List<Step> steps = Procedure.steps(state.protocol(), Stage.BEFORE);
        for (int at : Applicable.steps(state, Stage.BEFORE, 0)) {
            if (steps.get(at) instanceof Step.Gates step) {
                for (int gate = 0; gate < step.gates().size(); gate++) {
                    Slot slot = new Slot.Gate(new Place(Stage.BEFORE, 0, at), gate);
                    gates.add(of(state, step, step.gates().get(gate), slot));
                }
            }
        }
        return Optional.of(
                new InstrumentCheck(
                        gates,
                        state.captured().failedChecks().stream()
                                .map(Captured.FailedCheck::text)
                                .toList()));
    }

    private static Of of(State state, Step.Gates step, Gate gate, Slot slot) {
        Optional<Value.Measured> read =
                state.captured()
                        .standing(slot)
                        .map(Entry::value)
                        .filter(Value.Measured.class::isInstance)
                        .map(Value.Measured.class::cast);
        return new Of(
                step.title() + ", " + words(gate.kind()),
                gate.needs(),
                read.map(Value.Measured::toString),
                read.map(each -> gate.isMetBy(each.quantity()) ? Standing.MET : Standing.NOT_MET)
                        .orElse(Standing.NOT_READ));
    }

    private static String words(Gate.Kind kind) {
        return switch (kind) {
            case ZERO -> "filtered air";
            case AMBIENT -> "ambient air";
        };
    }

    /** Whether every gate is met. */
    public boolean isMet() {
        return gates.stream().allMatch(each -> each.standing() == Standing.MET);
    }

    /** What came of it, in words without a full stop. */
    String sentence() {
        return ofGates() + ofChecks();
    }

    private String ofGates() {
        if (gates.isEmpty()) {
            return "Every step is done";
        }
        if (isMet()) {
            return gates.size() == 1
                    ? "The gate is met"
                    : Phrases.sentence(Phrases.all(gates.size(), "gates")) + " are met";
        }
        return "Not met: "
                + String.join(
                        "; ",
                        gates.stream()
                                .filter(each -> each.standing() != Standing.MET)
                                .map(Of::words)
                                .toList());
    }

    private String ofChecks() {
        return failedChecks.isEmpty()
                ? ""
                : ". "
                        + Phrases.count(failedChecks.size(), "check was", "checks were")
                        + " not so: "
                        + String.join("; ", failedChecks);
    }
}
