package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.Step.Exercises.Entering;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/**
 * Reads a step of exercises. Unless the file says otherwise concentrations are typed in /cm3,
 * pressures in Pa, after each exercise.
 */
final class ExercisesReader {
    private static final List<MeasureKind> FED =
            List.of(MeasureKind.FIT_FACTOR, MeasureKind.PRESSURE_TRACE);

    /** A fit factor is then off by a tenth at most: own judgement, no source. */
    static final double AMBIENT_MAY_MOVE = 0.2;

    private ExercisesReader() {}

    static Value<Step> read(Fields fields, Item.Common common, Where where, Known known) {
        StepReader.mustBeInDonning(fields, where, "exercises");
        Value<List<String>> feeds =
                fields.required("feeds")
                        .oneOrList(item -> feed(item, common, known))
                        .must(
                                ids -> ofDifferentKinds(ids, known),
                                ids -> "'feeds' names two measures of one kind",
                                "name at most one fit-factor and one pressure-trace measure");
        Entry list = fields.required("exercises");
        Value<List<Exercise>> exercises =
                list.list(1, "write at least one exercise", ExerciseReader::read);
        Value<Unit> unit = UnitText.unit(fields.optional("unit"), Dimension.CONCENTRATION);
        Value<Unit> pressureUnit =
                UnitText.unit(fields.optional("pressure-unit"), Dimension.PRESSURE);
        Value<Step.Starting> starting = StepReader.starting(fields);
        Value<Entering> entering = fields.optional("entering").oneOf(Entering.class);
        Value<Double> mayMove = mayMove(fields, feeds, known);
        Optional<String> fitFactor = ofKind(MeasureKind.FIT_FACTOR, feeds, known);
        Optional<String> pressure = ofKind(MeasureKind.PRESSURE_TRACE, feeds, known);
        if (kindsAreKnown(feeds, known) && exercises.isPresent()) {
            ExerciseRules.check(list, exercises.get(), fitFactor, pressure);
        }
        return fields.make(
                () ->
                        new Step.Exercises(
                                common.head(),
                                starting.orElse(Step.Starting.BY_KEY),
                                fitFactor,
                                pressure,
                                unit.orElse(Unit.PER_CUBIC_CENTIMETRE),
                                pressureUnit.orElse(Unit.PASCAL),
                                entering.orElse(Entering.AFTER_EACH),
                                mayMove.orElse(AMBIENT_MAY_MOVE),
                                exercises.get()));
    }

    private static Value<Double> mayMove(Fields fields, Value<List<String>> feeds, Known known) {
        boolean samples =
                !kindsAreKnown(feeds, known)
                        || ofKind(MeasureKind.FIT_FACTOR, feeds, known).isPresent();
        if (!samples) {
            fields.refused(
                    "ambient-may-move",
                    "is for exercises that feed a fit factor",
                    "delete it: no ambient air is sampled here");
        }
        return QuantityText.share(fields.optional("ambient-may-move").line(), "20 %")
                .must(
                        share -> share > 0 && share <= 2,
                        share ->
                                "'ambient-may-move' is "
                                        + QuantityText.plain(share * 100)
                                        + " %, must be above 0 % and at most 200 %",
                        "write the change from sample to sample that still passes, such as"
                                + " '20 %'");
    }

    private static Value<String> feed(Entry entry, Item.Common common, Known known) {
        Value<String> measure = Feeds.measure(entry, FED, "exercises feed", known);
        common.feed(measure);
        return measure;
    }

    private static boolean ofDifferentKinds(List<String> ids, Known known) {
        List<MeasureKind> kinds =
                ids.stream().filter(known.kinds::containsKey).map(known.kinds::get).toList();
        return kinds.stream().distinct().count() == kinds.size();
    }

    private static boolean kindsAreKnown(Value<List<String>> feeds, Known known) {
        return feeds.isPresent() && known.kinds.keySet().containsAll(feeds.get());
    }

    private static Optional<String> ofKind(
            MeasureKind kind, Value<List<String>> feeds, Known known) {
        return feeds.orElse(List.of()).stream()
                .filter(id -> known.kinds.get(id) == kind)
                .findFirst();
    }
}
