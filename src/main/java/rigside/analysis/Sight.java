package rigside.analysis;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rigside.measure.Quantity;
import rigside.protocol.Step;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/**
 * What was captured in one donning, as an analysis looks at it.
 *
 * @param entries those of the donning, struck out or not
 */
record Sight(Evidence evidence, Donning donning, List<Entry> entries) {

    Sight(Evidence evidence, Donning donning) {
        this(evidence, donning, evidence.entries(donning));
    }

    /** A step of the donning and where it stands. */
    record Placed<S extends Step>(Place place, S step) {}

    /** The steps of one kind that are done in the donning, in order. */
    <S extends Step> List<Placed<S>> steps(Class<S> kind) {
        List<Step> steps = evidence.state().protocol().donning();
        List<Applicable> applicable = applicable();
        List<Placed<S>> placed = new ArrayList<>();
        for (int at = 0; at < steps.size(); at++) {
            if (kind.isInstance(steps.get(at)) && applicable.get(at).is()) {
                Place place = new Place(Stage.DONNING, donning.number(), at);
                placed.add(new Placed<>(place, kind.cast(steps.get(at))));
            }
        }
        return List.copyOf(placed);
    }

    /**
     * The numbers of the entries a value rests on: those read for it, and those that decided which
     * of the steps that bring them were done.
     *
     * @param brings whether a step of the donning can bring such readings
     */
    List<Integer> restsOn(List<Integer> read, Predicate<Step> brings) {
        List<Step> steps = evidence.state().protocol().donning();
        List<Applicable> applicable = applicable();
        Stream<Entry> decided =
                IntStream.range(0, steps.size())
                        .filter(at -> brings.test(steps.get(at)))
                        .boxed()
                        .flatMap(at -> applicable.get(at).because().stream());
        return Stream.concat(read.stream(), decided.map(Entry::number)).distinct().toList();
    }

    private List<Applicable> applicable() {
        return Applicable.of(evidence.state(), Stage.DONNING, donning.number(), this::entry);
    }

    Optional<Entry> entry(Slot slot) {
        boolean isOfDonning = slot.place().donning() == donning.number();
        return evidence.entry(isOfDonning ? entries : evidence.entries(), slot);
    }

    /** The number that counts for a gap. */
    Optional<Quantity> number(Slot slot) {
        return entry(slot)
                .map(Entry::value)
                .filter(Value.Measured.class::isInstance)
                .map(value -> ((Value.Measured) value).quantity());
    }

    /** The concentration that counts for a gap. */
    Optional<ExerciseFit.Read> concentration(Slot slot) {
        return entry(slot)
                .filter(entry -> entry.value() instanceof Value.Measured)
                .map(
                        entry ->
                                new ExerciseFit.Read(
                                        ((Value.Measured) entry.value()).quantity().si(),
                                        entry.seconds()));
    }

    /**
     * The step of the session's mask concentrations, in 1/m3: one in the last of the decimal places
     * they were given with. Trailing zeros are lost, so all readings are asked.
     */
    double maskStep() {
        return evidence.entries().stream()
                .filter(entry -> entry.slot() instanceof Slot.Mask)
                .map(Entry::value)
                .filter(Value.Measured.class::isInstance)
                .map(value -> ((Value.Measured) value).quantity())
                .mapToDouble(Sight::step)
                .min()
                .orElse(0);
    }

    private static double step(Quantity reading) {
        int places = BigDecimal.valueOf(reading.value()).stripTrailingZeros().scale();
        return new Quantity(Math.pow(10, -Math.max(places, 0)), reading.unit()).si();
    }

    List<Integer> entries(List<Slot> slots) {
        return slots.stream().flatMap(slot -> entry(slot).stream()).map(Entry::number).toList();
    }

    /** Why a gap holds no number, in words. */
    String whyEmpty(Slot slot) {
        Captured captured = evidence.state().captured();
        Optional<String> leftOut =
                captured.leftOut().stream()
                        .filter(left -> left.slot().equals(slot))
                        .map(left -> "left out: " + left.reason())
                        .findFirst();
        Optional<String> struck =
                captured.entries().stream()
                        .filter(entry -> entry.slot().equals(slot))
                        .flatMap(entry -> entry.struck().stream())
                        .map(each -> "struck out: " + each.reason())
                        .reduce((first, last) -> last);
        if (entry(slot).isPresent()) {
            return "left empty";
        }
        return leftOut.or(() -> struck)
                .orElse(
                        donning.outcome() == Donning.Outcome.OPEN
                                ? "not captured yet"
                                : "not captured");
    }
}
