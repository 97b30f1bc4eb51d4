package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import rigside.protocol.Measure;

/**
 * The values of one measure that flags look at: what counts, of the complete rounds.
 *
 * @param setting what was fixed beforehand
 * @param values one a donning; of a table, one a line with donning 0
 * @param rounds the complete rounds, rising
 * @param titles the words for each condition by id, the reference first
 */
record Watched(
        Setting setting,
        List<DonningValue> values,
        List<Integer> rounds,
        Map<String, String> titles) {

    /**
     * What chance alone does less often than this is flagged. With some seven flags looked at for a
     * measure, a look at sound values shows one in about 7 of 100 cases; at the usual 0.05 it would
     * be a third, and flags that come so often are not read. A convention: flags never act.
     */
    static final double ALPHA = 0.01;

    /** Fewer values than this are passed over: of three, one is always far from the others. */
    static final int FEWEST = 4;

    /** The two values of one round. */
    record Pair(int round, DonningValue reference, DonningValue other) {
        List<DonningValue> both() {
            return List.of(reference, other);
        }
    }

    Watched {
        values = values.stream().filter(DonningValue::counts).toList();
        rounds = List.copyOf(rounds);
    }

    String reference() {
        return titles.keySet().iterator().next();
    }

    /** The ids of the conditions but the reference. */
    List<String> others() {
        return titles.keySet().stream().skip(1).toList();
    }

    /** Whether nothing is compared: one condition is put on again and again. */
    boolean isStudy() {
        return titles.size() == 1;
    }

    /** Words that are about no comparison in particular. */
    Wording wording() {
        return wording(isStudy() ? reference() : others().get(0));
    }

    Wording wording(String condition) {
        String title = titles.get(condition);
        return new Wording(setting, title, titles.get(reference()), !title.equals(condition));
    }

    /** The values of one condition by round. */
    List<DonningValue> of(String condition) {
        return List.copyOf(byRound(condition).values());
    }

    /** The rounds in which a condition and the reference both have a value. */
    List<Pair> pairs(String condition) {
        SortedMap<Integer, DonningValue> others = byRound(condition);
        List<Pair> pairs = new ArrayList<>();
        byRound(reference())
                .forEach(
                        (round, value) -> {
                            if (others.containsKey(round)) {
                                pairs.add(new Pair(round, value, others.get(round)));
                            }
                        });
        return List.copyOf(pairs);
    }

    private SortedMap<Integer, DonningValue> byRound(String condition) {
        Set<Integer> complete = Set.copyOf(rounds);
        SortedMap<Integer, DonningValue> byRound = new TreeMap<>();
        values.stream()
                .filter(each -> each.condition().equals(condition))
                .filter(each -> complete.contains(each.round()))
                .forEach(each -> byRound.putIfAbsent(each.round(), each));
        return byRound;
    }

    /** The places, from 0, of a donning's trials among its parts, as far as there is a time. */
    int[] trials(DonningValue value) {
        List<Part> parts = value.parts();
        return setting.measure().kind() instanceof Measure.TimedInhalation
                ? IntStream.range(0, parts.size())
                        .filter(at -> parts.get(at).value().isPresent())
                        .toArray()
                : new int[0];
    }

    /** A value on the scale of the analysis. */
    double inward(DonningValue value) {
        return setting.scale().inward(value.value().orElseThrow());
    }

    /** Condition less reference on the scale of the analysis. */
    double difference(Pair pair) {
        return inward(pair.other()) - inward(pair.reference());
    }

    /** The standard deviation that rounding alone gives to one value. */
    static double rounding(List<DonningValue> values) {
        return Rows.resolution(values.stream().mapToDouble(DonningValue::resolution))
                / Math.sqrt(12);
    }

    /** The standard deviation that rounding alone gives to the difference of two. */
    static double roundingOfPairs(List<Pair> pairs) {
        return Math.sqrt(2)
                * rounding(pairs.stream().flatMap(pair -> pair.both().stream()).toList());
    }

    /** How often chance alone does what was noticed. */
    static String chance(double p) {
        long inThousand = Math.round(1000 * p);
        return "which chance alone does "
                + (p < 0.001
                        ? "less than once in 1000 times"
                        : "about "
                                + (inThousand == 1 ? "once" : inThousand + " times")
                                + " in 1000");
    }

    /** "the notes of donning 7"; of a table, "how the values of round 4 came about". */
    static String notes(List<DonningValue> values) {
        List<Integer> donnings = donnings(values);
        return donnings.isEmpty()
                ? "how the values of round " + values.get(0).round() + " came about"
                : "the notes of "
                        + (donnings.size() == 1 ? "donning " : "donnings ")
                        + Phrases.list(donnings);
    }

    /** Their numbers, rising; none of a table. */
    static List<Integer> donnings(List<DonningValue> values) {
        return values.stream()
                .map(DonningValue::donning)
                .filter(number -> number > 0)
                .sorted()
                .toList();
    }

    /** Numbers of one kind for each value. */
    static <T> double[] numbers(List<T> of, Function<T, ? extends Number> number) {
        return of.stream().mapToDouble(each -> number.apply(each).doubleValue()).toArray();
    }
}
