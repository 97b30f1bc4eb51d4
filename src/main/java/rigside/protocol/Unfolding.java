package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes the groups out where they are used, so that from here on a part of the procedure is one
 * list of steps.
 *
 * @param groups the groups that could be read, by id
 */
record Unfolding(Map<String, List<Item>> groups) {
    /** More than any part of a session needs; a file that comes to more is a slip. */
    private static final int MOST_STEPS = 200;

    /** Empty when a group that is used could not be read, or its use is wrong. */
    Optional<List<Placed>> of(List<Item> items) {
        List<Placed> placed = new ArrayList<>();
        boolean whole = true;
        for (Item item : items) {
            if (item instanceof Item.Use use) {
                whole &= add(use, placed);
            } else {
                placed.add(single((Item.Written) item));
            }
        }
        return whole ? Optional.of(List.copyOf(placed)) : Optional.empty();
    }

    private static Placed single(Item.Written item) {
        List<Placed.Depends> depends =
                item.onlyIf().stream().map(text -> new Placed.Depends(text, 0)).toList();
        return new Placed(item.step(), item.feeds(), depends);
    }

    private boolean add(Item.Use use, List<Placed> placed) {
        List<Item> group = groups.get(use.group().get());
        if (group == null) {
            return false;
        }
        if (placed.size() + use.times() * group.size() > MOST_STEPS) {
            use.group()
                    .wrong(
                            "with this group there are more than " + MOST_STEPS + " steps here",
                            "write fewer 'times', or put less into the group");
            return false;
        }
        boolean whole = true;
        for (int copy = 1; copy <= use.times(); copy++) {
            for (int at = 0; at < group.size(); at++) {
                Optional<Placed> step = step(use, (Item.Written) group.get(at), at, copy);
                step.ifPresent(placed::add);
                whole &= step.isPresent();
            }
        }
        return whole;
    }

    private static Optional<Placed> step(Item.Use use, Item.Written item, int at, int copy) {
        Step step = item.step();
        List<String> conditions = both(use.onlyFor().orElse(List.of()), step);
        if (conditions.isEmpty() && !step.head().applies().conditions().isEmpty()) {
            use.onlyFor()
                    .wrong(
                            "'only-for' leaves no condition for the step '"
                                    + step.title()
                                    + "' of the group",
                            "name a condition that the step is for too, or delete one of the two"
                                    + " lines");
            return Optional.empty();
        }
        String title =
                use.times() == 1
                        ? step.title()
                        : step.title() + " (" + copy + " of " + use.times() + ")";
        Step.Head head = new Step.Head(title, step.say(), step.head().applies().to(conditions));
        List<Placed.Depends> depends = new ArrayList<>();
        use.onlyIf().ifPresent(text -> depends.add(new Placed.Depends(text, at)));
        item.onlyIf().ifPresent(text -> depends.add(new Placed.Depends(text, 0)));
        return Optional.of(new Placed(step.match(new UnderHead(head)), item.feeds(), depends));
    }

    /** The conditions both the use and the step are for; where one names none, the other's. */
    private static List<String> both(List<String> use, Step step) {
        List<String> own = step.head().applies().conditions();
        if (use.isEmpty() || own.isEmpty()) {
            return use.isEmpty() ? own : use;
        }
        return own.stream().filter(use::contains).toList();
    }
}
