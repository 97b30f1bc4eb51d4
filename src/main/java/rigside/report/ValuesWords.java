package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.DonningValue;
import rigside.analysis.Standing;

/**
 * {@link ValuesPlot} in words.
 *
 * @param of the measure
 * @param paired whether what was worn in one round belongs together
 */
record ValuesWords(Plotting of, boolean paired) {
    /** More values than this are told by their extremes: nobody listens to a hundred numbers. */
    private static final int TOLD = 24;

    String all() {
        List<String> sentences = new ArrayList<>();
        double[] numbers = of.numbers();
        sentences.add(
                of.heading(of.isLog(numbers))
                        + ", upward; rounds 1 to "
                        + of.rounds()
                        + " from left to right, one sign for each donning."
                        + (paired && of.conditions().size() > 1
                                ? " A thin line joins two values of one round."
                                : ""));
        of.required()
                .ifPresent(
                        level ->
                                sentences.add(
                                        "A dashed line marks the level required, "
                                                + of.number(level, false)
                                                + "."));
        of.conditions().forEach(condition -> sentences.add(condition(condition)));
        if (of.result().values().stream().anyMatch(each -> each.standing() == Standing.OPEN)) {
            sentences.add("A donning that is still going on is not drawn.");
        }
        return String.join(" ", sentences);
    }

    private String condition(String condition) {
        List<DonningValue> finished = of.finished(condition);
        List<DonningValue> counted =
                finished.stream()
                        .filter(each -> each.counts() && each.value().isPresent())
                        .toList();
        String mean = of.mean(condition);
        return of.title(condition)
                + ": "
                + (counted.isEmpty() ? "no value that counts" : values(counted))
                + (mean.isEmpty() ? "" : "; " + mean)
                + "."
                + others(finished.stream().filter(each -> !counted.contains(each)).toList());
    }

    private String values(List<DonningValue> values) {
        if (values.size() <= TOLD) {
            return String.join(", ", values.stream().map(this::value).toList());
        }
        return values.size()
                + " values from "
                + of.number(
                        values.stream().mapToDouble(ValuesWords::plain).min().orElseThrow(), false)
                + " to "
                + of.number(
                        values.stream().mapToDouble(ValuesWords::plain).max().orElseThrow(), false);
    }

    private static double plain(DonningValue value) {
        return value.value().orElseThrow();
    }

    private String value(DonningValue value) {
        return "round " + value.round() + " " + of.number(plain(value), value.bounded());
    }

    private String others(List<DonningValue> others) {
        if (others.isEmpty()) {
            return "";
        }
        return " Not counted: "
                + String.join(
                        ", ",
                        others.stream()
                                .map(
                                        each ->
                                                (each.value().isPresent()
                                                                ? value(each)
                                                                : "round "
                                                                        + each.round()
                                                                        + " without a value")
                                                        + why(each.standing()))
                                .toList())
                + ".";
    }

    private static String why(Standing standing) {
        return switch (standing) {
            case ABANDONED -> " (broken off)";
            case STRUCK -> " (struck out)";
            case COUNTS, OPEN, WITHOUT_VALUE -> "";
        };
    }
}
