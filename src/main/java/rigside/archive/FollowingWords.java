package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rigside.analysis.Digits;
import rigside.decide.Chart;
import rigside.decide.Interval;
import rigside.decide.RandomLine;

/** What a condition followed over time shows, in plain words. */
public final class FollowingWords {

    /** Limits from fewer values are themselves uncertain: common practice, no source. */
    private static final int ENOUGH = 20;

    /** Charts shorter than this say nothing by their limits. */
    private static final int LEAST = 4;

    /** The earliest session that is compared with what those before it let expect. */
    private static final int FIRST_EXPECTED = 3;

    private static final String RUN = Chart.RUN + " or more sessions in a row on one side";

    private final Following of;

    private FollowingWords(Following of) {
        this.of = of;
    }

    /** All of it, the method's drift first. */
    public static List<String> of(Following of) {
        return new FollowingWords(of).all();
    }

    private List<String> all() {
        List<String> all = new ArrayList<>();
        if (of.chart().filter(chart -> !(chart.spread() > 0)).isPresent()) {
            return List.of(
                    "The sessions do not differ from each other at all: read the values more"
                            + " finely, or nothing can be told of a drift.");
        }
        of.chart().ifPresent(chart -> chart(chart, all));
        if (of.points().size() < FIRST_EXPECTED) {
            all.add(
                    "A trend, and what to expect of the next session, take three sessions at"
                            + " least.");
            return all;
        }
        of.chart().ifPresent(chart -> expected(chart, all));
        of.byDay().ifPresent(line -> all.add(trend(line, "day", "Over time")));
        for (Following.Piece piece : of.pieces()) {
            all.add(piece(piece));
        }
        if (of.byDay().isPresent()
                && of.pieces().stream().anyMatch(each -> each.byWearing().isPresent())) {
            all.add(
                    "Days and wearings grow together: a trend over one is a trend over the other,"
                            + " and these numbers cannot tell wear from practice or from a drifting"
                            + " instrument. A second, unworn piece measured on the same days can.");
        }
        return List.copyOf(all);
    }

    private void chart(Chart chart, List<String> all) {
        int n = chart.values().size();
        all.add(
                "Mean over sessions "
                        + of.scale().value(chart.mean())
                        + "; control limits "
                        + of.scale().values(chart.limits().low(), chart.limits().high())
                        + ", three spreads of "
                        + of.scale().spread(chart.spread())
                        + " to each side, from the mean moving range over 1.128."
                        + (n < ENOUGH
                                ? " From "
                                        + n
                                        + " sessions these limits are rough; from about "
                                        + ENOUGH
                                        + " on they can be relied on."
                                : ""));
        if (n < LEAST) {
            return;
        }
        Chart.FalseAlarms alarms = Chart.FalseAlarms.of(n);
        all.add(
                (chart.beyond().isEmpty()
                                ? "No session is beyond the limits."
                                : signal("beyond the limits", chart.beyond()))
                        + " In "
                        + n
                        + " sessions of a method that stays the same one or more lie beyond such"
                        + " limits in "
                        + Digits.chance(alarms.beyond())
                        + " of cases.");
        if (n >= Chart.RUN) {
            all.add(
                    (chart.endsOfRuns().isEmpty()
                                    ? "Nowhere are " + RUN + " of the mean."
                                    : signal(
                                            "the end of " + RUN + " of the mean",
                                            chart.endsOfRuns()))
                            + " By chance alone that comes in "
                            + Digits.chance(alarms.run())
                            + " of cases.");
        }
    }

    private String signal(String what, List<Integer> places) {
        return "A SIGNAL, "
                + what
                + ": "
                + names(places)
                + ". Look what changed there before anything else is concluded.";
    }

    private String names(List<Integer> places) {
        return Names.list(
                places.stream().map(at -> Names.of(of.points().get(at).session())).toList());
    }

    private void expected(Chart chart, List<String> all) {
        int n = chart.values().size();
        Interval next = chart.expected(n, Following.CONFIDENCE).orElseThrow();
        all.add(
                "The next session's mean is expected within "
                        + of.scale().values(next.lower(), next.upper())
                        + " (95 % prediction limits from the "
                        + n
                        + " so far).");
        List<Integer> outside =
                IntStream.range(FIRST_EXPECTED - 1, n)
                        .filter(at -> isOutside(chart, at))
                        .boxed()
                        .toList();
        int asked = n - FIRST_EXPECTED + 1;
        if (asked < 2) {
            return;
        }
        all.add(
                outside.size()
                        + " of "
                        + asked
                        + " sessions lay outside what those before them let expect"
                        + (outside.isEmpty() ? "" : " (" + names(outside) + ")")
                        + "; of a method that stays the same 1 in 20 does, one or more of "
                        + asked
                        + " in "
                        + Digits.chance(1 - Math.pow(Following.CONFIDENCE, asked))
                        + " of cases.");
    }

    private static boolean isOutside(Chart chart, int at) {
        Interval expected = chart.expected(at, Following.CONFIDENCE).orElseThrow();
        double value = chart.values().get(at);
        return value < expected.lower() || value > expected.upper();
    }

    private String piece(Following.Piece piece) {
        String worn =
                "'"
                        + piece.name()
                        + "' was worn "
                        + Math.round(piece.from())
                        + " to "
                        + Math.round(piece.to())
                        + " times before, in "
                        + Names.count(piece.sessions(), "session", "sessions");
        return piece.byWearing()
                .map(line -> worn + ". " + trend(line, "wearing", "Over its wearings"))
                .orElse(worn + ": too few to tell whether it wears out.");
    }

    private String trend(RandomLine line, String per, String over) {
        Interval slope = line.interval(Following.CONFIDENCE);
        boolean clear = slope.lower() > 0 || slope.upper() < 0;
        return over
                + " the mean "
                + (clear ? (slope.estimate() > 0 ? "rises" : "falls") : "shows no clear trend")
                + ": "
                + step(slope.estimate())
                + " a "
                + per
                + " (95 % limits "
                + step(slope.lower())
                + " to "
                + step(slope.upper())
                + ", p "
                + PooledWords.p(line.slope().p())
                + ").";
    }

    /** A change from one day or wearing to the next, as a percentage of a ratio. */
    private String step(double analysed) {
        String sign = analysed < 0 ? "-" : "+";
        return of.scale().ratio()
                ? sign + Digits.three(100 * Math.abs(Math.expm1(analysed))) + " %"
                : (sign + Digits.three(Math.abs(analysed)) + " " + of.scale().unit()).strip();
    }
}
