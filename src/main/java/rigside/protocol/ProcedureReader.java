package rigside.protocol;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads the steps of a file: groups, before, donning, after. */
final class ProcedureReader {
    private final Known known;
    private final Map<Part, Optional<List<Placed>>> parts = new EnumMap<>(Part.class);

    private ProcedureReader(Known known) {
        this.known = known;
    }

    /**
     * The steps of each part, groups written out.
     *
     * @param donning empty when it could not be read
     */
    record Steps(
            Optional<List<Step>> before,
            Optional<List<Step>> donning,
            Optional<List<Step>> after) {}

    static Steps read(Fields fields, Known known) {
        return new ProcedureReader(known).steps(fields, fields::required);
    }

    /** The steps before the first donning, where there is none. */
    static Optional<List<Step>> readBefore(Fields fields, Known known) {
        return new ProcedureReader(known).steps(fields, fields::optional).before();
    }

    private Steps steps(Fields fields, Function<String, Entry> donning) {
        Value<List<GroupReader.Group>> groups =
                fields.optional("groups")
                        .list(
                                1,
                                "write at least one group, or delete the line",
                                item -> GroupReader.group(item, known));
        Map<Part, Optional<List<Item>>> items = new EnumMap<>(Part.class);
        items.put(Part.BEFORE, items(fields.optional("before"), Part.BEFORE));
        items.put(Part.DONNING, items(donning.apply("donning"), Part.DONNING));
        items.put(Part.AFTER, items(fields.optional("after"), Part.AFTER));
        Unfolding unfolding = new Unfolding(read(groups.orElse(List.of())));
        items.forEach((part, list) -> parts.put(part, list.flatMap(unfolding::of)));
        if (parts.values().stream().allMatch(Optional::isPresent)) {
            groups.orElse(List.of()).forEach(this::mustBeUsed);
        }
        Steps steps = new Steps(steps(Part.BEFORE), steps(Part.DONNING), steps(Part.AFTER));
        parts.get(Part.DONNING).ifPresent(this::noteFeeds);
        return steps;
    }

    /** What is not there has no steps; what is there may be wrong. */
    private Optional<List<Item>> items(Entry entry, Part part) {
        Where where = new Where(Set.of(part), false);
        Value<List<Item>> items =
                entry.list(
                        1,
                        "write at least one step, such as '- step: note'",
                        item -> StepReader.read(item, where, known));
        return entry.isGiven() ? items.toOptional() : Optional.of(List.of());
    }

    private Map<String, List<Item>> read(List<GroupReader.Group> groups) {
        Map<String, List<Item>> steps = new HashMap<>();
        for (GroupReader.Group group : groups) {
            group.read(known).toOptional().ifPresent(read -> steps.put(group.id().get(), read));
        }
        return steps;
    }

    private void mustBeUsed(GroupReader.Group group) {
        group.id()
                .must(
                        id -> !known.uses(id).isEmpty(),
                        id -> "no step uses the group '" + id + "'",
                        "add '- step: group' with 'group: "
                                + group.id().get()
                                + "' where its steps belong, or delete the group");
    }

    private Optional<List<Step>> steps(Part part) {
        return parts.get(part)
                .flatMap(
                        placed -> {
                            List<Step> steps = new ArrayList<>();
                            for (int at = 0; at < placed.size(); at++) {
                                step(part, placed, at).ifPresent(steps::add);
                            }
                            return steps.size() == placed.size()
                                    ? Optional.of(List.copyOf(steps))
                                    : Optional.empty();
                        });
    }

    private Optional<Step> step(Part part, List<Placed> placed, int at) {
        Step step = placed.get(at).step();
        Applies applies = step.head().applies();
        List<OnlyIf> onlyIf = new ArrayList<>();
        for (Placed.Depends each : placed.get(at).depends()) {
            Optional<List<Step>> earlier = earlier(part, placed.subList(0, at - each.back()));
            OnlyIfRules.read(each, applies, earlier, known).toOptional().ifPresent(onlyIf::add);
        }
        Step.Head head = new Step.Head(step.title(), step.say(), applies.with(onlyIf));
        return onlyIf.size() == placed.get(at).depends().size()
                ? Optional.of(step.match(new UnderHead(head)))
                : Optional.empty();
    }

    /** The steps of the same part, and those before the first donning. */
    private Optional<List<Step>> earlier(Part part, List<Placed> here) {
        Optional<List<Placed>> before =
                part == Part.BEFORE ? Optional.of(List.of()) : parts.get(Part.BEFORE);
        return before.map(
                first -> {
                    List<Step> steps = new ArrayList<>();
                    first.forEach(placed -> steps.add(placed.step()));
                    here.forEach(placed -> steps.add(placed.step()));
                    return steps;
                });
    }

    private void noteFeeds(List<Placed> donning) {
        donning.forEach(
                placed ->
                        placed.feeds()
                                .forEach(
                                        measure ->
                                                known.feed(
                                                        measure, placed.step().head().applies())));
    }
}
