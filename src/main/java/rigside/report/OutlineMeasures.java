package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigside.measure.FreeBreathing;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** The measures: where their numbers come from, and what of a change matters. */
record OutlineMeasures(Protocol protocol) implements Measure.Kind.Cases<String> {
    /** Spreads of ratios below this factor read better as a percentage. */
    private static final double PERCENT_BELOW = 1.25;

    static List<Block> of(Protocol protocol) {
        if (protocol.measures().isEmpty()) {
            return List.of();
        }
        OutlineMeasures words = new OutlineMeasures(protocol);
        return List.of(
                new Block.Table(
                        Block.Head.of("Measure", "What it is", "What matters"),
                        protocol.measures().stream()
                                .map(
                                        measure ->
                                                Cell.texts(
                                                        List.of(
                                                                named(measure),
                                                                measure.kind().match(words),
                                                                matters(measure))))
                                .toList()));
    }

    private static String named(Measure measure) {
        String unit = measure.unit().symbol();
        return unit.isEmpty() ? measure.title() : measure.title() + " (" + unit + ")";
    }

    private static String matters(Measure measure) {
        return measure.compared()
                .map(compared -> compared(measure, compared))
                .orElse("recorded, not compared");
    }

    private static String compared(Measure measure, Compared compared) {
        List<String> words = new ArrayList<>();
        boolean ratio = compared.scale() == Compared.Scale.RATIO;
        words.add(
                (ratio ? "ratio; " : "difference; ")
                        + switch (compared.matters()) {
                            case EITHER -> "a change of ";
                            case INCREASE -> "an increase of ";
                            case DECREASE -> "a decrease of ";
                        }
                        + compared.meaningful());
        if (compared.expectedSpread().isPresent()) {
            double spread = compared.expectedSpread().getAsDouble();
            words.add(
                    "donnings are expected to spread by "
                            + (ratio ? factor(spread) : quantity(spread, measure.unit())));
        }
        words.add(compared.decides() ? "decides" : "does not decide");
        return String.join("; ", words);
    }

    /** A geometric standard deviation. */
    private static String factor(double logSpread) {
        double factor = Math.exp(logSpread);
        return factor < PERCENT_BELOW
                ? Numbers.plain(Numbers.rounded(100 * (factor - 1), 3)) + " %"
                : Numbers.plain(Numbers.rounded(factor, 3)) + " times";
    }

    @Override
    public String fitFactor(Measure.FitFactor kind) {
        List<String> words =
                new ArrayList<>(
                        List.of("fit factor: ambient over mask concentration, the harmonic mean"));
        kind.required()
                .ifPresent(
                        level ->
                                words.add(
                                        "required "
                                                + Numbers.plain(level.value())
                                                + switch (level.rule()) {
                                                    case OVERALL -> " overall";
                                                    case EVERY_EXERCISE -> " in every exercise";
                                                }));
        if (kind.detectionLimit() > 0) {
            words.add("detection limit " + concentration(kind.detectionLimit()));
        }
        if (kind.sampleFlow() > 0) {
            words.add("sample flow " + in(Unit.LITRE_PER_MINUTE, kind.sampleFlow()));
        }
        return String.join("; ", words);
    }

    @Override
    public String timedInhalation(Measure.TimedInhalation kind) {
        String mean = "geometric mean time of a donning's inhalations";
        return kind.vitalCapacityFact()
                .flatMap(this::asked)
                .map(ask -> mean + "; vital capacity from '" + ask + "'")
                .orElse(mean);
    }

    @Override
    public String pressureTrace(Measure.PressureTrace kind) {
        return "median over the exercises of the peak inhalation pressure; zero is "
                + (kind.zero() == FreeBreathing.Zero.GAUGE
                        ? "the gauge's own"
                        : "the mean over whole breaths");
    }

    @Override
    public String typedNumber(Measure.TypedNumber kind) {
        return "typed as '" + asked(kind.field()).orElse(kind.field()) + "'";
    }

    @Override
    public String calculated(Measure.Calculated kind) {
        return kind.function().words()
                + " of "
                + kind.of().stream()
                        .map(id -> "'" + asked(id).orElse(id) + "'")
                        .collect(Collectors.joining(", "));
    }

    private Optional<String> asked(String id) {
        List<Field> fields = new ArrayList<>(protocol.facts());
        for (Step step : protocol.donning()) {
            fields.addAll(step.fields());
        }
        return fields.stream().filter(field -> field.id().equals(id)).map(Field::ask).findFirst();
    }

    private static String concentration(double perCubicMetre) {
        return in(Unit.PER_CUBIC_CENTIMETRE, perCubicMetre);
    }

    private static String in(Unit unit, double si) {
        return quantity(unit.fromSi(si), unit);
    }

    private static String quantity(double value, Unit unit) {
        return new Quantity(Numbers.rounded(value, 3), unit).toString();
    }
}
