package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What undoing, voiding, striking out, leaving out and doing again lead to. */
record Correcting(State state) {

    Response undone() {
        return state.doing().running().isPresent()
                ? refused("finish or stop what is going on first; then undo")
                : Undo.of(state)
                        .map(Response::of)
                        .orElseGet(
                                () ->
                                        refused(
                                                "there is nothing to undo just here; entries can"
                                                        + " be voided from the list of entries"));
    }

    Response voided(int number, String reason) {
        Optional<Entry> entry = state.captured().entry(number);
        if (entry.isEmpty()) {
            return refused("there is no entry " + number);
        }
        return entry.get().stands()
                ? reasoned(reason, new Event.EntryVoided(number, reason.strip()))
                : refused("entry " + number + " is struck out already");
    }

    /** A value outside what is plausible is taken only from somebody who is sure of it. */
    Response amended(int number, String text, String reason, boolean sure) {
        Amending.Meaning meaning = Amending.meaning(state, number, text);
        if (meaning instanceof Amending.Meaning.Refused no) {
            return refused(no.why());
        }
        if (meaning instanceof Amending.Meaning.Doubted doubted && !sure) {
            return refused(doubted.why() + "; it is taken only if it is meant");
        }
        return reasoned(reason, new Event.EntryAmended(number, meaning.value(), reason.strip()));
    }

    Response struck(int number, String reason) {
        boolean complete =
                state.course()
                        .donning(number)
                        .filter(donning -> donning.outcome() == Donning.Outcome.COMPLETE)
                        .isPresent();
        return complete
                ? reasoned(reason, new Event.DonningStruck(number, reason.strip()))
                : refused(
                        "donning "
                                + number
                                + " is not complete; only complete donnings are struck out");
    }

    Response leftOut(String reason) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Filling filling) {
            return reasoned(reason, new Event.SlotLeftOut(filling.slot(), reason.strip()));
        }
        if (activity instanceof Activity.TrialReady ready) {
            return leftOut(new Slot.Trial(ready.place(), ready.trial()), reason);
        }
        if (activity instanceof Activity.Resting resting) {
            return leftOut(new Slot.Trial(resting.place(), resting.trial()), reason);
        }
        if (activity instanceof Activity.GateMissed missed) {
            return leftOut(new Slot.Gate(missed.place(), missed.gate()), reason);
        }
        if (activity instanceof Activity.Gating gating && gating.startedAt().isEmpty()) {
            return leftOut(new Slot.Gate(gating.place(), gating.gate()), reason);
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isEmpty()) {
            return reasoned(
                    reason,
                    new Event.ExerciseLeftOut(
                            exercising.place(), exercising.exercise(), reason.strip()));
        }
        return activity instanceof Activity.Checking checking
                ? leftOut(checking, reason)
                : refused("nothing can be left out here");
    }

    private static Response leftOut(Slot slot, String reason) {
        return reasoned(reason, new Event.SlotLeftOut(slot, reason.strip()));
    }

    private Response leftOut(Activity.Checking checking, String reason) {
        return state.isPassable(checking)
                ? reasoned(
                        reason,
                        new Event.ItemLeftOut(checking.place(), checking.item(), reason.strip()))
                : refused("a check is not left out here; say no when it is not so");
    }

    /**
     * The exercise done last, again: its readings are struck out and it is offered afresh. A gate
     * that gave no value needs no reason: nothing is struck out.
     */
    Response retaken(String reason) {
        Optional<Slot.Gate> gate = state.rereadable();
        if (gate.isPresent()) {
            return Response.of(new Event.GateReopened(gate.get().place(), gate.get().gate()));
        }
        Optional<Place> place = state.retakeable();
        if (place.isEmpty()) {
            return refused("no exercise was done just now");
        }
        int exercise = state.course().progress(place.get()) - 1;
        List<Event> events = new ArrayList<>();
        for (Slot slot : new Fits(state).slotsOf(place.get(), exercise)) {
            state.captured()
                    .standing(slot)
                    .map(entry -> new Event.EntryVoided(entry.number(), reason.strip()))
                    .ifPresent(events::add);
        }
        events.add(new Event.ExerciseReopened(place.get(), exercise));
        return reason.isBlank() ? reasonWanted() : new Response.Happened(events);
    }

    static Response reasoned(String reason, Event event) {
        return reason.isBlank() ? reasonWanted() : Response.of(event);
    }

    private static Response reasonWanted() {
        return refused("say why in a few words; the reason is kept");
    }

    private static Response refused(String why) {
        return new Response.Refused(why);
    }
}
