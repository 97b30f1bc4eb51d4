package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rigside.decide.Course;

/** The values of two conditions by round. */
record Pairing(SortedMap<Integer, Double> reference, SortedMap<Integer, Double> other) {

    /** So many rounds are told by number. */
    private static final int NAMED = 10;

    Comparison comparison(Wording wording) {
        Setting setting = wording.setting();
        Rows rows = rows(setting);
        Course course = setting.course(rows);
        Judged judged =
                new Judged(
                        rows,
                        course,
                        course.standing(),
                        course.settling()
                                .map(each -> new Comparison.Settled(each.n(), each.conclusion())),
                        course.latest().planUsedUp(),
                        Onward.OPEN,
                        true,
                        false,
                        new Otherwise(
                                Optional.empty(), false, List.of(), restsOn(wording, course)));
        return judged.comparison(
                wording,
                new Judged.Ids(wording.condition(), wording.reference()),
                judged.forecast(setting, 0, course.latest().n()),
                false,
                List.of(),
                remarks(wording, rows));
    }

    /** What it would not say the same without: rounds, or single values in the other design. */
    private RestsOn restsOn(Wording wording, Course course) {
        Setting setting = wording.setting();
        if (course.settling().isEmpty()) {
            return RestsOn.NOTHING;
        }
        Predicate<Pairing> differs =
                left ->
                        !setting.course(left.rows(setting))
                                .conclusion()
                                .equals(course.conclusion());
        Pairing used = first(setting, setting.plan().most() + 1);
        int n = course.latest().n();
        if (setting.isPaired()) {
            return RestsOn.rounds(
                    used.reference().keySet().stream()
                            .filter(
                                    round ->
                                            differs.test(
                                                    new Pairing(
                                                            without(used.reference(), round),
                                                            without(used.other(), round))))
                            .toList(),
                    n);
        }
        List<String> needed = new ArrayList<>();
        for (int round : used.reference().keySet()) {
            if (differs.test(new Pairing(without(used.reference(), round), used.other()))) {
                needed.add("round " + round + " of " + wording.reference());
            }
        }
        for (int round : used.other().keySet()) {
            if (differs.test(new Pairing(used.reference(), without(used.other(), round)))) {
                needed.add("round " + round + " of " + wording.condition());
            }
        }
        return RestsOn.lines(needed, 2 * n);
    }

    private static SortedMap<Integer, Double> without(
            SortedMap<Integer, Double> values, int round) {
        SortedMap<Integer, Double> left = new TreeMap<>(values);
        left.remove(round);
        return left;
    }

    /** So many values of each, the first; of pairs in the paired design. */
    Pairing first(Setting setting, int most) {
        return new Pairing(
                first(setting, reference, other, most), first(setting, other, reference, most));
    }

    private static SortedMap<Integer, Double> first(
            Setting setting,
            SortedMap<Integer, Double> these,
            SortedMap<Integer, Double> partners,
            int most) {
        SortedMap<Integer, Double> first = new TreeMap<>();
        these.entrySet().stream()
                .filter(each -> !setting.isPaired() || partners.containsKey(each.getKey()))
                .limit(most)
                .forEach(each -> first.put(each.getKey(), each.getValue()));
        return first;
    }

    private Rows rows(Setting setting) {
        Pairing all = first(setting, Integer.MAX_VALUE);
        List<Double> mine = List.copyOf(all.reference().values());
        List<Double> theirs = List.copyOf(all.other().values());
        double step = setting.measure().resolution();
        DoubleStream steps =
                Stream.concat(mine.stream(), theirs.stream())
                        .mapToDouble(value -> setting.scale().step(step, value));
        return new Rows(mine, theirs, Rows.resolution(steps), List.of());
    }

    /** The first rounds by number, the others by count. */
    private static String named(List<Integer> rounds) {
        int more = rounds.size() - NAMED;
        List<Object> first = new ArrayList<>(more > 1 ? rounds.subList(0, NAMED) : rounds);
        if (more > 1) {
            first.add(more + " more");
        }
        return Phrases.list(first);
    }

    private List<String> remarks(Wording wording, Rows rows) {
        List<String> remarks = new ArrayList<>();
        Setting setting = wording.setting();
        Set<Integer> lacking = new TreeSet<>(reference.keySet());
        lacking.addAll(other.keySet());
        lacking.removeIf(round -> reference.containsKey(round) && other.containsKey(round));
        if (setting.isPaired() && !lacking.isEmpty()) {
            remarks.add(
                    "Left out, since one of the two has no value there: "
                            + (lacking.size() == 1 ? "round " : "rounds ")
                            + named(List.copyOf(lacking))
                            + ".");
        }
        int most = setting.plan().most();
        int more = Math.min(most, rows.reference().size()) - Math.min(most, rows.other().size());
        if (more != 0) {
            remarks.add(
                    Phrases.count(Math.abs(more), "value", "values")
                            + " of "
                            + (more > 0 ? wording.reference() : wording.condition())
                            + (Math.abs(more) == 1 ? " is" : " are")
                            + " not used yet: a look takes as many of each.");
        }
        if (Math.max(rows.reference().size(), rows.other().size()) > most) {
            remarks.add("Values beyond the most the plan allows (" + most + ") are not used.");
        }
        return remarks;
    }
}
