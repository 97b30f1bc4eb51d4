package rigside.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;

/** What the protocol declared: the conditions and the measures that other tables name. */
final class DeclaredTables {
    private DeclaredTables() {}

    static Resource<Condition> conditions(Told told) {
        List<Condition> conditions = told.state().protocol().conditions();
        return new Resource<>(
                "conditions",
                "Conditions",
                "The things worn, as the protocol declares them.",
                List.of(
                        Column.<Condition>text(
                                        "condition",
                                        "The short word the condition goes by.",
                                        Condition::id)
                                .once(),
                        Column.text("title", "Its name as the tester saw it.", Condition::title),
                        Column.yesOrNo(
                                "reference",
                                "Whether the others are compared with it.",
                                each -> each.equals(conditions.get(0)) && conditions.size() > 1),
                        Column.text(
                                "piece",
                                "How the piece worn is marked.",
                                each -> each.specimen().piece()),
                        Column.whole(
                                "worn_before",
                                "How many times the piece was put on before this session.",
                                each -> each.specimen().wornBefore()),
                        Column.word(
                                "particle_reading",
                                "Whether particles found in the mask came past the seal only, or"
                                        + " through the filter too.",
                                Condition.ParticleReading.class,
                                Condition::reading)),
                List.of("condition"),
                List.of(),
                conditions);
    }

    static Resource<Measure> measures(Told told) {
        return new Resource<>(
                "measures",
                "Measures",
                "The numbers taken from each donning, as the protocol declares them. Ends of a band"
                        + " are ratios where ratios are compared, else differences in the measure's"
                        + " unit.",
                List.of(
                        Column.<Measure>text(
                                        "measure",
                                        "The short word the measure goes by.",
                                        Measure::id)
                                .once(),
                        Column.text("title", "Its name as the tester saw it.", Measure::title),
                        Column.text(
                                "kind",
                                "How it is computed.",
                                each -> Spelt.word(each.kind().getClass())),
                        Column.text(
                                "unit",
                                "The unit of its values; nothing for plain numbers.",
                                each -> each.unit().symbol()),
                        Column.word(
                                "compared_by",
                                "How two conditions are compared by it; nothing where it is only"
                                        + " recorded.",
                                Spelt.all(Compared.Scale.class),
                                each -> each.compared().map(c -> Spelt.word(c.scale())).orElse("")),
                        Column.text(
                                "meaningful",
                                "The smallest change that would matter, in the protocol's words.",
                                each -> each.compared().map(Compared::meaningful).orElse("")),
                        Column.number(
                                "band_low",
                                "",
                                "The lower end of the changes that are too small to matter.",
                                each -> outward(each, Compared::bandLow)),
                        Column.number(
                                "band_high",
                                "",
                                "The upper end of the changes that are too small to matter.",
                                each -> outward(each, Compared::bandHigh)),
                        Column.word(
                                "matters",
                                "The direction in which a change matters.",
                                Spelt.all(Compared.Matters.class),
                                each ->
                                        each.compared()
                                                .map(c -> Spelt.word(c.matters()))
                                                .orElse("")),
                        Column.yesOrNo(
                                "decides",
                                "Whether the session goes on until this measure has settled.",
                                each -> each.compared().map(Compared::decides).orElse(false)),
                        Column.number(
                                "resolution",
                                "",
                                "The smallest step a value can show, in its unit; 0 where its"
                                        + " readings tell it.",
                                each -> OptionalDouble.of(each.resolution())),
                        Column.number(
                                "required_level",
                                "",
                                "The level the protocol requires of it.",
                                DeclaredTables::level)),
                List.of("measure"),
                List.of(),
                told.state().protocol().measures());
    }

    private static OptionalDouble level(Measure measure) {
        return measure.kind() instanceof Measure.FitFactor fit && fit.required().isPresent()
                ? OptionalDouble.of(fit.required().get().value())
                : OptionalDouble.empty();
    }

    /** An end of the band on the scale people read. */
    private static OptionalDouble outward(Measure measure, ToDoubleFunction<Compared> end) {
        return measure.compared().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        measure.scale() == Compared.Scale.RATIO
                                ? Math.exp(end.applyAsDouble(measure.compared().get()))
                                : end.applyAsDouble(measure.compared().get()));
    }
}
