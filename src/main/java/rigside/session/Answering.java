package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.IfNot;
import rigside.protocol.Step;

/** What a yes or a no leads to. */
record Answering(State state, boolean yes) implements Activity.Cases<Response> {

    @Override
    public Response checking(Activity.Checking activity) {
        return yes
                ? Response.of(new Event.ItemConfirmed(activity.place(), activity.item()))
                : failed(activity, "");
    }

    /**
     * Where a failed item leads is the protocol's to say. Without an open donning there is none to
     * abandon.
     */
    Response failed(Activity.Checking activity, String what) {
        Step.Checklist step = (Step.Checklist) Procedure.step(state, activity.place());
        Step.Checklist.Item item = step.items().get(activity.item());
        Optional<Donning> open = state.course().open();
        String reason = "check failed: " + item.text() + (what.isEmpty() ? "" : " (" + what + ")");
        List<Event> events = new ArrayList<>();
        events.add(new Event.ItemFailed(activity.place(), activity.item()));
        if (item.ifNot().endsDonning()) {
            open.ifPresent(
                    donning -> events.add(new Event.DonningAbandoned(donning.number(), reason)));
        }
        if (item.ifNot() == IfNot.STOP) {
            events.add(new Event.Halted(reason));
        }
        return new Response.Happened(events);
    }

    /** A pull that was not held is kept and struck out at once. */
    @Override
    public Response holdAsked(Activity.HoldAsked activity) {
        Slot slot = new Slot.Trial(activity.place(), activity.trial());
        int number = state.captured().entries().size() + 1;
        List<Event> events = new ArrayList<>();
        events.add(
                new Event.EntryCaptured(number, slot, Respond.time(activity.seconds()), source()));
        if (yes) {
            new Judging(state)
                    .doubt(activity.place(), activity.seconds(), Optional.empty())
                    .ifPresent(why -> events.add(new Event.VoidOffered(number, why)));
        } else {
            events.add(new Event.EntryVoided(number, "the pull was not held"));
        }
        return new Response.Happened(events);
    }

    private Source source() {
        if (state.isFromPaper()) {
            return Source.TYPED;
        }
        return state.opening().orElseThrow().event().simulated() ? Source.SIMULATED : Source.TIMED;
    }

    @Override
    public Response voidAsked(Activity.VoidAsked activity) {
        return Response.of(
                yes
                        ? new Event.EntryVoided(activity.entry(), activity.why())
                        : new Event.VoidDeclined(activity.entry()));
    }

    @Override
    public Response doubting(Activity.Doubting activity) {
        int number = state.captured().entries().size() + 1;
        return Response.of(
                yes
                        ? new Event.EntryCaptured(
                                number, activity.slot(), activity.value(), Source.TYPED)
                        : new Event.DoubtDropped(activity.slot()));
    }

    @Override
    public Response cautions(Activity.Cautions activity) {
        return nothingAsked();
    }

    @Override
    public Response nextDonning(Activity.NextDonning activity) {
        return nothingAsked();
    }

    @Override
    public Response filling(Activity.Filling activity) {
        return nothingAsked();
    }

    @Override
    public Response waiting(Activity.Waiting activity) {
        return nothingAsked();
    }

    @Override
    public Response exercising(Activity.Exercising activity) {
        return nothingAsked();
    }

    @Override
    public Response trialReady(Activity.TrialReady activity) {
        return nothingAsked();
    }

    @Override
    public Response leadIn(Activity.LeadIn activity) {
        return nothingAsked();
    }

    @Override
    public Response pulling(Activity.Pulling activity) {
        return nothingAsked();
    }

    @Override
    public Response tracing(Activity.Tracing activity) {
        return nothingAsked();
    }

    @Override
    public Response resting(Activity.Resting activity) {
        return nothingAsked();
    }

    @Override
    public Response reading(Activity.Reading activity) {
        return nothingAsked();
    }

    @Override
    public Response gating(Activity.Gating activity) {
        return nothingAsked();
    }

    @Override
    public Response gateMissed(Activity.GateMissed activity) {
        return nothingAsked();
    }

    @Override
    public Response donningDone(Activity.DonningDone activity) {
        return nothingAsked();
    }

    @Override
    public Response recommended(Activity.Recommended activity) {
        return nothingAsked();
    }

    @Override
    public Response halted(Activity.Halted activity) {
        return nothingAsked();
    }

    @Override
    public Response closing(Activity.Closing activity) {
        return nothingAsked();
    }

    @Override
    public Response closed(Activity.Closed activity) {
        return nothingAsked();
    }

    private static Response nothingAsked() {
        return new Response.Refused("no question is asked here");
    }
}
