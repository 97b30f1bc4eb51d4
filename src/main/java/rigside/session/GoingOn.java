package rigside.session;

import rigside.protocol.Gate;
import rigside.protocol.Step;

/** What the go-on key leads to. */
record GoingOn(State state, long now) implements Activity.Cases<Response> {

    @Override
    public Response cautions(Activity.Cautions activity) {
        return Response.of(new Event.CautionsAcknowledged());
    }

    @Override
    public Response nextDonning(Activity.NextDonning next) {
        int number = state.course().donnings().size() + 1;
        return Response.of(
                new Event.DonningStarted(number, next.round(), next.turn(), next.condition()));
    }

    @Override
    public Response checking(Activity.Checking activity) {
        return Response.of(new Event.ItemConfirmed(activity.place(), activity.item()));
    }

    @Override
    public Response filling(Activity.Filling activity) {
        return refused("type an answer, then press Enter");
    }

    @Override
    public Response waiting(Activity.Waiting activity) {
        if (state.isFromPaper()) {
            return Response.of(new Event.CountdownFinished(activity.place()));
        }
        return activity.startedAt().isEmpty()
                ? Response.of(new Event.CountdownStarted(activity.place()))
                : refused("it goes on by itself when the time is over");
    }

    @Override
    public Response exercising(Activity.Exercising activity) {
        if (state.isFromPaper()) {
            return Response.of(new Event.ExerciseFinished(activity.place(), activity.exercise()));
        }
        return activity.startedAt().isEmpty()
                ? Response.of(new Event.ExerciseStarted(activity.place(), activity.exercise()))
                : refused("it goes on by itself when the time is over");
    }

    @Override
    public Response trialReady(Activity.TrialReady activity) {
        return Response.of(new Event.LeadInStarted(activity.place(), activity.trial()));
    }

    @Override
    public Response leadIn(Activity.LeadIn activity) {
        return refused("press the trigger when you begin to pull");
    }

    @Override
    public Response pulling(Activity.Pulling activity) {
        return refused("press the trigger when your lungs are full");
    }

    @Override
    public Response tracing(Activity.Tracing activity) {
        return refused("the pressure trace is being read");
    }

    @Override
    public Response holdAsked(Activity.HoldAsked activity) {
        return answer();
    }

    @Override
    public Response voidAsked(Activity.VoidAsked activity) {
        return answer();
    }

    @Override
    public Response doubting(Activity.Doubting activity) {
        return answer();
    }

    @Override
    public Response resting(Activity.Resting activity) {
        return refused("rest until the time is over: full breaths in a row make dizzy");
    }

    @Override
    public Response reading(Activity.Reading activity) {
        return Response.of(new Event.NoteRead(activity.place()));
    }

    @Override
    public Response gating(Activity.Gating activity) {
        return activity.startedAt().isEmpty()
                ? Response.of(new Event.GateStarted(activity.place(), activity.gate()))
                : refused("it goes on by itself when the time is over");
    }

    /** What was read is kept, struck out with what it missed, and read again. */
    @Override
    public Response gateMissed(Activity.GateMissed activity) {
        Gate gate =
                ((Step.Gates) Procedure.step(state, activity.place())).gates().get(activity.gate());
        return Response.of(
                new Event.EntryVoided(
                        activity.entry(), "the gate needs " + gate.needs() + "; read again"));
    }

    @Override
    public Response donningDone(Activity.DonningDone activity) {
        return Response.of(new Event.DonningCompleted(activity.donning()));
    }

    @Override
    public Response recommended(Activity.Recommended activity) {
        return Response.of(
                new Event.RepeatsEnded(activity.mayGoOn() ? "enough" : "the plan is used up"));
    }

    @Override
    public Response halted(Activity.Halted activity) {
        return Response.of(new Event.Continued());
    }

    @Override
    public Response closing(Activity.Closing activity) {
        return Response.of(new Event.SessionClosed());
    }

    @Override
    public Response closed(Activity.Closed activity) {
        return Response.nothing();
    }

    private static Response answer() {
        return refused("answer with yes or no");
    }

    private static Response refused(String why) {
        return new Response.Refused(why);
    }
}
