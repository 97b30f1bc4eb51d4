package rigside.screen;

import java.util.Optional;
import rigside.session.Activity;
import rigside.session.Place;
import rigside.session.State;

/** The step that is going on, if one is. */
record Places(State state) implements Activity.Cases<Optional<Place>> {

    static Optional<Place> of(State state) {
        return state.activity().match(new Places(state));
    }

    @Override
    public Optional<Place> cautions(Activity.Cautions activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> nextDonning(Activity.NextDonning activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> checking(Activity.Checking activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> filling(Activity.Filling activity) {
        return Optional.of(activity.slot().place());
    }

    @Override
    public Optional<Place> waiting(Activity.Waiting activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> exercising(Activity.Exercising activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> trialReady(Activity.TrialReady activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> leadIn(Activity.LeadIn activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> pulling(Activity.Pulling activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> tracing(Activity.Tracing activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> holdAsked(Activity.HoldAsked activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> voidAsked(Activity.VoidAsked activity) {
        return state.captured().entry(activity.entry()).map(entry -> entry.slot().place());
    }

    @Override
    public Optional<Place> doubting(Activity.Doubting activity) {
        return Optional.of(activity.slot().place());
    }

    @Override
    public Optional<Place> resting(Activity.Resting activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> reading(Activity.Reading activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> gating(Activity.Gating activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> gateMissed(Activity.GateMissed activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> donningDone(Activity.DonningDone activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> recommended(Activity.Recommended activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> halted(Activity.Halted activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> closing(Activity.Closing activity) {
        return Optional.empty();
    }

    @Override
    public Optional<Place> closed(Activity.Closed activity) {
        return Optional.empty();
    }
}
