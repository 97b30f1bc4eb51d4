package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Calculation;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Applicable;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Stage;

/** What a calculated measure is in one donning, with all it is calculated from. */
final class CalculatedPart {
    private final Sight sight;
    private final Measure measure;
    private final Measure.Calculated kind;
    private final List<Double> numbers = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    CalculatedPart(Sight sight, Measure measure, Measure.Calculated kind) {
        this.sight = sight;
        this.measure = measure;
        this.kind = kind;
        kind.of().forEach(this::add);
    }

    /** Its value is missing when any of the numbers is. */
    Part part() {
        OptionalDouble value = missing.isEmpty() ? value() : OptionalDouble.empty();
        if (missing.isEmpty() && value.isEmpty()) {
            missing.add("cannot be calculated from these numbers");
        }
        return new Part(
                measure.title(),
                value,
                false,
                true,
                Level.NONE,
                sight.entries(slots),
                String.join("; ", missing));
    }

    private OptionalDouble value() {
        Calculation how = kind.function();
        Unit unit = measure.unit();
        OptionalDouble si = how.of(numbers);
        if (si.isEmpty()) {
            return si;
        }
        double value =
                how.isDistance()
                        ? unit.differenceFromSi(si.getAsDouble())
                        : unit.fromSi(si.getAsDouble());
        return Scale.holds(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private void add(String id) {
        List<Place> asked = asked(id, Stage.DONNING, sight.donning().number());
        if (asked.isEmpty()) {
            List<Place> before = asked(id, Stage.BEFORE, 0);
            asked = before.subList(Math.max(0, before.size() - 1), before.size());
        }
        if (asked.isEmpty()) {
            missing.add(id + ": not asked in this donning");
        }
        for (int at = 0; at < asked.size(); at++) {
            Slot.Field slot = new Slot.Field(asked.get(at), id);
            slots.add(slot);
            Optional<Quantity> number = sight.number(slot);
            number.map(Quantity::si).ifPresent(numbers::add);
            if (number.isEmpty()) {
                String ask = Procedure.field(sight.evidence().state(), slot).ask();
                String which =
                        asked.size() == 1 ? "" : " (" + (at + 1) + " of " + asked.size() + ")";
                missing.add(ask + which + ": " + sight.whyEmpty(slot));
            }
        }
    }

    /** Where something was asked for in one part of the session. */
    private List<Place> asked(String id, Stage stage, int donning) {
        List<Step> steps = Procedure.steps(sight.evidence().state().protocol(), stage);
        List<Applicable> applicable =
                Applicable.of(sight.evidence().state(), stage, donning, sight::entry);
        List<Place> places = new ArrayList<>();
        for (int at = 0; at < steps.size(); at++) {
            if (applicable.get(at).is() && steps.get(at).asks().contains(id)) {
                places.add(new Place(stage, donning, at));
            }
        }
        return places;
    }
}
