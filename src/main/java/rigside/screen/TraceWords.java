package rigside.screen;

import java.util.Optional;
import rigside.measure.Breath;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Roughly;
import rigside.session.State;
import rigside.session.Trace;

/** What a pressure trace says about an entry, in a line. */
public final class TraceWords {
    private TraceWords() {}

    /**
     * How steady a pull was, or what the breaths were like.
     *
     * @param out whether the entry's value may be shown; else nothing that tells it is said
     * @return empty without a trace, or where nothing may be said
     */
    public static Optional<String> of(State state, Entry entry, boolean out) {
        return entry.pull()
                .map(pull -> pull(state, entry, pull, out))
                .or(() -> entry.breaths().filter(all -> out).map(TraceWords::breaths));
    }

    /** How the pressure was held; while the time is concealed only {@link Roughly}. */
    static String steadiness(State state, Entry entry, Trace.Pull pull, boolean out) {
        Step.Trials step = (Step.Trials) Procedure.step(state, entry.slot().place());
        double within = pull.inhalation().withinShare();
        long share = out ? Math.round(100 * within) : Roughly.percent(within);
        Unit unit = step.target().unit();
        double meanPa = pull.inhalation().meanPa();
        double spread = new Quantity(pull.inhalation().spreadPa(), Unit.PASCAL).in(unit).value();
        String held =
                step.tolerance().isPresent() ? (out ? "" : "about ") + share + " % in band, " : "";
        return held
                + "mean "
                + (out
                        ? Figures.three(unit.fromSi(meanPa)) + " " + unit.symbol()
                        : Roughly.mean(meanPa, unit).toString())
                + (out ? ", spread " + Figures.three(spread) : "");
    }

    private static String pull(State state, Entry entry, Trace.Pull pull, boolean out) {
        return steadiness(state, entry, pull, out)
                + (out
                        ? "; pull "
                                + Figures.tenths(pull.inhalation().seconds())
                                + " s, presses "
                                + Figures.tenths(pull.pressedSeconds())
                                + " s"
                        : "");
    }

    private static String breaths(Trace.Breaths all) {
        Breath medians = all.medians();
        return Texts.count(all.count(), "breath")
                + " of "
                + Figures.tenths(medians.seconds())
                + " s: "
                + Figures.three(medians.peakInhalationPa())
                + " Pa, "
                + Figures.three(medians.inhalationIntegral())
                + " Pa s in; "
                + Figures.three(medians.peakExhalationPa())
                + " Pa, "
                + Figures.three(medians.exhalationIntegral())
                + " Pa s out";
    }
}
