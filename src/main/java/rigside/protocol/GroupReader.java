package rigside.protocol;

import java.util.List;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads groups of steps that bear a name, and the steps that use them. */
final class GroupReader {
    static final int MOST_TIMES = 50;

    private GroupReader() {}

    /**
     * A group whose steps are not read yet: what may stand in them depends on where it is used.
     *
     * @param steps what stands behind its key {@code steps}
     */
    record Group(Value<String> id, Entry steps) {
        Value<List<Item>> read(Known known) {
            Where where = new Where(known.uses(id.get()), true);
            return steps.list(
                    1,
                    "write at least one step, such as '- step: note'",
                    item -> StepReader.read(item, where, known));
        }
    }

    static Value<Group> group(Entry entry, Known known) {
        known.groups.expect();
        return entry.fields(
                fields -> {
                    fields.is(StepElements.GROUP);
                    Value<String> id = known.groups.declare(fields.required("group"));
                    Entry steps = fields.required("steps");
                    return fields.make(() -> new Group(id, steps));
                });
    }

    /** A step that stands for those of a group. */
    static Value<Item> use(Fields fields, Where where, Known known) {
        if (where.inGroup()) {
            return fields.wrong(
                    "a group is used inside a group", "write the steps of that group here");
        }
        Value<String> group = known.groups.refer(fields.required("group").line());
        group.toOptional().ifPresent(id -> where.parts().forEach(part -> known.use(id, part)));
        Value<Integer> times = fields.optional("times").whole(1, MOST_TIMES);
        Value<List<String>> onlyFor = StepReader.onlyFor(fields, where, known);
        Value<OnlyIfText> onlyIf = OnlyIfText.read(fields);
        return fields.make(
                () -> new Item.Use(group, times.orElse(1), onlyFor, onlyIf.toOptional()));
    }
}
