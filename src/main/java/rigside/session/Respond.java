package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * What an input leads to: events, or a refusal in words. Every reason to refuse lives here, none in
 * the reducer.
 *
 * @param state the state the input meets
 * @param now when it came in, in nanoseconds of session time
 */
public record Respond(State state, long now) implements Input.Cases<Response> {

    /**
     * A second press of the trigger within this time of the first is the key bouncing or repeating.
     */
    static final double SHORTEST_PULL_SECONDS = 0.25;

    /**
     * A trigger pressed this much before the lead-in is over is the start of the pull: people
     * anticipate a countdown.
     */
    static final double ANTICIPATION_SECONDS = 0.5;

    private static final double NANOS = 1e9;

    /** What {@code input}, coming in at {@code now}, leads to. */
    public static Response to(State state, Input input, long now) {
        return input.match(new Respond(state, now));
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
            return seconds < SHORTEST_PULL_SECONDS ? Response.nothing() : stopped(pulling, seconds);
        }
        if (activity instanceof Activity.TrialReady
                || activity instanceof Activity.Exercising
                || activity instanceof Activity.Waiting) {
            return activity.match(new GoingOn(state, now));
        }
        return refused("the trigger does nothing here");
    }

    private Response leadInTriggered(Activity.LeadIn lead) {
        double left = trials(lead.place()).leadInSeconds() - secondsSince(lead.startedAt());
        return left > ANTICIPATION_SECONDS
                ? refused("the lead-in is still counting down; press again when you begin to pull")
                : Response.of(new Event.TrialStarted(lead.place(), lead.trial()));
    }

    private static Response stopped(Activity.Pulling pulling, double seconds) {
        return Response.of(new Event.TrialStopped(pulling.place(), pulling.trial(), seconds));
    }

    @Override
    public Response pullEnded(Input.PullEnded input) {
        return state.activity() instanceof Activity.Pulling pulling
                ? stopped(pulling, secondsSince(pulling.startedAt()))
                : Response.nothing();
    }

    @Override
    public Response answered(Input.Answered input) {
        return state.activity().match(new Answering(state, input.yes()));
    }

    @Override
    public Response typed(Input.Typed input) {
        if (!(state.activity() instanceof Activity.Filling filling)) {
            return refused("nothing is to be typed here");
        }
        Slot slot = filling.slot();
        Typing.Meaning meaning = Typing.meaning(state, slot, input.text());
        if (meaning instanceof Typing.Meaning.Taken taken) {
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
                        captured(
                                input.slot(), new Value.Measured(input.quantity()), input.source()))
                : Response.nothing();
    }

    @Override
    public Response undoAsked(Input.UndoAsked input) {
        if (state.doing().running().isPresent()) {
            return refused("finish or stop what is going on first; then undo");
        }
        int part = state.course().open().map(Donning::number).orElse(0);
        Optional<Entry> last =
                state.captured().entries().stream()
                        .filter(
                                entry ->
                                        entry.stands()
                                                && entry.slot().place().donning() == part
                                                && entry.slot().place().stage()
                                                        == state.course().stage())
                        .reduce((earlier, later) -> later);
        return last.map(entry -> Response.of(new Event.EntryVoided(entry.number(), "undone")))
                .orElseGet(
                        () ->
                                refused(
                                        "there is no entry to undo in this donning;"
                                                + " earlier ones can be voided from the list of entries"));
    }

    @Override
    public Response voidAsked(Input.VoidAsked input) {
        Optional<Entry> entry = state.captured().entry(input.entry());
        if (entry.isEmpty()) {
            return refused("there is no entry " + input.entry());
        }
        if (!entry.get().stands()) {
            return refused("entry " + input.entry() + " is struck out already");
        }
        return reasoned(
                input.reason(), new Event.EntryVoided(input.entry(), input.reason().strip()));
    }

    @Override
    public Response strikeAsked(Input.StrikeAsked input) {
        boolean complete =
                state.course()
                        .donning(input.donning())
                        .filter(donning -> donning.outcome() == Donning.Outcome.COMPLETE)
                        .isPresent();
        if (!complete) {
            return refused(
                    "donning "
                            + input.donning()
                            + " is not complete; only complete donnings are struck out");
        }
        if (state.course().stage() == Stage.AFTER) {
            return refused("no donning follows any more; void its entries instead");
        }
        return reasoned(
                input.reason(), new Event.DonningStruck(input.donning(), input.reason().strip()));
    }

    @Override
    public Response leaveOutAsked(Input.LeaveOutAsked input) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Filling filling) {
            return reasoned(
                    input.reason(), new Event.SlotLeftOut(filling.slot(), input.reason().strip()));
        }
        if (activity instanceof Activity.TrialReady ready) {
            return leaveOutTrial(ready.place(), ready.trial(), input.reason());
        }
        if (activity instanceof Activity.Resting resting) {
            return leaveOutTrial(resting.place(), resting.trial(), input.reason());
        }
        return refused("nothing can be left out here");
    }

    private static Response leaveOutTrial(Place place, int trial, String reason) {
        return reasoned(
                reason, new Event.SlotLeftOut(new Slot.Trial(place, trial), reason.strip()));
    }

    @Override
    public Response noteTyped(Input.NoteTyped input) {
        return input.text().isBlank()
                ? refused("the note is empty; nothing is written")
                : Response.of(new Event.NoteWritten(input.text().strip()));
    }

    @Override
    public Response haltPressed(Input.HaltPressed input) {
        if (state.course().closed() || state.doing().halted().isPresent()) {
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
                        "the plan is used up: going on would break what the interval promises; a new plan can follow");
    }

    @Override
    public Response endAsked(Input.EndAsked input) {
        Activity activity = state.activity();
        boolean between =
                activity instanceof Activity.NextDonning
                        || activity instanceof Activity.Recommended;
        return between
                ? reasoned(input.reason(), new Event.RepeatsEnded(input.reason().strip()))
                : refused("finish or abandon this donning first");
    }

    @Override
    public Response leaveAsked(Input.LeaveAsked input) {
        return state.course().closed()
                ? Response.nothing()
                : interruptedBy(new Event.SessionLeft());
    }

    @Override
    public Response reopened(Input.Reopened input) {
        List<Event> events = new ArrayList<>();
        events.add(new Event.SessionReopened(input.programVersion()));
        interruption().ifPresent(events::add);
        if (state.course().open().isPresent() && state.doing().halted().isEmpty()) {
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
        if (running instanceof Activity.LeadIn lead) {
            return Optional.of(new Event.TrialInterrupted(lead.place(), lead.trial()));
        }
        if (running instanceof Activity.Pulling pulling) {
            return Optional.of(new Event.TrialInterrupted(pulling.place(), pulling.trial()));
        }
        return Optional.empty();
    }

    private static Response reasoned(String reason, Event event) {
        return reason.isBlank()
                ? refused("say why in a few words; the reason is kept")
                : Response.of(event);
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
        return new Value.Measured(new Quantity(Math.rint(seconds * 1000) / 1000, Unit.SECOND));
    }
}
