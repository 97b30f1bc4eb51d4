package rigside.protocol;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Value;

/** What the parts of a file read so far have declared and used, for the parts that refer to it. */
final class Known {
    /** A measure a step feeds, and when the step is done. */
    record Feed(Value<String> measure, Applies applies) {}

    /** A measure's typed number: the form field that holds it and the unit it is shown in. */
    record Typed(Value<String> measure, Value<String> field, Value<Unit> unit) {}

    /** Whether it is read from a journal: what was refused only later is let pass then. */
    final boolean recorded;

    final Ids conditions;
    final Ids measures;
    final Ids answers;
    final Ids facts;
    final Ids groups;

    Known(boolean recorded) {
        this.recorded = recorded;
        conditions = new Ids("condition", recorded);
        measures = new Ids("measure", recorded);
        answers = new Ids("fact, field or check", recorded);
        facts = new Ids("fact", recorded);
        groups = new Ids("group", recorded);
    }

    /** The facts and fields read, by id. */
    final Map<String, Field> fields = new HashMap<>();

    /** The checks read that bear an id, by it. */
    final Map<String, Step.Checklist.Item> checks = new HashMap<>();

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

    /** The parts that use a group, by its id. */
    private final Map<String, Set<Part>> uses = new HashMap<>();

    /** The ids of the measures by which conditions are compared. */
    final Set<String> compared = new HashSet<>();

    /** The measures calculated from what is typed. */
    final List<CalculatedText> calculated = new ArrayList<>();

    /** The fields that measures take typed numbers from. */
    final List<Typed> typed = new ArrayList<>();

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

    void use(String group, Part part) {
        uses.computeIfAbsent(group, none -> EnumSet.noneOf(Part.class)).add(part);
    }

    /** The parts of the procedure a group is used in, as far as they could be read. */
    Set<Part> uses(String group) {
        return uses.getOrDefault(group, Set.of());
    }

    void addFact(Field fact) {
        facts.add(fact.id());
    }

    void addField(Field field) {
        fields.put(field.id(), field);
    }

    void addCheck(Step.Checklist.Item check) {
        check.id().ifPresent(id -> checks.put(id, check));
    }

    /** An id that may be given to something asked. */
    Value<String> id(Entry entry) {
        if (entry.isGiven()) {
            answers.expect();
        }
        return answers.declare(entry);
    }

    /** Whether a fact is a number measured in a unit of volume; true for one that is unreadable. */
    boolean isVolume(String fact) {
        Field field = fields.get(fact);
        return field == null
                || (field.answer() instanceof Field.Numeric number
                        && number.unit().dimension() == Dimension.VOLUME);
    }
}
