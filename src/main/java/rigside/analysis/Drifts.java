package rigside.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rigside.decide.TTest;
import rigside.decide.Trend;

/**
 * Values that drift: from round to round, and from trial to trial within donnings.
 *
 * <p>When paired, the rounds are looked at in two parts that say different things and share
 * nothing: the differences, whose drift means that one figure for all rounds says too little, and
 * the means of the rounds over all conditions, whose drift pairing takes out. One condition by
 * itself would mix the two. When independent, one slope common to all conditions, each about its
 * own mean. Where one condition is studied, the line through its donnings.
 */
record Drifts(Watched watched) {

    /** Below this a slope over trials says too little: own judgement. */
    private static final int LEAST_FREEDOM = 4;

    private static final String LINE = " along a straight line, ";

    List<Flag> all() {
        List<Flag> flags = new ArrayList<>();
        if (watched.isStudy()) {
            ofDonnings().ifPresent(flags::add);
        } else if (watched.setting().isPaired()) {
            watched.others().forEach(each -> ofDifferences(each).ifPresent(flags::add));
            ofRounds().ifPresent(flags::add);
        } else {
            ofConditions().ifPresent(flags::add);
        }
        ofTrials().ifPresent(flags::add);
        return List.copyOf(flags);
    }

    private Optional<Flag> ofDifferences(String condition) {
        List<Watched.Pair> pairs = watched.pairs(condition);
        double[] rounds = Watched.numbers(pairs, Watched.Pair::round);
        double[] differences = Watched.numbers(pairs, watched::difference);
        return line(List.of(rounds), List.of(differences), Watched.roundingOfPairs(pairs))
                .map(
                        line -> {
                            Wording wording = watched.wording(condition);
                            return flag(
                                    Flag.Kind.ROUND_TREND,
                                    "The effect of "
                                            + wording.condition()
                                            + " drifts over the rounds: it goes "
                                            + wording.ofScale(ends(line, rounds, differences))
                                            + (isRatio() ? " times" : "")
                                            + LINE
                                            + Watched.chance(line.p())
                                            + ". One figure for all rounds then says too little:"
                                            + " ask what changed on the way, such as wear,"
                                            + " tiredness or the room.");
                        });
    }

    /** The means of the rounds in which every condition has a value. */
    private Optional<Flag> ofRounds() {
        SortedMap<Integer, List<Double>> whole = new TreeMap<>();
        for (String condition : watched.titles().keySet()) {
            for (DonningValue value : watched.of(condition)) {
                whole.computeIfAbsent(value.round(), first -> new ArrayList<>())
                        .add(watched.inward(value));
            }
        }
        whole.values().removeIf(each -> each.size() < watched.titles().size());
        double[] rounds = Watched.numbers(List.copyOf(whole.keySet()), round -> round);
        double[] values =
                Watched.numbers(
                        List.copyOf(whole.values()),
                        all -> all.stream().mapToDouble(each -> each).average().orElseThrow());
        double floor = Watched.rounding(watched.values()) / Math.sqrt(watched.titles().size());
        return line(List.of(rounds), List.of(values), floor)
                .map(
                        line ->
                                flag(
                                        Flag.Kind.ROUND_TREND,
                                        drifting(line, rounds, values)
                                                + ". Comparing within rounds takes that out; look"
                                                + " for tiredness, wear or a changing room."));
    }

    private Optional<Flag> ofDonnings() {
        List<DonningValue> of = watched.of(watched.reference());
        double[] donnings = Watched.numbers(of, DonningValue::round);
        double[] values = Watched.numbers(of, watched::inward);
        return line(List.of(donnings), List.of(values), Watched.rounding(of))
                .map(
                        line ->
                                flag(
                                        Flag.Kind.ROUND_TREND,
                                        drifting(
                                                        " drifts over the donnings: ",
                                                        line,
                                                        donnings,
                                                        values)
                                                + ". The spread holds that drift too; look for"
                                                + " tiredness, wear or a changing room."));
    }

    private Optional<Flag> ofConditions() {
        List<double[]> rounds = new ArrayList<>();
        List<double[]> values = new ArrayList<>();
        for (String condition : watched.titles().keySet()) {
            List<DonningValue> of = watched.of(condition);
            rounds.add(Watched.numbers(of, DonningValue::round));
            values.add(Watched.numbers(of, watched::inward));
        }
        double[] all = rounds.stream().flatMapToDouble(Arrays::stream).toArray();
        double[] numbers = values.stream().flatMapToDouble(Arrays::stream).toArray();
        return line(rounds, values, Watched.rounding(watched.values()))
                .map(
                        line ->
                                flag(
                                        Flag.Kind.ROUND_TREND,
                                        drifting(line, all, numbers)
                                                + ". That widens the interval, and would not if"
                                                + " conditions were compared within rounds; look"
                                                + " for tiredness, wear or a changing room."));
    }

    private String drifting(TTest line, double[] rounds, double[] values) {
        return drifting(
                ", all conditions taken together, drifts over the rounds: ", line, rounds, values);
    }

    private String drifting(String how, TTest line, double[] rounds, double[] values) {
        Wording wording = watched.wording();
        return Phrases.sentence(wording.subject())
                + how
                + wording.withUnit(ends(line, rounds, values))
                + LINE
                + Watched.chance(line.p());
    }

    private Optional<Flag> ofTrials() {
        List<double[]> places = new ArrayList<>();
        List<double[]> times = new ArrayList<>();
        for (DonningValue value : watched.values()) {
            int[] at = watched.trials(value);
            places.add(Arrays.stream(at).asDoubleStream().toArray());
            times.add(
                    Arrays.stream(at)
                            .mapToDouble(
                                    each ->
                                            watched.setting()
                                                    .scale()
                                                    .inward(
                                                            value.parts()
                                                                    .get(each)
                                                                    .value()
                                                                    .orElseThrow()))
                            .toArray());
        }
        return line(places, times, Watched.rounding(watched.values()))
                .map(
                        line ->
                                flag(
                                        Flag.Kind.TRIAL_TREND,
                                        "Within donnings each inhalation takes "
                                                + step(line.estimate())
                                                + " than the one before, all donnings taken"
                                                + " together, "
                                                + Watched.chance(line.p())
                                                + ". Longer rests, or one inhalation to get used"
                                                + " to it that does not count, may help."));
    }

    private String step(double slope) {
        String size =
                isRatio()
                        ? Digits.two(100 * Math.abs(Math.expm1(slope))) + " %"
                        : watched.wording().withUnit(Digits.two(Math.abs(slope)));
        return "about " + size + (slope < 0 ? " less" : " longer");
    }

    private static Optional<TTest> line(
            List<double[]> places, List<double[]> values, double rounding) {
        long enough = values.stream().filter(each -> each.length > 1).count();
        int freedom = values.stream().mapToInt(each -> Math.max(0, each.length - 1)).sum() - 1;
        int least = values.size() == 1 ? Watched.FEWEST - 2 : LEAST_FREEDOM;
        if (enough == 0 || freedom < least) {
            return Optional.empty();
        }
        return Optional.of(Trend.within(places, values, rounding))
                .filter(line -> line.flagged(Watched.ALPHA));
    }

    /** Where the line through the mean begins and ends. */
    private String ends(TTest line, double[] places, double[] values) {
        double place = Arrays.stream(places).average().orElseThrow();
        double mean = Arrays.stream(values).average().orElseThrow();
        double first = Arrays.stream(places).min().orElseThrow();
        double last = Arrays.stream(places).max().orElseThrow();
        double begins = outward(mean + line.estimate() * (first - place));
        double ends = outward(mean + line.estimate() * (last - place));
        double larger = Math.max(Math.abs(begins), Math.abs(ends));
        List<String> figures = Phrases.alike(larger, begins, ends);
        return "from " + figures.get(1) + " to " + figures.get(2);
    }

    private static Flag flag(Flag.Kind kind, String reason) {
        return new Flag(kind, reason, List.of(), List.of());
    }

    private boolean isRatio() {
        return watched.setting().scale().isRatio();
    }

    private double outward(double analysed) {
        return watched.setting().scale().outward(analysed);
    }
}
