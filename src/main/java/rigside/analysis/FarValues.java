package rigside.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rigside.decide.Grubbs;

/**
 * Values far from the others (Grubbs), among those the verdict rests on: the differences of the
 * rounds when paired, the values of each condition otherwise and in a study of one; and single
 * trials far from the others of their donning.
 */
record FarValues(Watched watched, WhatIfs whatIfs) {

    /**
     * A value nearer to the mean of the others than this many times what rounding alone gives is
     * not far, however alike the others are: some three steps of its last digit.
     */
    private static final double FAR_IN_ROUNDING = 10;

    /** One value far from the others. */
    private record Far(int index, double chance) {}

    List<Flag> all() {
        List<Flag> flags = new ArrayList<>();
        if (watched.setting().isByTrial()) {
            watched.titles().keySet().forEach(each -> trialsOf(each, flags));
        } else if (watched.setting().isPaired() && !watched.isStudy()) {
            watched.others().forEach(each -> differences(each, flags));
        } else {
            watched.titles().keySet().forEach(each -> valuesOf(each, flags));
        }
        if (!watched.setting().isByTrial()) {
            trialsWithin(flags);
        }
        return List.copyOf(flags);
    }

    private void differences(String condition, List<Flag> flags) {
        List<Watched.Pair> pairs = watched.pairs(condition);
        double[] values = Watched.numbers(pairs, watched::difference);
        Wording wording = watched.wording(condition);
        for (Far far : far(values, Watched.roundingOfPairs(pairs), 1)) {
            Watched.Pair pair = pairs.get(far.index());
            String times = watched.setting().scale().isRatio() ? " times" : "";
            flags.add(
                    new Flag(
                            Flag.Kind.FAR_VALUE,
                            "Round "
                                    + pair.round()
                                    + " stands apart"
                                    + named(wording)
                                    + ": "
                                    + wording.change(outward(values[far.index()]))
                                    + " there, in the other rounds "
                                    + others(values, far.index(), wording)
                                    + times
                                    + ", "
                                    + Watched.chance(far.chance())
                                    + ". Look at "
                                    + Watched.notes(pair.both())
                                    + "; the round counts all the same.",
                            Watched.donnings(pair.both()),
                            whatIfs.without(
                                    "without round " + pair.round(),
                                    List.of(condition),
                                    pair.both())));
        }
    }

    private void valuesOf(String condition, List<Flag> flags) {
        List<DonningValue> values = watched.of(condition);
        double[] numbers = Watched.numbers(values, watched::inward);
        for (Far far : far(numbers, Watched.rounding(values), 1)) {
            DonningValue value = values.get(far.index());
            String name =
                    value.donning() > 0
                            ? "donning " + value.donning()
                            : "round " + value.round() + " of " + watched.titles().get(condition);
            flags.add(
                    new Flag(
                            Flag.Kind.FAR_VALUE,
                            Phrases.sentence(name)
                                    + (value.donning() > 0
                                            ? " (" + watched.titles().get(condition) + ")"
                                            : "")
                                    + apart(numbers, far)
                                    + ". Look at "
                                    + Watched.notes(List.of(value))
                                    + "; the value counts all the same.",
                            Watched.donnings(List.of(value)),
                            whatIfs.without(
                                    "without " + name, concerned(condition), List.of(value))));
        }
    }

    /** Where each trial is a value of its own. */
    private void trialsOf(String condition, List<Flag> flags) {
        List<DonningValue> owners = new ArrayList<>();
        List<Integer> trials = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        for (DonningValue value : watched.of(condition)) {
            for (int at : watched.trials(value)) {
                owners.add(value);
                trials.add(at + 1);
                times.add(inward(value.parts().get(at)));
            }
        }
        double[] numbers = Watched.numbers(times, time -> time);
        for (Far far : far(numbers, Watched.rounding(owners), 1)) {
            DonningValue owner = owners.get(far.index());
            flags.add(
                    trial(
                            trials.get(far.index()),
                            owner,
                            apart(numbers, far),
                            whatIfs.without(
                                    "without donning " + owner.donning(),
                                    concerned(condition),
                                    List.of(owner))));
        }
    }

    /** As many tests as donnings with enough trials share the chance equally. */
    private void trialsWithin(List<Flag> flags) {
        List<DonningValue> many =
                watched.titles().keySet().stream()
                        .flatMap(condition -> watched.of(condition).stream())
                        .filter(each -> watched.trials(each).length >= Watched.FEWEST)
                        .toList();
        for (DonningValue value : many) {
            int[] at = watched.trials(value);
            double[] numbers =
                    Arrays.stream(at)
                            .mapToDouble(each -> inward(value.parts().get(each)))
                            .toArray();
            for (Far far : far(numbers, Watched.rounding(List.of(value)), many.size())) {
                flags.add(trial(at[far.index()] + 1, value, apart(numbers, far), List.of()));
            }
        }
    }

    private Flag trial(int number, DonningValue owner, String apart, List<Flag.WhatIf> whatIf) {
        return new Flag(
                Flag.Kind.FAR_TRIAL,
                "Trial "
                        + number
                        + " of donning "
                        + owner.donning()
                        + apart
                        + ". Look at "
                        + Watched.notes(List.of(owner))
                        + "; the trial counts all the same.",
                Watched.donnings(List.of(owner)),
                whatIf);
    }

    private String apart(double[] numbers, Far far) {
        Wording wording = watched.wording();
        IntFunction<String> figure = at -> Digits.three(outward(numbers[at]));
        return " stands apart: "
                + wording.withUnit(figure.apply(far.index()))
                + ", the others "
                + wording.withUnit(range(numbers, far.index()))
                + ", "
                + Watched.chance(far.chance());
    }

    /** Which comparison it is, where there are several. */
    private String named(Wording wording) {
        return watched.others().size() == 1
                ? ""
                : " (" + wording.condition() + " against " + wording.reference() + ")";
    }

    private String others(double[] numbers, int but, Wording wording) {
        return wording.ofScale(range(numbers, but));
    }

    private String range(double[] numbers, int but) {
        double[] others = without(numbers, but);
        double least = outward(Arrays.stream(others).min().orElseThrow());
        double most = outward(Arrays.stream(others).max().orElseThrow());
        String low = Digits.three(least);
        String high = Digits.three(most);
        return low.equals(high) ? low : low + " to " + high;
    }

    private List<Far> far(double[] values, double rounding, int tests) {
        if (values.length < Watched.FEWEST) {
            return List.of();
        }
        Grubbs grubbs = Grubbs.of(values, Watched.ALPHA);
        double chance = Math.min(1, tests * Grubbs.chance(values.length, grubbs.distance()));
        double off =
                Math.abs(
                        values[grubbs.index()]
                                - Arrays.stream(without(values, grubbs.index()))
                                        .average()
                                        .orElseThrow());
        return chance < Watched.ALPHA && off > FAR_IN_ROUNDING * rounding
                ? List.of(new Far(grubbs.index(), chance))
                : List.of();
    }

    private static double[] without(double[] values, int but) {
        return IntStream.range(0, values.length)
                .filter(at -> at != but)
                .mapToDouble(at -> values[at])
                .toArray();
    }

    /** A value of the reference is in every comparison. */
    private List<String> concerned(String condition) {
        return condition.equals(watched.reference()) ? watched.others() : List.of(condition);
    }

    private double inward(Part part) {
        return watched.setting().scale().inward(part.value().orElseThrow());
    }

    private double outward(double analysed) {
        return watched.setting().scale().outward(analysed);
    }
}
