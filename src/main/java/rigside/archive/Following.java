package rigside.archive;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rigside.decide.Chart;
import rigside.decide.PooledSpread;
import rigside.decide.RandomLine;
import rigside.decide.Summary;

/**
 * One condition by one measure over time: is my method drifting, does a piece wear out?
 *
 * @param measure the measure, as the latest session has it
 * @param scale of its numbers
 * @param condition its title in the latest session
 * @param points one for each session with a value, the earliest first; at least one
 * @param chart of the means of sessions; empty below two
 * @param byDay the line through them over days; empty below three, or on fewer than two days
 * @param pieces one for each piece worn, by its name
 * @param remarks what has to be known of them; may be empty
 */
public record Following(
        Archived.Measured measure,
        Scaled scale,
        String condition,
        List<Point> points,
        Optional<Chart> chart,
        Optional<RandomLine> byDay,
        List<Piece> pieces,
        List<String> remarks) {

    /** The confidence of limits and of what is expected. */
    public static final double CONFIDENCE = 0.95;

    public Following {
        points = List.copyOf(points);
        pieces = List.copyOf(pieces);
        remarks = List.copyOf(remarks);
    }

    /**
     * One session.
     *
     * @param session the session
     * @param day the day it was worn
     * @param piece the piece worn
     * @param n how many donnings count
     * @param mean of their values, on the scale of the analysis
     * @param spread of them; empty below two
     * @param wornBefore how often the piece had been worn before, on average over the donnings
     * @param bounded whether some values are only known as "at least"
     * @param values of the donnings that count, on the scale of the analysis
     */
    public record Point(
            Archived session,
            LocalDate day,
            String piece,
            int n,
            double mean,
            OptionalDouble spread,
            double wornBefore,
            boolean bounded,
            List<Double> values) {
        public Point {
            values = List.copyOf(values);
        }

        double[] numbers() {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /**
     * One piece.
     *
     * @param name how it is marked
     * @param sessions how many sessions wore it
     * @param from the fewest times it had been worn before a donning, on average over a session
     * @param to the most times, likewise
     * @param byWearing the line through its sessions over wearings; empty below three, or where it
     *     was worn equally often
     */
    public record Piece(
            String name, int sessions, double from, double to, Optional<RandomLine> byWearing) {}

    /**
     * Why nothing can be followed.
     *
     * @param sessions those meant
     * @param measure its id or title
     * @param condition its id or title
     */
    public static Optional<Refusal> refusal(
            List<WithValues> sessions, String measure, String condition) {
        return Named.unknownMeasure(sessions, measure)
                .or(() -> Named.unknownCondition(sessions, condition))
                .or(() -> withoutValue(sessions, measure, condition));
    }

    private static Optional<Refusal> withoutValue(
            List<WithValues> sessions, String measure, String condition) {
        return points(sessions, measure, condition).isEmpty()
                ? Optional.of(
                        new Refusal(
                                "none of these sessions has a value of '"
                                        + measure
                                        + "' in '"
                                        + condition
                                        + "'",
                                ""))
                : Optional.empty();
    }

    /**
     * Follows it.
     *
     * @param sessions those meant, in any order; {@link #refusal} has to be empty
     */
    public static Following of(List<WithValues> sessions, String measure, String condition) {
        List<Point> points = points(sessions, measure, condition);
        Archived latest = points.get(points.size() - 1).session();
        Archived.Measured followed = Named.measured(latest, measure).orElseThrow();
        double within = within(points);
        double[] means = points.stream().mapToDouble(Point::mean).toArray();
        return new Following(
                followed,
                Scaled.of(followed),
                Named.worn(latest, condition).orElseThrow().title(),
                points,
                means.length > 1 ? Optional.of(Chart.of(means)) : Optional.empty(),
                line(points, days(points), within),
                pieces(points, within),
                new FollowingRemarks(sessions, points).all());
    }

    static List<Point> points(List<WithValues> sessions, String measure, String condition) {
        Wear wear = Wear.of(sessions);
        List<WithValues> ordered =
                sessions.stream()
                        .filter(each -> Named.measured(each.session(), measure).isPresent())
                        .filter(each -> Named.worn(each.session(), condition).isPresent())
                        .sorted(Comparator.comparing(WithValues::session, Wear.IN_ORDER))
                        .toList();
        if (ordered.isEmpty()) {
            return List.of();
        }
        Archived.Measured latest =
                Named.measured(ordered.get(ordered.size() - 1).session(), measure).orElseThrow();
        return ordered.stream()
                .filter(
                        each ->
                                DaysApart.isSame(
                                        Named.measured(each.session(), measure).orElseThrow(),
                                        latest))
                .flatMap(each -> point(each, measure, condition, wear).stream())
                .toList();
    }

    private static Optional<Point> point(
            WithValues session, String measure, String condition, Wear wear) {
        Archived.Measured measured = Named.measured(session.session(), measure).orElseThrow();
        Archived.Worn worn = Named.worn(session.session(), condition).orElseThrow();
        List<WithValues.Value> values = Taken.counting(session, measured.id(), worn.id());
        if (values.isEmpty()) {
            return Optional.empty();
        }
        double[] numbers = Taken.numbers(values, Scaled.of(measured), Taken.Bounded.STATED);
        Summary summary = Summary.of(numbers);
        return Optional.of(
                new Point(
                        session.session(),
                        session.session().day().orElseThrow(),
                        worn.piece(),
                        summary.n(),
                        summary.mean(),
                        summary.n() > 1 ? OptionalDouble.of(summary.sd()) : OptionalDouble.empty(),
                        values.stream()
                                        .mapToInt(WithValues.Value::wornBefore)
                                        .average()
                                        .orElseThrow()
                                + wear.forgotten(session.session(), worn.piece()),
                        values.stream().anyMatch(WithValues.Value::bounded),
                        DoubleStream.of(numbers).boxed().toList()));
    }

    /**
     * The spread of donnings within sessions; 1 where none is seen, which weighs by their number.
     */
    private static double within(List<Point> points) {
        List<double[]> groups = points.stream().map(Point::numbers).toList();
        if (groups.stream().noneMatch(each -> each.length > 1)) {
            return 1;
        }
        double sd = PooledSpread.of(groups).sd();
        return sd > 0 ? sd : 1;
    }

    private static double[] days(List<Point> points) {
        long first = points.get(0).day().toEpochDay();
        return points.stream().mapToDouble(each -> each.day().toEpochDay() - first).toArray();
    }

    private static Optional<RandomLine> line(List<Point> points, double[] places, double within) {
        if (points.size() < 3 || DoubleStream.of(places).distinct().count() < 2) {
            return Optional.empty();
        }
        return Optional.of(
                RandomLine.of(
                        places,
                        points.stream().mapToDouble(Point::mean).toArray(),
                        points.stream().mapToDouble(each -> within * within / each.n()).toArray()));
    }

    private static List<Piece> pieces(List<Point> points, double within) {
        return points.stream()
                .map(Point::piece)
                .distinct()
                .sorted()
                .map(
                        name -> {
                            List<Point> own =
                                    points.stream()
                                            .filter(each -> each.piece().equals(name))
                                            .toList();
                            double[] worn = own.stream().mapToDouble(Point::wornBefore).toArray();
                            return new Piece(
                                    name,
                                    own.size(),
                                    DoubleStream.of(worn).min().orElseThrow(),
                                    DoubleStream.of(worn).max().orElseThrow(),
                                    line(own, worn, within));
                        })
                .toList();
    }
}
