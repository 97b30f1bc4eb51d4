package rigside.report;

import java.util.Optional;
import rigside.session.Event;

/**
 * Events that hold nothing a tester typed in words, as they are. Those that may are left to whoever
 * extends this: a new kind of event belongs to one side or the other, or nothing compiles.
 */
abstract class AsItIs implements Event.Cases<Optional<Event>> {
    @Override
    public Optional<Event> sessionLeft(Event.SessionLeft event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> sessionReopened(Event.SessionReopened event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> cautionsAcknowledged(Event.CautionsAcknowledged event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> donningStarted(Event.DonningStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> donningCompleted(Event.DonningCompleted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> itemConfirmed(Event.ItemConfirmed event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> itemFailed(Event.ItemFailed event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> countdownStarted(Event.CountdownStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> countdownFinished(Event.CountdownFinished event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> exerciseStarted(Event.ExerciseStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> exerciseFinished(Event.ExerciseFinished event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> exerciseInterrupted(Event.ExerciseInterrupted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> leadInStarted(Event.LeadInStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> trialStarted(Event.TrialStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> trialStopped(Event.TrialStopped event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> trialInterrupted(Event.TrialInterrupted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> voidDeclined(Event.VoidDeclined event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> restFinished(Event.RestFinished event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> noteRead(Event.NoteRead event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> gateStarted(Event.GateStarted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> gateFinished(Event.GateFinished event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> gateInterrupted(Event.GateInterrupted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> gateReopened(Event.GateReopened event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> doubtDropped(Event.DoubtDropped event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> entryTraced(Event.EntryTraced event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> amendmentWithdrawn(Event.AmendmentWithdrawn event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> leaveOutWithdrawn(Event.LeaveOutWithdrawn event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> itemReopened(Event.ItemReopened event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> exerciseReopened(Event.ExerciseReopened event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> timeDoubted(Event.TimeDoubted event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> cued(Event.Cued event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> continued(Event.Continued event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> lookTaken(Event.LookTaken event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> wentOn(Event.WentOn event) {
        return Optional.of(event);
    }

    @Override
    public Optional<Event> sessionClosed(Event.SessionClosed event) {
        return Optional.of(event);
    }
}
