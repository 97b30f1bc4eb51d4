package rigside.protocol;

import rigside.protocol.Condition.ParticleReading;
import rigside.protocol.Condition.Specimen;
import rigside.yaml.Entry;
import rigside.yaml.Value;

/** Reads one condition. */
final class ConditionReader {
    static final int MOST_WORN = 10_000;

    private ConditionReader() {}

    static Value<Condition> read(Entry entry, Known known) {
        known.conditions.expect();
        return entry.fields(
                fields -> {
                    fields.is(ConditionElements.CONDITION);
                    Value<String> id = known.conditions.declare(fields.required("id"));
                    Value<String> title = known.conditions.title(fields.required("title"));
                    Value<Specimen> specimen = specimen(fields.required("specimen"));
                    Entry reading = fields.optional("particle-reading");
                    Value<ParticleReading> particles = reading.oneOf(ParticleReading.class);
                    if (!reading.isGiven() && known.kinds.containsValue(MeasureKind.FIT_FACTOR)) {
                        fields.required("particle-reading");
                    }
                    return fields.make(
                            () ->
                                    new Condition(
                                            id.get(),
                                            title.get(),
                                            specimen.get(),
                                            particles.orElse(ParticleReading.SEAL_ONLY)));
                });
    }

    private static Value<Specimen> specimen(Entry entry) {
        return entry.fields(
                fields -> {
                    fields.is(ConditionElements.SPECIMEN);
                    Value<String> piece = fields.required("piece").line();
                    Value<Integer> worn = fields.required("worn-before").whole(0, MOST_WORN);
                    return fields.make(() -> new Specimen(piece.get(), worn.get()));
                });
    }
}
