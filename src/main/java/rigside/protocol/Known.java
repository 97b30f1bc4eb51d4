package rigside.protocol;

import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Value;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What the parts of a file read so far have declared and used, for the parts that refer to it. */
final class Known {
    /** A measure a step feeds, and when the step is done. */
    record Feed(Value<String> measure, Applies applies) {}

    /** A measure's typed number: the form field that holds it and the unit it is shown in. */
    record Typed(Value<String> measure, Value<String> field, Value<Unit> unit) {}

    /** A field of a form of the donning, and when the form is asked. */
    record Asked(Field field, Applies applies) {}

    final Ids conditions = new Ids("condition");
    final Ids measures = new Ids("measure");
    final Ids fields = new Ids("fact or field");
    final Ids facts = new Ids("fact");

    /** The facts read, by id. */
    final Map<String, Field> factFields = new HashMap<>();

    /** The kinds of the measures whose kind could be read, by id. */
    final Map<String, MeasureKind> kinds = new HashMap<>();

    /** The ids of the measures, at their places. */
    final Map<String, Value<String>> measureIds = new HashMap<>();

    /** The flows particle counters draw, in m3/s, of the fit factors that say it. */
    final List<Double> flows = new ArrayList<>();

    /**
     * Whether the mask stays on between conditions, or nobody knows since the plan is unreadable.
     */
    boolean maskMayStayOn = true;

    final List<Feed> feeds = new ArrayList<>();

    /** The fields that measures take typed numbers from. */
    final List<Typed> typed = new ArrayList<>();

    /** The fields of the donning's forms, by id. */
    final Map<String, Asked> forms = new HashMap<>();

    /** Notes that a step feeds a measure; one that could not be read is left out. */
    void feed(Value<String> measure, Applies applies) {
        measure.must(
                id -> !applies.onlyAfterPuttingOn(),
                id -> "'" + id + "' is fed by a step that is left out while the mask stays on",
                "delete 'only-after' of that step: every setting needs a value");
        if (measure.isPresent()) {
            feeds.add(new Feed(measure, applies));
        }
    }

    /** The flow of the counter in m3/s, where the file speaks of one. */
    OptionalDouble flow() {
        return flows.stream().distinct().count() == 1
                ? OptionalDouble.of(flows.get(0))
                : OptionalDouble.empty();
    }

    void addFact(Field fact) {
        facts.add(fact.id());
        factFields.put(fact.id(), fact);
    }

    /** Whether a fact is a number measured in a unit of volume; true for one that is unreadable. */
    boolean isVolume(String fact) {
        Field field = factFields.get(fact);
        return field == null
                || (field.answer() instanceof Field.Numeric number
                        && number.unit().dimension() == Dimension.VOLUME);
    }
}
