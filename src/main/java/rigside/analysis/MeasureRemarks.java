package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.ExactLimits;
import rigside.decide.Tolerance;
import rigside.measure.Quantity;
import rigside.measure.TimedInhalation;
import rigside.measure.Unit;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/** What has to be known of one measure's values. */
record MeasureRemarks(State state, Measure measure, List<DonningValue> values)
        implements Measure.Kind.Cases<List<String>> {

    /** The share of donnings a tolerance bound speaks of, as in the design's example. */
    private static final double COVERED = 0.9;

    /** Below this a bound from the spread says next to nothing: own judgement. */
    private static final int FEWEST_FOR_A_BOUND = 3;

    List<String> all() {
        return measure.kind().match(this);
    }

    @Override
    public List<String> fitFactor(Measure.FitFactor kind) {
        List<String> remarks = new ArrayList<>();
        List<String> mixed =
                state.protocol().conditions().stream()
                        .filter(each -> each.reading() == Condition.ParticleReading.SEAL_AND_FILTER)
                        .map(Condition::title)
                        .toList();
        if (!mixed.isEmpty()) {
            remarks.add(
                    "The particle reading includes what passes the filter ("
                            + Phrases.list(mixed)
                            + "): the fit factor then mixes seal and filter.");
        }
        values.stream()
                .filter(each -> each.counts() && each.unresolved())
                .map(
                        each ->
                                "Donning "
                                        + each.donning()
                                        + ": every exercise was at or below the detection limit,"
                                        + " so the counter cannot resolve the fit factor. Use more"
                                        + " ambient particles or sample longer.")
                .forEach(remarks::add);
        CountingRemark.of(values).ifPresent(remarks::add);
        kind.required().ifPresent(level -> levels(level, remarks));
        if (state.course().stage() == Stage.AFTER) {
            kind.required().ifPresent(level -> atTheEnd(level, remarks));
        }
        return List.copyOf(remarks);
    }

    /**
     * How often a donning would reach the level, one figure a sentence. Made for one look, so it is
     * said when there is no further donning, and said to be so.
     */
    private void atTheEnd(Measure.Level level, List<String> remarks) {
        double confidence = state.protocol().plan().confidence();
        String sure = " (" + Phrases.confidence(confidence) + " confidence).";
        boolean bounds = false;
        boolean counts = false;
        for (ConditionSummary each : new Summaries(state, measure, values).all()) {
            int judged = each.reached() + each.missed();
            if (judged > 0) {
                counts = true;
                double share = ExactLimits.binomialLower(each.reached(), judged, confidence);
                remarks.add(
                        atLeast(each, share)
                                + Digits.three(level.value())
                                + ", by their count"
                                + sure);
                List<String> more = bounds(each, level, confidence, sure);
                remarks.addAll(more);
                bounds |= more.size() > 1;
            }
        }
        if (counts) {
            remarks.add(
                    "Each of these shares of donnings holds by itself with its confidence, not all"
                            + " of them together, and for one look, not for looking after every"
                            + " round."
                            + (bounds
                                    ? " Those by mean and spread take it that the logarithms of fit"
                                            + " factors spread normally."
                                    : ""));
        }
    }

    private String atLeast(ConditionSummary each, double share) {
        return title(each.condition())
                + ": at least "
                + Digits.percent(share)
                + " of donnings reach ";
    }

    /** None where a value is only bounded: how far up it lies widens the spread without limit. */
    private List<String> bounds(
            ConditionSummary each, Measure.Level level, double confidence, String sure) {
        boolean open =
                values.stream()
                        .filter(value -> value.condition().equals(each.condition()))
                        .anyMatch(value -> value.counts() && value.bounded());
        if (open) {
            return List.of(
                    title(each.condition())
                            + ": no share by mean and spread, since some fit factors are only known"
                            + " as \"at least\".");
        }
        if (each.n() < FEWEST_FOR_A_BOUND || !(each.spread().orElse(1) > 1)) {
            return List.of();
        }
        double[] logs = each.values().stream().mapToDouble(Math::log).toArray();
        double share = Tolerance.shareReaching(logs, Math.log(level.value()), confidence);
        double bound = Math.exp(Tolerance.lowerBound(logs, COVERED, confidence));
        String spread = ", by mean and spread" + sure;
        return List.of(
                atLeast(each, share) + "an overall " + Digits.three(level.value()) + spread,
                atLeast(each, COVERED) + "an overall " + Digits.three(bound) + spread);
    }

    private void levels(Measure.Level level, List<String> remarks) {
        for (ConditionSummary each : new Summaries(state, measure, values).all()) {
            int open = each.n() - each.reached() - each.missed();
            if (each.n() > 0) {
                remarks.add(
                        title(each.condition())
                                + ": "
                                + each.reached()
                                + " of "
                                + Phrases.count(each.n(), "donning reaches", "donnings reach")
                                + " the required fit factor "
                                + Digits.three(level.value())
                                + (level.rule() == Measure.Level.Rule.EVERY_EXERCISE
                                        ? " in every exercise"
                                        : " overall")
                                + (open > 0 ? "; left open in " + open : "")
                                + ".");
            }
        }
    }

    @Override
    public List<String> timedInhalation(Measure.TimedInhalation kind) {
        List<String> remarks = new ArrayList<>();
        for (ConditionSummary each : new Summaries(state, measure, values).all()) {
            if (each.mean().isPresent()) {
                double seconds = measure.unit().toSi(each.mean().getAsDouble());
                OptionalDouble volume = volume(kind);
                OptionalDouble pressure = pressure(each.condition());
                if (volume.isPresent() && pressure.isPresent()) {
                    remarks.add(flow(each, seconds, volume.getAsDouble(), pressure.getAsDouble()));
                }
                leak(each.condition()).ifPresent(remarks::add);
            }
        }
        remarks.addAll(new TraceRemarks(state, values).pulls());
        new TimingRemark(state, values).words().ifPresent(remarks::add);
        return List.copyOf(remarks);
    }

    @Override
    public List<String> pressureTrace(Measure.PressureTrace kind) {
        return new TraceRemarks(state, values).breaths();
    }

    @Override
    public List<String> typedNumber(Measure.TypedNumber kind) {
        return List.of();
    }

    @Override
    public List<String> calculated(Measure.Calculated kind) {
        return List.of();
    }

    private String flow(ConditionSummary summary, double seconds, double volume, double pressure) {
        double resistance = TimedInhalation.resistance(pressure, seconds, volume);
        return title(summary.condition())
                + ": mean flow "
                + Digits.three(
                        Unit.LITRE_PER_MINUTE.fromSi(TimedInhalation.meanFlow(volume, seconds)))
                + " L/min, resistance "
                + Digits.three(Unit.PASCAL_SECOND_PER_LITRE.fromSi(resistance))
                + " Pa s/L; estimated pressure drop at 85 L/min "
                + Digits.three(TimedInhalation.estimatedDropAt85LitresPerMinute(resistance))
                + " Pa (an estimate that takes the resistance as the same at every flow).";
    }

    /** The share of the flow that may have leaked, from the first fit factor there is. */
    private Optional<String> leak(String condition) {
        return state.protocol().measures().stream()
                .filter(each -> each.kind() instanceof Measure.FitFactor)
                .map(each -> new Summaries(state, each, Values.of(Evidence.of(state), each)))
                .flatMap(each -> each.all().stream())
                .filter(each -> each.condition().equals(condition) && each.mean().isPresent())
                .findFirst()
                .map(each -> leak(each, each.mean().getAsDouble()));
    }

    private String leak(ConditionSummary summary, double fitFactor) {
        double share = TimedInhalation.possibleLeakShare(fitFactor);
        String percent = Digits.three(100 * share) + " %";
        return title(summary.condition())
                + ": up to about "
                + percent
                + " of the flow may have leaked past the seal (fit factor "
                + Digits.three(fitFactor)
                + ")"
                + (share > TimedInhalation.LEAK_WARNING
                        ? ". Warning: a leak makes breathing look easier than it is."
                        : ".");
    }

    private OptionalDouble volume(Measure.TimedInhalation kind) {
        return kind.vitalCapacityFact()
                .flatMap(
                        fact ->
                                state.captured()
                                        .standing(
                                                new Slot.Field(
                                                        new Place(Stage.BEFORE, 0, 0), fact)))
                .map(entry -> entry.value())
                .filter(Value.Measured.class::isInstance)
                .map(value -> ((Value.Measured) value).quantity())
                .map(Quantity::si)
                .filter(volume -> volume > 0)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** The pressure held in a condition's trials, in Pa, if it is one and the same. */
    private OptionalDouble pressure(String condition) {
        List<Double> targets =
                state.protocol().donningOf(condition).stream()
                        .filter(Step.Trials.class::isInstance)
                        .map(Step.Trials.class::cast)
                        .filter(step -> step.measure().equals(measure.id()))
                        .map(step -> Math.abs(step.target().si()))
                        .distinct()
                        .toList();
        return targets.size() == 1 && targets.get(0) > 0
                ? OptionalDouble.of(targets.get(0))
                : OptionalDouble.empty();
    }

    private String title(String condition) {
        return Phrases.sentence(
                state.protocol().condition(condition).map(Condition::title).orElse(condition));
    }
}
