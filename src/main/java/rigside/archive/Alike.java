package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** Whether two protocols make the same values, so that sessions of them can be set together. */
final class Alike {
    private Alike() {}

    /**
     * What makes them different tests; empty when they are one. Words around the test may differ,
     * and the plan, what is meaningful, which piece was worn and how often: each of a careful
     * tester's files says another number there.
     */
    static Optional<String> difference(Protocol one, Protocol other) {
        if (one.plan().design() != other.plan().design()) {
            return Optional.of("how values are set against each other");
        }
        if (!ids(one).equals(ids(other))) {
            return Optional.of(
                    "the conditions: "
                            + listed(ids(one))
                            + " there, "
                            + listed(ids(other))
                            + " here");
        }
        for (Condition each : one.conditions()) {
            Condition same = other.condition(each.id()).orElseThrow();
            if (each.reading() != same.reading()) {
                return Optional.of("what a particle reading holds in '" + each.id() + "'");
            }
        }
        return measures(one, other).or(() -> procedure(one, other));
    }

    private static String listed(List<String> ids) {
        return ids.isEmpty() ? "none" : Names.list(ids);
    }

    private static List<String> ids(Protocol protocol) {
        return protocol.conditions().stream().map(Condition::id).toList();
    }

    private static Optional<String> measures(Protocol one, Protocol other) {
        for (Measure each : one.measures()) {
            Optional<Measure> same = other.measure(each.id());
            if (same.isEmpty()) {
                return Optional.of("the measure '" + each.id() + "', which is missing here");
            }
            if (!isAlike(each, same.get())) {
                return Optional.of("how '" + each.id() + "' is measured or compared");
            }
        }
        return other.measures().stream()
                .filter(each -> one.measure(each.id()).isEmpty())
                .findFirst()
                .map(each -> "the measure '" + each.id() + "', which is missing there");
    }

    /** In all but what is meaningful and expected. */
    private static boolean isAlike(Measure one, Measure other) {
        return one.kind().equals(other.kind())
                && one.unit().equals(other.unit())
                && one.scale() == other.scale()
                && one.compared().isPresent() == other.compared().isPresent();
    }

    private static Optional<String> procedure(Protocol one, Protocol other) {
        List<Step> there = one.donning();
        List<Step> here = other.donning();
        for (int i = 0; i < Math.min(there.size(), here.size()); i++) {
            if (!there.get(i).equals(here.get(i))) {
                return Optional.of("the step '" + here.get(i).title() + "' of a donning");
            }
        }
        return there.size() == here.size()
                ? Optional.empty()
                : Optional.of("how many steps a donning has");
    }

    /** What differs and does not matter for it, but should be known; may be empty. */
    static List<String> remarks(Protocol one, Protocol other, String name) {
        List<String> remarks = new ArrayList<>();
        for (Condition each : one.conditions()) {
            String there = each.specimen().piece();
            String here = other.condition(each.id()).orElseThrow().specimen().piece();
            if (!there.equals(here)) {
                remarks.add(
                        name
                                + " wore another piece as '"
                                + each.title()
                                + "': "
                                + here
                                + ", not "
                                + there
                                + ".");
            }
        }
        return List.copyOf(remarks);
    }
}
