package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Value;

/**
 * What the gates of a session read and what became of it, one line for each reading and for each
 * gate passed over.
 */
public record GatesRead(State state) {
    /** How the line of a gate ends that was met. */
    public static final String MET = ": met";

    List<String> lines() {
        Captured captured = state.captured();
        List<String> lines = new ArrayList<>();
        for (Entry entry : captured.entries()) {
            if (entry.slot() instanceof Slot.Gate slot) {
                lines.add(where(slot) + read(slot, entry));
            }
        }
        captured.leftOut().stream()
                .filter(left -> left.slot() instanceof Slot.Gate)
                .filter(left -> captured.standing(left.slot()).isEmpty())
                .filter(left -> Applicable.at(state, left.slot().place()))
                .map(left -> where(left.slot()) + "not read, " + passedOver(left))
                .forEach(lines::add);
        return List.copyOf(lines);
    }

    private String read(Slot.Gate slot, Entry entry) {
        Gate gate = ((Step.Gates) Procedure.step(state, slot.place())).gates().get(slot.gate());
        boolean met =
                entry.value() instanceof Value.Measured value && gate.isMetBy(value.quantity());
        String read = entry.value() + ", needed " + gate.needs() + (met ? MET : ": NOT MET");
        if (entry.struck().isPresent()) {
            return read + "; struck out: " + entry.struck().get().reason();
        }
        Optional<Captured.LeftOut> left =
                state.captured().leftOut().stream()
                        .filter(each -> each.slot().equals(slot))
                        .findFirst();
        return read + left.map(each -> ", " + passedOver(each)).orElse("");
    }

    private static String passedOver(Captured.LeftOut left) {
        return "went on all the same: " + left.reason();
    }

    private String where(Slot slot) {
        return Happened.where(state, slot.place().donning())
                + SlotWords.of(state, slot).replaceFirst("^gate: ", "")
                + ": ";
    }
}
