package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.session.Entry;
import rigside.session.Look;
import rigside.session.State;

/**
 * The part of an analysis that concealment lets out now: all that a screen, or a command on an open
 * session, may draw from.
 *
 * <p>The protocol conceals two things, each until the donning ends, until the session ends, or not
 * at all. The <em>trial clock</em> is the running clock of an inhalation and the times of trials.
 * The <em>result</em> is everything else: values of donnings and their parts, means, comparisons,
 * verdicts, forecasts. What is made of times is concealed as long as they are: a measure of timed
 * inhalations waits for both. "Until the donning ends" means that nothing of it is out while any
 * donning is open, what earlier donnings gave included, since a running result seen during a
 * donning changes how the next breath is drawn; only the fit factor of each exercise of the open
 * donning is, since the tester reads it off the two concentrations anyway and a slipped mask has to
 * be noticed. "Until the session ends" means until nothing can be entered any more: the session
 * waits to be closed, or is closed. While the result is concealed, not even a verdict is out: only
 * how many rounds are done and whether the session goes on, as the last look says. Failed checks,
 * abandoned and struck donnings are the tester's own doing and always shown.
 *
 * @param trialClock whether clocks and times of trials may be shown
 * @param result whether values and comparisons may be shown, of measures at least that are not made
 *     of times; of one measure {@link #isOut(Measure)} tells
 * @param concealed what is concealed and until when, in words; empty when nothing is
 * @param completeRounds how many rounds are complete
 * @param enough whether the last look found every deciding question settled
 * @param planUsedUp whether the last look was the plan's last
 * @param measures the analysis with what is concealed taken out: values without their numbers,
 *     summaries without values, no comparisons
 * @param next what to do next, in words that give no result away
 */
public record Shown(
        boolean trialClock,
        boolean result,
        String concealed,
        int completeRounds,
        boolean enough,
        boolean planUsedUp,
        List<MeasureResult> measures,
        String next) {

    public Shown {
        measures = List.copyOf(measures);
    }

    /** What may be shown now. */
    public static Shown of(State state, Analysis analysis) {
        Out out = Out.of(state);
        Optional<Look> look = state.captured().lastLook();
        boolean enough = look.map(Look::enough).orElse(false);
        boolean usedUp = look.map(Look::planUsedUp).orElse(false);
        return new Shown(
                out.clock(),
                out.result(),
                Sentences.concealed(state.protocol(), out),
                analysis.completeRounds(),
                enough,
                usedUp,
                analysis.measures().stream()
                        .map(each -> letOut(each, state.protocol().plan(), out))
                        .toList(),
                next(state, analysis, enough, usedUp, isUnlikely(analysis, out)));
    }

    private static String next(
            State state, Analysis analysis, boolean enough, boolean usedUp, boolean unlikely) {
        Plan plan = state.protocol().plan();
        Optional<String> ended = state.course().ended();
        return switch (state.protocol().purpose()) {
            case COMPARISON -> Sentences.next(plan, analysis, enough, usedUp, unlikely, ended);
            case REPEATABILITY -> Sentences.nextOfOne(plan, analysis, ended);
            case INSTRUMENT_CHECK ->
                    Out.isOver(state)
                            ? found(state)
                            : analysis.readOnly() ? Sentences.DAMAGED : "The check goes on";
        };
    }

    private static String found(State state) {
        return InstrumentCheck.of(state).orElseThrow().sentence();
    }

    /** Whether values and comparisons of a measure may be shown. */
    public boolean isOut(Measure measure) {
        return out().tells(measure);
    }

    /** What the measures say whose values and comparisons may be shown. */
    public List<MeasureResult> results() {
        return measures.stream().filter(each -> isOut(each.measure())).toList();
    }

    /** Whether the value of an entry may be shown. */
    public boolean isOut(Entry entry) {
        return out().tells(entry.slot(), entry.source());
    }

    /** The same of a value that an amendment of an entry replaced. */
    public boolean isOut(Entry entry, Entry.Earlier replaced) {
        return out().tells(entry.slot(), replaced.source());
    }

    private Out out() {
        return new Out(trialClock, result);
    }

    /**
     * Whether the plan will hardly settle any of the questions that are open; not told while one of
     * those that decide is concealed.
     */
    private static boolean isUnlikely(Analysis analysis, Out out) {
        List<MeasureResult> deciding =
                analysis.measures().stream()
                        .filter(each -> each.comparisons().stream().anyMatch(Comparison::decides))
                        .toList();
        List<Comparison> open =
                deciding.stream()
                        .flatMap(each -> each.comparisons().stream())
                        .filter(each -> !each.isSettled())
                        .toList();
        return deciding.stream().allMatch(each -> out.tells(each.measure()))
                && !open.isEmpty()
                && open.stream().allMatch(Advice::isUnlikely);
    }

    private static MeasureResult letOut(MeasureResult all, Plan plan, Out out) {
        boolean told = out.tells(all.measure());
        return new MeasureResult(
                all.measure(),
                all.values().stream()
                        .map(value -> value.shown(told, parts(all, value, plan, out)))
                        .toList(),
                told ? all.conditions() : all.conditions().stream().map(Shown::bare).toList(),
                told ? all.comparisons() : List.of(),
                all.promise(),
                told ? all.remarks() : List.of(),
                told ? all.flags() : List.of(),
                told ? all.method() : List.of(),
                told ? all.repeatability() : Optional.empty());
    }

    /** Whether what a value is made of is out: trials with the clock, readings as they come in. */
    private static boolean parts(MeasureResult all, DonningValue value, Plan plan, Out out) {
        if (all.measure().isMadeOfTimes()) {
            return out.clock();
        }
        boolean open = value.standing() == Standing.OPEN;
        return out.result() || (open && plan.result() == Plan.Until.DONNING_ENDS);
    }

    private static ConditionSummary bare(ConditionSummary all) {
        return new ConditionSummary(
                all.condition(),
                List.of(),
                all.geometric(),
                OptionalDouble.empty(),
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                all.failedChecks(),
                all.abandoned(),
                all.struck());
    }
}
