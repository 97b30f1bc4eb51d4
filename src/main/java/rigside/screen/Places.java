package rigside.screen;

import java.util.Optional;
import rigside.session.Activity;
import rigside.session.Place;

/** The step an activity belongs to, if it belongs to one. */
record Places() implements Activity.Cases<Optional<Place>> {

    static Optional<Place> of(Activity activity) {
        return activity.match(new Places());
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
    public Optional<Place> holdAsked(Activity.HoldAsked activity) {
        return Optional.of(activity.place());
    }

    @Override
    public Optional<Place> voidAsked(Activity.VoidAsked activity) {
        return Optional.empty();
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
