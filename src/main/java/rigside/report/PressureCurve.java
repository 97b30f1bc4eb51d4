package rigside.report;

import java.util.ArrayList;
import java.util.List;

/** How the line of a trace is cut where the part that counts begins and ends. */
final class PressureCurve {
    private PressureCurve() {}

    /**
     * A piece of the line.
     *
     * @param points in order of time, at least one
     * @param counts whether it is of the part that counts
     */
    record Piece(List<PressureTrace.Point> points, boolean counts) {
        Piece {
            points = List.copyOf(points);
        }
    }

    /**
     * The pieces of a trace, in order of time, none across a silence.
     *
     * @param until what comes later is left out
     */
    static List<Piece> pieces(PressureTrace trace, PressureFollowed.Part part, double until) {
        return trace.runs().stream()
                .flatMap(run -> cut(run, until).stream())
                .filter(run -> run.get(run.size() - 1).seconds() <= until)
                .flatMap(run -> cut(run, part.start()).stream())
                .flatMap(run -> cut(run, part.end()).stream())
                .map(run -> new Piece(run, part.holds(middle(run))))
                .toList();
    }

    private static double middle(List<PressureTrace.Point> run) {
        return (run.get(0).seconds() + run.get(run.size() - 1).seconds()) / 2;
    }

    /** A run in two where some moment is within it; both have a point there, on the line. */
    private static List<List<PressureTrace.Point>> cut(
            List<PressureTrace.Point> run, double seconds) {
        List<PressureTrace.Point> before = new ArrayList<>();
        List<PressureTrace.Point> after = new ArrayList<>();
        run.forEach(point -> (point.seconds() <= seconds ? before : after).add(point));
        if (before.isEmpty() || after.isEmpty()) {
            return List.of(run);
        }
        PressureTrace.Point at = between(before.get(before.size() - 1), after.get(0), seconds);
        before.add(at);
        after.add(0, at);
        return List.of(before, after);
    }

    private static PressureTrace.Point between(
            PressureTrace.Point a, PressureTrace.Point b, double seconds) {
        double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
        return new PressureTrace.Point(seconds, a.pascals() + share * (b.pascals() - a.pascals()));
    }
}
