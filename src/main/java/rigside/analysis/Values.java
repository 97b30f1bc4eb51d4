package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.PressureTrace;
import rigside.measure.Quantity;
import rigside.measure.TimedInhalation;
import rigside.protocol.Exercise;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Donning;
import rigside.session.Slot;

/** What one measure is in one donning. */
record Values(Sight sight, Measure measure) implements Measure.Kind.Cases<DonningValue> {

    /** One for every donning begun, in the order they were begun. */
    static List<DonningValue> of(Evidence evidence, Measure measure) {
        return evidence.state().course().donnings().stream()
                .map(donning -> of(evidence, measure, donning))
                .toList();
    }

    static DonningValue of(Evidence evidence, Measure measure, Donning donning) {
        return measure.kind().match(new Values(new Sight(evidence, donning), measure));
    }

    @Override
    public DonningValue fitFactor(Measure.FitFactor kind) {
        return new FitFactorValue(sight, measure, kind).value();
    }

    /**
     * From the trials there are: one left out makes the mean less certain, but does not shift it.
     */
    @Override
    public DonningValue timedInhalation(Measure.TimedInhalation kind) {
        List<Part> parts = new ArrayList<>();
        for (Sight.Placed<Step.Trials> placed : sight.steps(Step.Trials.class)) {
            if (placed.step().measure().equals(measure.id())) {
                for (int trial = 0; trial < placed.step().count(); trial++) {
                    parts.add(
                            number(
                                    "trial " + (parts.size() + 1),
                                    new Slot.Trial(placed.place(), trial),
                                    true));
                }
            }
        }
        return gathered(parts, TimedInhalation.geometricMean(numbers(parts)));
    }

    @Override
    public DonningValue pressureTrace(Measure.PressureTrace kind) {
        List<Part> parts = new ArrayList<>();
        for (Sight.Placed<Step.Exercises> placed : sight.steps(Step.Exercises.class)) {
            if (placed.step().pressureTrace().equals(Optional.of(measure.id()))) {
                List<Exercise> exercises = placed.step().exercises();
                for (int at = 0; at < exercises.size(); at++) {
                    if (exercises.get(at).pressure().isPresent()) {
                        Slot slot = new Slot.Pressure(placed.place(), at);
                        parts.add(number(exercises.get(at).title(), slot, false));
                    }
                }
            }
        }
        return gathered(parts, PressureTrace.median(numbers(parts)));
    }

    @Override
    public DonningValue typedNumber(Measure.TypedNumber kind) {
        List<Part> parts =
                sight.steps(Step.class).stream()
                        .filter(
                                placed ->
                                        placed.step().fields().stream()
                                                .anyMatch(f -> f.id().equals(kind.field())))
                        .map(
                                placed ->
                                        number(
                                                measure.title(),
                                                new Slot.Field(placed.place(), kind.field()),
                                                false))
                        .limit(1)
                        .toList();
        return gathered(parts, parts.isEmpty() ? OptionalDouble.empty() : parts.get(0).value());
    }

    @Override
    public DonningValue calculated(Measure.Calculated kind) {
        Part part = new CalculatedPart(sight, measure, kind).part();
        return gathered(List.of(part), part.value());
    }

    private Part number(String title, Slot slot, boolean mustBePositive) {
        Optional<Quantity> number = sight.number(slot);
        if (number.isEmpty()) {
            return part(title, OptionalDouble.empty(), slot, sight.whyEmpty(slot));
        }
        double value = number.get().in(measure.unit()).value();
        if (!Scale.holds(value)) {
            return part(
                    title, OptionalDouble.empty(), slot, "too large or too small to reckon with");
        }
        return mustBePositive && !(value > 0)
                ? part(title, OptionalDouble.empty(), slot, "not above 0")
                : part(title, OptionalDouble.of(value), slot, "");
    }

    private Part part(String title, OptionalDouble value, Slot slot, String missing) {
        return new Part(
                title, value, false, true, Level.NONE, sight.entries(List.of(slot)), missing);
    }

    private static List<Double> numbers(List<Part> parts) {
        return parts.stream()
                .filter(part -> part.value().isPresent())
                .map(part -> part.value().getAsDouble())
                .toList();
    }

    /** A value that no counter bounds. */
    private DonningValue gathered(List<Part> parts, OptionalDouble value) {
        List<String> missing = new ArrayList<>(missing(parts));
        boolean comparable = isComparable(value);
        if (!comparable) {
            missing.add("the value is not above 0, so it has no ratio");
        }
        return new DonningValue(
                sight.donning().number(),
                sight.donning().round(),
                sight.donning().condition(),
                standing(sight, value.isPresent() && comparable),
                value,
                value,
                Scale.of(measure).step(measure.resolution(), value.orElse(1)),
                false,
                false,
                Level.NONE,
                parts,
                sight.restsOn(
                        parts.stream().flatMap(part -> part.entries().stream()).toList(),
                        this::brings),
                missing);
    }

    /** Whether a step can bring readings of this measure. */
    private boolean brings(Step step) {
        if (step instanceof Step.Trials trials) {
            return trials.measure().equals(measure.id());
        }
        if (step instanceof Step.Exercises exercises) {
            return exercises.pressureTrace().equals(Optional.of(measure.id()));
        }
        List<String> asked =
                measure.kind() instanceof Measure.Calculated calculated
                        ? calculated.of()
                        : measure.kind() instanceof Measure.TypedNumber typed
                                ? List.of(typed.field())
                                : List.of();
        return step.asks().stream().anyMatch(asked::contains);
    }

    /** Whether a value, if there is one, can be compared the way the measure is. */
    private boolean isComparable(OptionalDouble value) {
        return value.isEmpty() || value.getAsDouble() > 0 || !Scale.of(measure).isRatio();
    }

    static List<String> missing(List<Part> parts) {
        return parts.stream()
                .filter(part -> !part.missing().isEmpty())
                .map(part -> part.title() + ": " + part.missing())
                .toList();
    }

    static Standing standing(Sight sight, boolean hasValue) {
        if (sight.evidence().counts(sight.donning())) {
            return hasValue && !sight.evidence().isOut(sight.donning())
                    ? Standing.COUNTS
                    : Standing.WITHOUT_VALUE;
        }
        return switch (sight.donning().outcome()) {
            case OPEN -> Standing.OPEN;
            case ABANDONED -> Standing.ABANDONED;
            case COMPLETE, STRUCK -> Standing.STRUCK;
        };
    }
}
