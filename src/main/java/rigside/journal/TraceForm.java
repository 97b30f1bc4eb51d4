package rigside.journal;

import rigside.measure.Breath;
import rigside.measure.TracedInhalation;
import rigside.session.Trace;

/** The written form of what a pressure trace says: seconds, Pa and Pa s. */
final class TraceForm {
    private TraceForm() {}

    static Line write(Line line, Trace trace) {
        if (trace instanceof Trace.Pull pull) {
            TracedInhalation shown = pull.inhalation();
            return line.put("kind", "pull")
                    .put("pressed", pull.pressedSeconds())
                    .put("start", shown.startSeconds())
                    .put("end", shown.endSeconds())
                    .put("integral", shown.integral())
                    .put("mean", shown.meanPa())
                    .put("spread", shown.spreadPa())
                    .put("within", shown.withinShare())
                    .put("unseen", shown.unseenSeconds())
                    .put("whole", shown.whole())
                    .put("pulls", shown.pulls());
        }
        if (trace instanceof Trace.Breaths breaths) {
            Breath medians = breaths.medians();
            return line.put("kind", "breaths")
                    .put("count", breaths.count())
                    .put("broken", breaths.broken())
                    .put("breath", medians.seconds())
                    .put("inhalation", medians.inhalationSeconds())
                    .put("peak-in", medians.peakInhalationPa())
                    .put("peak-out", medians.peakExhalationPa())
                    .put("integral-in", medians.inhalationIntegral())
                    .put("integral-out", medians.exhalationIntegral());
        }
        throw new IllegalStateException("no written form for " + trace.getClass());
    }

    static Trace read(Fields in) {
        String kind = in.text("kind");
        return switch (kind) {
            case "pull" ->
                    new Trace.Pull(
                            in.number("pressed"),
                            new TracedInhalation(
                                    in.number("start"),
                                    in.number("end"),
                                    in.number("integral"),
                                    in.number("mean"),
                                    in.number("spread"),
                                    in.number("within"),
                                    in.number("unseen"),
                                    in.yes("whole"),
                                    in.integer("pulls")));
            case "breaths" ->
                    new Trace.Breaths(
                            in.integer("count"),
                            in.integer("broken"),
                            new Breath(
                                    0,
                                    in.number("breath"),
                                    in.number("inhalation"),
                                    in.number("peak-in"),
                                    in.number("peak-out"),
                                    in.number("integral-in"),
                                    in.number("integral-out")));
            default -> throw Fields.unknown("kind", kind);
        };
    }
}
