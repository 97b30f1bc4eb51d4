package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import rigside.decide.Schedule;

/**
 * What a session has for one comparison.
 *
 * @param stated the values as stated
 * @param halved the same with what the counter only bounded at half its penetration
 * @param lacking complete rounds in which one of the two has no value
 * @param entries numbers of the entries used, rising
 */
record Gathered(Rows stated, Rows halved, List<Integer> lacking, List<Integer> entries) {

    /**
     * @param values of the measure, one for each donning
     * @param rounds the complete rounds, rising
     */
    static Gathered of(
            Setting setting,
            List<DonningValue> values,
            List<Integer> rounds,
            String reference,
            String other) {
        List<Double> referenceStated = new ArrayList<>();
        List<Double> referenceHalved = new ArrayList<>();
        List<Double> otherStated = new ArrayList<>();
        List<Double> otherHalved = new ArrayList<>();
        List<Schedule.Arms> counts = new ArrayList<>();
        List<Integer> lacking = new ArrayList<>();
        List<Double> steps = new ArrayList<>();
        TreeSet<Integer> entries = new TreeSet<>();
        for (int round : rounds) {
            Optional<DonningValue> one = counting(values, round, reference);
            Optional<DonningValue> two = counting(values, round, other);
            boolean both = one.isPresent() && two.isPresent();
            if (!both) {
                lacking.add(round);
            }
            if (both || !setting.isPaired()) {
                one.ifPresent(each -> add(setting, each, referenceStated, referenceHalved));
                two.ifPresent(each -> add(setting, each, otherStated, otherHalved));
                for (DonningValue each : Stream.concat(one.stream(), two.stream()).toList()) {
                    steps.add(each.resolution());
                    entries.addAll(each.entries());
                }
            }
            counts.add(new Schedule.Arms(referenceStated.size(), otherStated.size()));
        }
        double step = Rows.resolution(steps.stream().mapToDouble(Double::doubleValue));
        return new Gathered(
                new Rows(referenceStated, otherStated, step, counts),
                new Rows(referenceHalved, otherHalved, step, counts),
                List.copyOf(lacking),
                List.copyOf(entries));
    }

    /** How many rounds were complete when there were so many values. */
    int roundsUntil(int n) {
        int before =
                (int)
                        stated.rounds().stream()
                                .filter(arms -> Math.min(arms.reference(), arms.other()) < n)
                                .count();
        return Math.min(before + 1, rounds());
    }

    /** Complete rounds so far. */
    int rounds() {
        return stated.rounds().size();
    }

    private static Optional<DonningValue> counting(
            List<DonningValue> values, int round, String condition) {
        return values.stream()
                .filter(
                        each ->
                                each.counts()
                                        && each.round() == round
                                        && each.condition().equals(condition))
                .findFirst();
    }

    private static void add(
            Setting setting, DonningValue value, List<Double> stated, List<Double> halved) {
        if (setting.isByTrial()) {
            value.parts().stream()
                    .filter(part -> part.value().isPresent())
                    .map(part -> part.value().getAsDouble())
                    .forEach(
                            each -> {
                                stated.add(each);
                                halved.add(each);
                            });
        } else {
            stated.add(value.value().orElseThrow());
            halved.add(value.halved().orElseThrow());
        }
    }
}
