package rigside.report;

import java.util.List;
import java.util.Optional;
import rigside.session.Event;
import rigside.session.Slot;

/**
 * An event as it may be told to others; nothing where all of it is left out. What the program
 * itself wrote is kept, what the tester typed in words is not.
 */
final class ToShare extends AsItIs {
    private final Leaving leaving;

    ToShare(Leaving leaving) {
        this.leaving = leaving;
    }

    @Override
    public Optional<Event> sessionOpened(Event.SessionOpened event) {
        boolean hasRig = !event.rigText().isEmpty();
        return Optional.of(
                new Event.SessionOpened(
                        event.programVersion(),
                        leaving.name(event.protocolName()),
                        event.protocolText(),
                        event.seed(),
                        hasRig
                                ? leaving.without(LeftOut.RIG, event.rig(), Leaving.WORDS)
                                : event.rig(),
                        leaving.without(LeftOut.RIG, event.rigText(), ""),
                        event.simulated(),
                        event.speed(),
                        leaving.without(LeftOut.PLACE, event.rigFolder(), ""),
                        event.paper()));
    }

    @Override
    public Optional<Event> selfTested(Event.SelfTested event) {
        leaving.count(LeftOut.SELF_TEST, event.terminal());
        return Optional.of(
                new Event.SelfTested(
                        event.when(),
                        Leaving.WORDS,
                        event.answers(),
                        event.median(),
                        event.p99(),
                        event.most(),
                        event.signal(),
                        event.reactions(),
                        List.of(),
                        List.of()));
    }

    @Override
    public Optional<Event> donningAbandoned(Event.DonningAbandoned event) {
        return Optional.of(
                new Event.DonningAbandoned(event.donning(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> donningStruck(Event.DonningStruck event) {
        return Optional.of(
                new Event.DonningStruck(event.donning(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> voidOffered(Event.VoidOffered event) {
        leaving.offered(event.entry(), event.why());
        return Optional.of(event);
    }

    @Override
    public Optional<Event> entryVoided(Event.EntryVoided event) {
        boolean isOwn = leaving.isOffered(event.entry(), event.reason());
        return Optional.of(
                isOwn
                        ? event
                        : new Event.EntryVoided(event.entry(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> entryDoubted(Event.EntryDoubted event) {
        boolean leaves = event.slot() instanceof Slot.Field field && leaving.why(field).isPresent();
        return Optional.of(
                leaves
                        ? new Event.EntryDoubted(
                                event.slot(),
                                leaving.value(event.slot(), event.value()),
                                Leaving.WORDS)
                        : event);
    }

    @Override
    public Optional<Event> entryCaptured(Event.EntryCaptured event) {
        return Optional.of(
                new Event.EntryCaptured(
                        event.entry(),
                        event.slot(),
                        leaving.value(event.slot(), event.value()),
                        event.source(),
                        event.seconds()));
    }

    @Override
    public Optional<Event> entryAmended(Event.EntryAmended event) {
        return Optional.of(
                new Event.EntryAmended(
                        event.entry(),
                        leaving.slot(event.entry())
                                .map(slot -> leaving.value(slot, event.value()))
                                .orElse(event.value()),
                        leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> slotLeftOut(Event.SlotLeftOut event) {
        return Optional.of(new Event.SlotLeftOut(event.slot(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> itemLeftOut(Event.ItemLeftOut event) {
        return Optional.of(
                new Event.ItemLeftOut(event.place(), event.item(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> exerciseLeftOut(Event.ExerciseLeftOut event) {
        return Optional.of(
                new Event.ExerciseLeftOut(
                        event.place(), event.exercise(), leaving.reason(event.reason())));
    }

    @Override
    public Optional<Event> noteWritten(Event.NoteWritten event) {
        leaving.count(LeftOut.NOTE, event.text());
        return Optional.empty();
    }

    @Override
    public Optional<Event> feedFailed(Event.FeedFailed event) {
        return Optional.of(
                new Event.FeedFailed(
                        event.feed(),
                        leaving.without(LeftOut.TROUBLE, event.why(), Leaving.WORDS)));
    }

    @Override
    public Optional<Event> feedBack(Event.FeedBack event) {
        return Optional.of(
                new Event.FeedBack(
                        event.feed(),
                        leaving.without(LeftOut.TROUBLE, event.words(), Leaving.WORDS)));
    }

    @Override
    public Optional<Event> traceMissing(Event.TraceMissing event) {
        return Optional.of(
                new Event.TraceMissing(
                        event.place(),
                        event.trial(),
                        leaving.without(LeftOut.TROUBLE, event.why(), Leaving.WORDS)));
    }

    @Override
    public Optional<Event> halted(Event.Halted event) {
        return Optional.of(new Event.Halted(leaving.reason(event.why())));
    }

    @Override
    public Optional<Event> repeatsEnded(Event.RepeatsEnded event) {
        return Optional.of(new Event.RepeatsEnded(leaving.reason(event.reason())));
    }
}
