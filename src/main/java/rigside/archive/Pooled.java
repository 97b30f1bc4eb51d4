package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rigside.decide.Interval;
import rigside.decide.Pooling;
import rigside.decide.Summary;

/**
 * One condition against the reference by one measure, over sessions.
 *
 * @param measure the measure
 * @param scale of its numbers
 * @param condition the condition compared
 * @param reference what it is compared with
 * @param lines one for each session, the earliest first
 * @param pooled with bounded values as stated; empty where nothing can be pooled
 * @param halved with bounded values at half their penetration; empty where none is bounded
 * @param why why nothing is pooled; empty where it is
 */
public record Pooled(
        Archived.Measured measure,
        Scaled scale,
        Archived.Worn condition,
        Archived.Worn reference,
        List<Line> lines,
        Optional<Pooling> pooled,
        Optional<Pooling> halved,
        String why) {

    public Pooled {
        lines = List.copyOf(lines);
    }

    /**
     * One session by itself.
     *
     * @param session the session
     * @param n complete rounds with both values
     * @param estimate of the difference, on the scale of the analysis; NaN without a round
     * @param ordinary the ordinary interval of its rounds; empty below two
     * @param finding what it found by its own rules, if it came to that
     */
    public record Line(
            Archived session,
            int n,
            double estimate,
            Optional<Interval> ordinary,
            Optional<Archived.Finding> finding) {}

    /**
     * Sessions pooled.
     *
     * @param resolution the smallest step one value shows, in the measure's unit; 0 when unknown
     */
    static Pooled of(
            List<WithValues> sessions,
            Archived.Measured measure,
            double resolution,
            Archived.Worn condition,
            Archived.Worn reference) {
        Scaled scale = Scaled.of(measure);
        List<Line> lines = new ArrayList<>();
        List<double[]> stated = new ArrayList<>();
        List<double[]> halved = new ArrayList<>();
        List<Taken.Pair> all = new ArrayList<>();
        boolean bounded = false;
        boolean unresolved = false;
        for (WithValues session : sessions) {
            List<Taken.Pair> pairs =
                    Taken.pairs(session, measure.id(), reference.id(), condition.id());
            double[] differences = differences(pairs, scale, Taken.Bounded.STATED);
            lines.add(line(session.session(), differences, measure, condition));
            if (pairs.size() > 1) {
                all.addAll(pairs);
                stated.add(differences);
                halved.add(differences(pairs, scale, Taken.Bounded.HALVED));
                bounded |= pairs.stream().anyMatch(Taken.Pair::isBounded);
                unresolved |= pairs.stream().anyMatch(Taken.Pair::isUnresolved);
            }
        }
        String why = why(stated, halved, unresolved);
        double least = rounding(all, scale, resolution);
        return new Pooled(
                measure,
                scale,
                condition,
                reference,
                lines,
                why.isEmpty() ? Optional.of(Pooling.of(stated, least)) : Optional.empty(),
                why.isEmpty() && bounded
                        ? Optional.of(Pooling.of(halved, least))
                        : Optional.empty(),
                why);
    }

    private static String why(List<double[]> stated, List<double[]> halved, boolean unresolved) {
        if (stated.size() < 2) {
            return "Nothing is pooled: fewer than two of the sessions have two complete rounds.";
        }
        if (unresolved) {
            return "Nothing is pooled: in some rounds both values are only known as \"at least\", so"
                    + " that their ratio is not known; leave such sessions out.";
        }
        return varies(stated) && varies(halved)
                ? ""
                : "Nothing is pooled: within the sessions the rounds do not differ at all, so what"
                        + " chance makes of them is not known; read the values more finely.";
    }

    /** The spread that rounding alone gives a difference of two values read to this step. */
    private static double rounding(List<Taken.Pair> pairs, Scaled scale, double resolution) {
        DoubleStream steps =
                pairs.stream()
                        .flatMap(each -> Stream.of(each.reference(), each.other()))
                        .mapToDouble(each -> scale.step(resolution, each.number().orElseThrow()));
        return Math.sqrt(2 * steps.map(step -> step * step / 12).average().orElse(0));
    }

    private static boolean varies(List<double[]> sessions) {
        return sessions.stream().anyMatch(each -> Summary.of(each).sd() > 0);
    }

    private static double[] differences(List<Taken.Pair> pairs, Scaled scale, Taken.Bounded how) {
        return pairs.stream().mapToDouble(each -> each.difference(scale, how)).toArray();
    }

    private static Line line(
            Archived session,
            double[] differences,
            Archived.Measured measure,
            Archived.Worn condition) {
        Summary summary = Summary.of(differences);
        return new Line(
                session,
                summary.n(),
                summary.mean(),
                summary.n() > 1 ? Optional.of(summary.interval(Pool.CONFIDENCE)) : Optional.empty(),
                session.findings().stream()
                        .filter(
                                each ->
                                        each.measure().equals(measure.id())
                                                && each.condition().equals(condition.id()))
                        .findFirst());
    }

    /** Rounds behind the pooled numbers. */
    public int rounds() {
        return pooled.map(each -> each.sessions().stream().mapToInt(Summary::n).sum()).orElse(0);
    }

    /** What it says in plain words, the most important first. */
    public List<String> sentences() {
        return pooled.map(each -> new PooledWords(this, each).all()).orElse(List.of(why));
    }
}
