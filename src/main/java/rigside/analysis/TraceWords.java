package rigside.analysis;

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
    public static String steadiness(State state, Entry entry, Trace.Pull pull, boolean out) {
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
                        ? Digits.three(unit.fromSi(meanPa)) + " " + unit.symbol()
                        : Roughly.mean(meanPa, unit).toString())
                + (out ? ", spread " + Digits.three(spread) : "");
    }

    private static String pull(State state, Entry entry, Trace.Pull pull, boolean out) {
        return steadiness(state, entry, pull, out)
                + (out
                        ? "; pull "
                                + Digits.tenths(pull.inhalation().seconds())
                                + " s, presses "
                                + Digits.tenths(pull.pressedSeconds())
                                + " s"
                        : "");
    }

    private static String breaths(Trace.Breaths all) {
        Breath medians = all.medians();
        return Phrases.count(all.count(), "breath", "breaths")
                + " of "
                + Digits.tenths(medians.seconds())
                + " s: "
                + Digits.three(medians.peakInhalationPa())
                + " Pa, "
                + Digits.three(medians.inhalationIntegral())
                + " Pa s in; "
                + Digits.three(medians.peakExhalationPa())
                + " Pa, "
                + Digits.three(medians.exhalationIntegral())
                + " Pa s out";
    }
}
