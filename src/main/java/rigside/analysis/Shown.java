package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Look;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;

/**
 * The part of an analysis that concealment lets out now: all that a screen, or a command on an open
 * session, may draw from.
 *
 * <p>The protocol conceals two things, each until the donning ends, until the session ends, or not
 * at all. The <em>trial clock</em> is the running clock of an inhalation and the times of trials.
 * The <em>result</em> is everything else: values of donnings and their parts, means, comparisons,
 * verdicts, forecasts. "Until the donning ends" means that nothing of it is out while any donning
 * is open, what earlier donnings gave included, since a running result seen during a donning
 * changes how the next breath is drawn; only the fit factor of each exercise of the open donning
 * is, since the tester reads it off the two concentrations anyway and a slipped mask has to be
 * noticed. "Until the session ends" means until nothing can be entered any more: the session waits
 * to be closed, or is closed. While the result is concealed, not even a verdict is out: only how
 * many rounds are done and whether the session goes on, as the last look says. Flags of single
 * trials wait for both. Failed checks, abandoned and struck donnings are the tester's own doing and
 * always shown.
 *
 * @param trialClock whether clocks and times of trials may be shown
 * @param result whether values and comparisons may be shown
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
        Plan plan = state.protocol().plan();
        boolean clock = isOut(plan.trialClock(), state);
        boolean result = isOut(plan.result(), state);
        Optional<Look> look = state.captured().lastLook();
        boolean enough = look.map(Look::enough).orElse(false);
        boolean usedUp = look.map(Look::planUsedUp).orElse(false);
        return new Shown(
                clock,
                result,
                Sentences.concealed(plan, clock, result),
                analysis.completeRounds(),
                enough,
                usedUp,
                analysis.measures().stream()
                        .map(each -> letOut(each, state, clock, result))
                        .toList(),
                next(state, analysis, enough, usedUp, result && isUnlikely(analysis)));
    }

    private static String next(
            State state, Analysis analysis, boolean enough, boolean usedUp, boolean unlikely) {
        Plan plan = state.protocol().plan();
        int rounds = analysis.completeRounds();
        Optional<String> ended = state.course().ended();
        return switch (state.protocol().purpose()) {
            case COMPARISON -> Sentences.next(plan, rounds, enough, usedUp, unlikely, ended);
            case REPEATABILITY -> Sentences.nextOfOne(plan, rounds, ended);
            case INSTRUMENT_CHECK -> isOver(state) ? found(state) : "The check goes on";
        };
    }

    private static String found(State state) {
        return InstrumentCheck.of(state).orElseThrow().sentence();
    }

    private static boolean isOver(State state) {
        return state.activity() instanceof Activity.Closing
                || state.activity() instanceof Activity.Closed;
    }

    /**
     * Whether the value of an entry may be shown: facts of the session and what a gate read give
     * nothing away, and what the tester typed is no secret; times taken here are out with the
     * clock, what the rig gave with the result.
     */
    public boolean isOut(Entry entry) {
        return isOut(entry.slot(), entry.source(), trialClock, result);
    }

    /** The same of a value that an amendment of an entry replaced. */
    public boolean isOut(Entry entry, Entry.Earlier replaced) {
        return isOut(entry.slot(), replaced.source(), trialClock, result);
    }

    /** The same of a value of a gap that came from there, as a session stands. */
    static boolean isOut(State state, Slot slot, Source source) {
        Plan plan = state.protocol().plan();
        return isOut(slot, source, isOut(plan.trialClock(), state), isOut(plan.result(), state));
    }

    private static boolean isOut(Slot slot, Source source, boolean clock, boolean result) {
        if (slot instanceof Slot.Trial && source != Source.TYPED) {
            return clock;
        }
        return result
                || slot instanceof Slot.Gate
                || source == Source.TYPED
                || slot.place().stage() != Stage.DONNING;
    }

    /** Whether the plan will hardly settle any of the questions that are open. */
    private static boolean isUnlikely(Analysis analysis) {
        List<Comparison> open =
                analysis.comparisons().stream()
                        .filter(each -> each.decides() && !each.isSettled())
                        .toList();
        return !open.isEmpty() && open.stream().allMatch(Advice::isUnlikely);
    }

    private static boolean isOut(Plan.Until until, State state) {
        return switch (until) {
            case SHOWN -> true;
            case DONNING_ENDS -> state.course().open().isEmpty();
            case SESSION_ENDS -> isOver(state);
        };
    }

    private static MeasureResult letOut(
            MeasureResult all, State state, boolean clock, boolean result) {
        Plan plan = state.protocol().plan();
        return new MeasureResult(
                all.measure(),
                all.values().stream()
                        .map(
                                value ->
                                        value.shown(
                                                result && (clock || !isTimed(all, value)),
                                                parts(all, value, plan, clock, result)))
                        .toList(),
                result ? all.conditions() : all.conditions().stream().map(Shown::bare).toList(),
                result ? all.comparisons() : List.of(),
                all.promise(),
                result ? remarks(all, state, clock) : List.of(),
                all.flags().stream()
                        .filter(flag -> result && (clock || !flag.isOfTrials()))
                        .toList(),
                result ? all.method() : List.of(),
                result ? all.repeatability() : Optional.empty());
    }

    /** Whether a value is one of trials still going on, that tells their times as they come in. */
    private static boolean isTimed(MeasureResult all, DonningValue value) {
        return value.standing() == Standing.OPEN
                && all.measure().kind() instanceof Measure.TimedInhalation;
    }

    private static List<String> remarks(MeasureResult all, State state, boolean clock) {
        return clock
                ? all.remarks()
                : new MeasureRemarks(state, all.measure(), all.values(), false).all();
    }

    /** Whether what a value is made of is out: trials with the clock, readings as they come in. */
    private static boolean parts(
            MeasureResult all, DonningValue value, Plan plan, boolean clock, boolean result) {
        if (all.measure().kind() instanceof Measure.TimedInhalation) {
            return clock;
        }
        boolean open = value.standing() == Standing.OPEN;
        return result || (open && plan.result() == Plan.Until.DONNING_ENDS);
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
