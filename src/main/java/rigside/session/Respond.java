package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * What an input leads to: events, or a refusal in words. Every reason to refuse lives here and in
 * the parts asked from here, none in the reducer.
 *
 * @param state the state the input meets
 * @param now when it came in, in nanoseconds of session time
 */
public record Respond(State state, long now) implements Input.Cases<Response> {

    /**
     * No inhalation from empty to full lungs is shorter: a second press within it is a switch that
     * bounces, or a key held down, which begins to repeat a quarter to two thirds of a second after
     * it was pressed (from memory). Seconds of the real clock, whatever the speed of session time.
     */
    static final double SHORTEST_PULL_SECONDS = 0.75;

    /**
     * A trigger pressed this much before the lead-in is over is the start of the pull: people
     * anticipate a countdown.
     */
    static final double ANTICIPATION_SECONDS = 0.5;

    /**
     * Nobody breathes out and begins to pull sooner after the press that started the lead-in: a
     * second press within it is the first one held down.
     */
    static final double SHORTEST_LEAD_IN_SECONDS = 0.75;

    private static final double NANOS = 1e9;

    /** What {@code input}, coming in at {@code now}, leads to. */
    public static Response to(State state, Input input, long now) {
        return state.course().closed() && !corrects(state, input)
                ? closed(input)
                : input.match(new Respond(state, now));
    }

    /** What is wrong in the record of a closed session can still be put right, and looked at. */
    private static boolean corrects(State state, Input input) {
        return input instanceof Input.VoidAsked
                || input instanceof Input.AmendAsked
                || (input instanceof Input.LookArrived && state.lookDue());
    }

    /** Nothing is done in a closed session any more. */
    private static Response closed(Input input) {
        boolean asksForNothing =
                input instanceof Input.Ticked
                        || input instanceof Input.TimeDoubted
                        || input instanceof Input.FeedNoticed
                        || input instanceof Input.GoOnPressed
                        || input instanceof Input.LeaveAsked
                        || input instanceof Input.HaltPressed
                        || input instanceof Input.Reopened;
        return asksForNothing
                ? Response.nothing()
                : refused(
                        "the session is closed; entries can still be amended or struck out,"
                                + " nothing else");
    }

    @Override
    public Response goOnPressed(Input.GoOnPressed input) {
        return state.activity().match(new GoingOn(state, now));
    }

    @Override
    public Response triggerPressed(Input.TriggerPressed input) {
        Activity activity = state.activity();
        if (activity instanceof Activity.LeadIn lead) {
            return leadInTriggered(lead);
        }
        if (activity instanceof Activity.Pulling pulling) {
            double seconds = secondsSince(pulling.startedAt());
            return seconds < SHORTEST_PULL_SECONDS * state.speed()
                    ? Response.nothing()
                    : stopped(pulling, seconds, input.traced());
        }
        if (activity instanceof Activity.TrialReady
                || activity instanceof Activity.Exercising
                || activity instanceof Activity.Gating
                || activity instanceof Activity.Waiting) {
            return activity.match(new GoingOn(state, now));
        }
        return refused("the trigger does nothing here");
    }

    private Response leadInTriggered(Activity.LeadIn lead) {
        double since = secondsSince(lead.startedAt());
        if (since < SHORTEST_LEAD_IN_SECONDS) {
            return Response.nothing();
        }
        double left = trials(lead.place()).leadInSeconds() - since;
        return left > ANTICIPATION_SECONDS
                ? refused("the lead-in is still counting down; press again when you begin to pull")
                : Response.of(new Event.TrialStarted(lead.place(), lead.trial()));
    }

    private static Response stopped(Activity.Pulling pulling, double seconds, boolean traced) {
        return Response.of(
                new Event.TrialStopped(pulling.place(), pulling.trial(), seconds, traced));
    }

    /** Whether it was held is asked before the time counts, as after a pull timed here. */
    private static Event stoppedOnPaper(Slot.Trial trial, Value value) {
        double seconds = ((Value.Measured) value).quantity().si();
        return new Event.TrialStopped(trial.place(), trial.trial(), seconds);
    }

    @Override
    public Response pullEnded(Input.PullEnded input) {
        return state.activity() instanceof Activity.Pulling pulling
                ? stopped(pulling, input.seconds(), input.traced())
                : Response.nothing();
    }

    @Override
    public Response pullTraced(Input.PullTraced input) {
        return new Judging(state).traced(input.inhalation());
    }

    @Override
    public Response pullNotTraced(Input.PullNotTraced input) {
        return new Judging(state).notTraced(input.why());
    }

    @Override
    public Response breathsFound(Input.BreathsFound input) {
        return new Judging(state).breathed(input.slot(), input.breaths());
    }

    @Override
    public Response answered(Input.Answered input) {
        return state.activity().match(new Answering(state, input.yes()));
    }

    @Override
    public Response checkFailed(Input.CheckFailed input) {
        if (!(state.activity() instanceof Activity.Checking checking)) {
            return refused("no check waits here");
        }
        return input.what().isBlank()
                ? refused("say what is not so in a few words; it is shown beside the result")
                : new Answering(state, false).failed(checking, input.what().strip());
    }

    @Override
    public Response typed(Input.Typed input) {
        if (!(state.activity() instanceof Activity.Filling filling)) {
            return refused("nothing is to be typed here");
        }
        Slot slot = filling.slot();
        Typing.Meaning meaning = Typing.meaning(state, slot, input.text());
        if (meaning instanceof Typing.Meaning.Taken taken) {
            if (slot instanceof Slot.Trial trial) {
                return Response.of(stoppedOnPaper(trial, taken.value()));
            }
            return Response.of(captured(slot, taken.value(), Source.TYPED));
        }
        if (meaning instanceof Typing.Meaning.Doubted doubted) {
            return Response.of(new Event.EntryDoubted(slot, doubted.value(), doubted.why()));
        }
        if (meaning instanceof Typing.Meaning.Refused no) {
            return refused(no.why());
        }
        return Response.of(new Event.SlotLeftOut(slot, "left empty"));
    }

    @Override
    public Response ticked(Input.Ticked input) {
        Activity activity = state.activity();
        if (Procedure.startsByItself(state)) {
            return activity.match(new GoingOn(state, now));
        }
        if (activity instanceof Activity.Waiting waiting && waiting.startedAt().isPresent()) {
            Step.Countdown step = (Step.Countdown) Procedure.step(state, waiting.place());
            return secondsSince(waiting.startedAt().getAsLong()) < step.seconds()
                    ? Response.nothing()
                    : Response.of(new Event.CountdownFinished(waiting.place()));
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isPresent()) {
            return exercised(exercising);
        }
        if (activity instanceof Activity.Gating gating && gating.startedAt().isPresent()) {
            Step.Gates step = (Step.Gates) Procedure.step(state, gating.place());
            return secondsSince(gating.startedAt().getAsLong())
                            < step.gates().get(gating.gate()).seconds()
                    ? Response.nothing()
                    : Response.of(new Event.GateFinished(gating.place(), gating.gate()));
        }
        if (activity instanceof Activity.Resting resting) {
            return secondsSince(resting.since()) < trials(resting.place()).restSeconds()
                    ? Response.nothing()
                    : Response.of(new Event.RestFinished(resting.place()));
        }
        return Response.nothing();
    }

    /**
     * Where readings are typed at the end, one exercise leads straight into the next, so no key is
     * needed.
     */
    private Response exercised(Activity.Exercising exercising) {
        Step.Exercises step = (Step.Exercises) Procedure.step(state, exercising.place());
        int exercise = exercising.exercise();
        if (secondsSince(exercising.startedAt().orElseThrow())
                < step.exercises().get(exercise).seconds()) {
            return Response.nothing();
        }
        Event finished = new Event.ExerciseFinished(exercising.place(), exercise);
        boolean runsOn =
                step.entering() == Step.Exercises.Entering.AT_END
                        && exercise + 1 < step.exercises().size();
        return runsOn
                ? Response.of(finished, new Event.ExerciseStarted(exercising.place(), exercise + 1))
                : Response.of(finished);
    }

    @Override
    public Response readingArrived(Input.ReadingArrived input) {
        boolean awaited =
                state.activity() instanceof Activity.Filling filling
                        && filling.slot().equals(input.slot());
        return awaited
                ? Response.of(
                        new Event.EntryCaptured(
                                state.captured().entries().size() + 1,
                                input.slot(),
                                new Value.Measured(input.quantity()),
                                input.source(),
                                input.seconds()))
                : Response.nothing();
    }

    @Override
    public Response undoAsked(Input.UndoAsked input) {
        return new Correcting(state).undone();
    }

    @Override
    public Response voidAsked(Input.VoidAsked input) {
        return new Correcting(state).voided(input.entry(), input.reason());
    }

    @Override
    public Response amendAsked(Input.AmendAsked input) {
        return new Correcting(state)
                .amended(input.entry(), input.text(), input.reason(), input.sure());
    }

    @Override
    public Response strikeAsked(Input.StrikeAsked input) {
        return new Correcting(state).struck(input.donning(), input.reason());
    }

    @Override
    public Response leaveOutAsked(Input.LeaveOutAsked input) {
        return new Correcting(state).leftOut(input.reason());
    }

    @Override
    public Response retakeAsked(Input.RetakeAsked input) {
        return new Correcting(state).retaken(input.reason());
    }

    @Override
    public Response noteTyped(Input.NoteTyped input) {
        return input.text().isBlank()
                ? refused("the note is empty; nothing is written")
                : Response.of(new Event.NoteWritten(input.text().strip()));
    }

    @Override
    public Response timeDoubted(Input.TimeDoubted input) {
        return Response.of(new Event.TimeDoubted(input.why(), input.ended()));
    }

    @Override
    public Response feedNoticed(Input.FeedNoticed input) {
        return Response.of(
                input.failing()
                        ? new Event.FeedFailed(input.feed(), input.words())
                        : new Event.FeedBack(input.feed(), input.words()));
    }

    @Override
    public Response haltPressed(Input.HaltPressed input) {
        if (state.isFromPaper()) {
            return refused("nothing runs here that could be stopped");
        }
        if (state.doing().halted().isPresent()) {
            return Response.nothing();
        }
        return interruptedBy(new Event.Halted("stopped by the tester"));
    }

    @Override
    public Response abandonAsked(Input.AbandonAsked input) {
        return state.course()
                .open()
                .map(
                        open ->
                                input.reason().isBlank()
                                        ? refused("say why: the reason is shown beside the result")
                                        : interruptedBy(
                                                new Event.DonningAbandoned(
                                                        open.number(), input.reason().strip())))
                .orElseGet(() -> refused("no donning is going on"));
    }

    @Override
    public Response moreAsked(Input.MoreAsked input) {
        if (!(state.activity() instanceof Activity.Recommended recommended)) {
            return refused("nothing is recommended yet");
        }
        return recommended.mayGoOn()
                ? Response.of(new Event.WentOn())
                : refused(
                        "the plan is used up: going on would break what the interval promises; a"
                                + " new plan can follow");
    }

    @Override
    public Response endAsked(Input.EndAsked input) {
        Activity activity = state.activity();
        boolean between =
                activity instanceof Activity.NextDonning
                        || activity instanceof Activity.Recommended;
        return between
                ? Correcting.reasoned(
                        input.reason(), new Event.RepeatsEnded(input.reason().strip()))
                : refused(
                        state.course().open().isPresent()
                                ? "finish or abandon this donning first"
                                : "no donning comes next here; leave the program instead");
    }

    @Override
    public Response leaveAsked(Input.LeaveAsked input) {
        return interruptedBy(new Event.SessionLeft());
    }

    @Override
    public Response reopened(Input.Reopened input) {
        List<Event> events = new ArrayList<>();
        events.add(new Event.SessionReopened(input.programVersion()));
        interruption().ifPresent(events::add);
        if (state.course().open().isPresent()
                && state.doing().halted().isEmpty()
                && !state.isFromPaper()) {
            events.add(new Event.Halted("the session was interrupted"));
        }
        return new Response.Happened(events);
    }

    @Override
    public Response lookArrived(Input.LookArrived input) {
        return Response.of(new Event.LookTaken(input.look()));
    }

    private Response interruptedBy(Event event) {
        List<Event> events = new ArrayList<>();
        interruption().ifPresent(events::add);
        events.add(event);
        return new Response.Happened(events);
    }

    /** What has to be said of an exercise or a trial that cannot run to its end. */
    private Optional<Event> interruption() {
        Activity running = state.doing().running().orElse(null);
        if (running instanceof Activity.Exercising exercising) {
            return Optional.of(
                    new Event.ExerciseInterrupted(exercising.place(), exercising.exercise()));
        }
        if (running instanceof Activity.Gating gating) {
            return Optional.of(new Event.GateInterrupted(gating.place(), gating.gate()));
        }
        if (running instanceof Activity.LeadIn lead) {
            return Optional.of(new Event.TrialInterrupted(lead.place(), lead.trial()));
        }
        if (running instanceof Activity.Pulling pulling) {
            return Optional.of(new Event.TrialInterrupted(pulling.place(), pulling.trial()));
        }
        return Optional.empty();
    }

    private static Response refused(String why) {
        return new Response.Refused(why);
    }

    private Event captured(Slot slot, Value value, Source source) {
        return new Event.EntryCaptured(state.captured().entries().size() + 1, slot, value, source);
    }

    private Step.Trials trials(Place place) {
        return (Step.Trials) Procedure.step(state, place);
    }

    private double secondsSince(long then) {
        return (now - then) / NANOS;
    }

    /** The value of a timed inhalation, in whole milliseconds: more digits would only pretend. */
    static Value time(double seconds) {
        return new Value.Measured(new Quantity(wholeMilliseconds(seconds), Unit.SECOND));
    }

    static double wholeMilliseconds(double seconds) {
        return Math.rint(seconds * 1000) / 1000;
    }
}
