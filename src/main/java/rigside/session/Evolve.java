package rigside.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rigside.protocol.IfNot;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

/**
 * The one reducer: what an event makes of the state before it.
 *
 * @param before the state before the event
 * @param at when the event happened, in nanoseconds of session time
 */
public record Evolve(State before, long at) implements Event.Cases<State> {

    /**
     * The state a journal leads to.
     *
     * @throws DoesNotApply if an event cannot follow the ones before it
     */
    public static State fold(List<Recorded> journal) {
        State state = State.START;
        for (Recorded recorded : journal) {
            state = step(state, recorded.event(), recorded.at());
        }
        return state;
    }

    /**
     * The state after one more event.
     *
     * @throws DoesNotApply if the event cannot follow the ones before it
     */
    public static State step(State before, Event event, long at) {
        if (before.opening().isPresent() == (event instanceof Event.SessionOpened)) {
            throw new DoesNotApply(
                    before.opening().isPresent()
                            ? "the session is opened a second time"
                            : "the session is not opened yet");
        }
        if (before.course().closed() && !corrects(event)) {
            throw new DoesNotApply("the session is closed before it");
        }
        return event.match(new Evolve(before, at));
    }

    /** After its end the record of a session can be corrected, and looked at anew; nothing else. */
    private static boolean corrects(Event event) {
        return event instanceof Event.EntryAmended
                || event instanceof Event.EntryVoided
                || event instanceof Event.LookTaken;
    }

    @Override
    public State sessionOpened(Event.SessionOpened event) {
        if (!(event.speed() > 0 && event.speed() <= Double.MAX_VALUE)) {
            throw new DoesNotApply("its speed is " + event.speed());
        }
        Read read = ProtocolReader.readRecorded(event.protocolName(), event.protocolText());
        if (read instanceof Read.Good good) {
            Protocol protocol = good.protocol();
            return new State(
                    Optional.of(new State.Opening(event, protocol, Optional.empty())),
                    before.course(),
                    before.captured(),
                    before.doing(),
                    before.feeds());
        }
        throw new DoesNotApply(
                "its protocol cannot be read:\n" + ((Read.Bad) read).problems().get(0));
    }

    @Override
    public State sessionLeft(Event.SessionLeft event) {
        return before;
    }

    /** Instruments are followed anew: what is still wrong with one will be said again. */
    @Override
    public State sessionReopened(Event.SessionReopened event) {
        return before.with(Failing.NONE);
    }

    @Override
    public State cautionsAcknowledged(Event.CautionsAcknowledged event) {
        return before.with(before.course().withCautionsRead());
    }

    /** Where the mask stays on, the lungs still need their rest from the last pull before. */
    @Override
    public State donningStarted(Event.DonningStarted event) {
        Donning donning =
                new Donning(
                        event.donning(),
                        event.round(),
                        event.turn(),
                        event.condition(),
                        Donning.Outcome.OPEN,
                        "",
                        0,
                        at,
                        Optional.empty());
        if (before.course().open().isPresent()) {
            throw new DoesNotApply("a donning is started while another is going on");
        }
        if (before.protocol().condition(event.condition()).isEmpty()) {
            throw new DoesNotApply("the protocol has no condition '" + event.condition() + "'");
        }
        boolean putOn = Schedule.isPutOn(before, donning);
        return before.with(
                        before.course()
                                .at(Stage.DONNING)
                                .with(Lists.plus(before.course().donnings(), donning)))
                .with(before.captured().withAmendmentsKept())
                .with(putOn ? Doing.START : before.doing());
    }

    @Override
    public State donningCompleted(Event.DonningCompleted event) {
        return ended(event.donning(), Donning.Outcome.COMPLETE, "");
    }

    @Override
    public State donningAbandoned(Event.DonningAbandoned event) {
        return ended(event.donning(), Donning.Outcome.ABANDONED, event.reason());
    }

    private State ended(int number, Donning.Outcome how, String why) {
        List<Donning> donnings =
                Lists.changed(
                        before.course().donnings(),
                        donning ->
                                donning.number() == number
                                        && donning.outcome() == Donning.Outcome.OPEN,
                        donning -> donning.ended(how, why, at));
        return before.with(before.course().with(donnings))
                .with(before.captured().withAmendmentsKept())
                .with(before.doing().ended());
    }

    /**
     * It is done again, even when the repeats had ended: they go on with it, or are ended once
     * more.
     */
    @Override
    public State donningStruck(Event.DonningStruck event) {
        int looks = before.captured().looks().size();
        List<Donning> donnings =
                Lists.changed(
                        before.course().donnings(),
                        donning ->
                                donning.number() == event.donning()
                                        && donning.outcome() == Donning.Outcome.COMPLETE,
                        donning -> donning.struck(event.reason(), looks));
        return before.with(before.course().with(donnings).at(Stage.DONNING));
    }

    @Override
    public State itemConfirmed(Event.ItemConfirmed event) {
        fits().item(event.place(), event.item());
        return answered(event.place(), event.item(), Checked.SO, event.item() + 1);
    }

    /** Unless it lets the list go on, a failed item leads through it from its first again. */
    @Override
    public State itemFailed(Event.ItemFailed event) {
        int done = goesOn(event.place(), event.item()) ? event.item() + 1 : 0;
        State answered = answered(event.place(), event.item(), Checked.NOT_SO, done);
        return answered.with(answered.captured().with(failed(event.place(), event.item(), "")));
    }

    @Override
    public State itemLeftOut(Event.ItemLeftOut event) {
        fits().item(event.place(), event.item());
        State answered = answered(event.place(), event.item(), Checked.LEFT_OUT, event.item() + 1);
        return answered.with(
                answered.captured().with(failed(event.place(), event.item(), event.reason())));
    }

    /** Taken back, it is kept as a note: a no is an outcome and never goes silently. */
    @Override
    public State itemReopened(Event.ItemReopened event) {
        String text = fits().item(event.place(), event.item()).items().get(event.item()).text();
        Captured.Answer answer =
                before.captured()
                        .answer(event.place(), event.item())
                        .orElseThrow(() -> new DoesNotApply("the check is not answered"));
        Course course = before.course();
        int done = Math.min(course.progress(event.place()), event.item());
        State noted = noted("taken back: " + answer.how().said() + " at \"" + text + "\"");
        return noted.with(course.with(event.place(), done)).with(noted.captured().without(answer));
    }

    private State answered(Place place, int item, Checked how, int done) {
        Captured captured = before.captured();
        return before.with(before.course().with(place, item, how, done))
                .with(goesOn(place, item) ? captured.answered(place, item, how) : captured);
    }

    private boolean goesOn(Place place, int item) {
        return fits().item(place, item).items().get(item).ifNot() == IfNot.GO_ON;
    }

    private Captured.FailedCheck failed(Place place, int item, String reason) {
        String text = fits().item(place, item).items().get(item).text();
        return new Captured.FailedCheck(
                place, item, reason.isEmpty() ? text : text + " (" + reason + ")");
    }

    @Override
    public State countdownStarted(Event.CountdownStarted event) {
        fits().countdown(event.place());
        return running(new Activity.Waiting(event.place(), OptionalLong.of(at)));
    }

    @Override
    public State countdownFinished(Event.CountdownFinished event) {
        fits().countdown(event.place());
        return idle().with(before.course().with(event.place(), 1));
    }

    @Override
    public State exerciseStarted(Event.ExerciseStarted event) {
        fits().exercise(event.place(), event.exercise());
        return running(
                        new Activity.Exercising(
                                event.place(), event.exercise(), OptionalLong.of(at)))
                .with(before.course().withBegun(event.place(), event.exercise(), at));
    }

    @Override
    public State exerciseFinished(Event.ExerciseFinished event) {
        fits().exercise(event.place(), event.exercise());
        return idle().with(before.course().with(event.place(), event.exercise() + 1));
    }

    @Override
    public State exerciseInterrupted(Event.ExerciseInterrupted event) {
        fits().exercise(event.place(), event.exercise());
        return idle();
    }

    @Override
    public State leadInStarted(Event.LeadInStarted event) {
        fits().trial(event.place(), event.trial());
        return running(new Activity.LeadIn(event.place(), event.trial(), at));
    }

    @Override
    public State trialStarted(Event.TrialStarted event) {
        fits().trial(event.place(), event.trial());
        return running(new Activity.Pulling(event.place(), event.trial(), at));
    }

    @Override
    public State trialStopped(Event.TrialStopped event) {
        fits().trial(event.place(), event.trial());
        Activity next =
                event.traced()
                        ? new Activity.Tracing(
                                event.place(), event.trial(), event.seconds(), pressedAt(event), at)
                        : new Activity.HoldAsked(
                                event.place(), event.trial(), event.seconds(), Optional.empty());
        return before.with(before.doing().running(next).pulledAt(at));
    }

    private long pressedAt(Event.TrialStopped event) {
        return before.doing()
                .running()
                .filter(Activity.Pulling.class::isInstance)
                .map(running -> ((Activity.Pulling) running).startedAt())
                .orElseGet(() -> at - Math.round(event.seconds() * 1e9));
    }

    @Override
    public State traceMissing(Event.TraceMissing event) {
        fits().trial(event.place(), event.trial());
        if (before.doing().running().orElse(null) instanceof Activity.Tracing tracing) {
            Activity asked =
                    new Activity.HoldAsked(
                            event.place(),
                            event.trial(),
                            tracing.seconds(),
                            Optional.of(event.why()));
            return noted(event.why()).with(before.doing().running(asked));
        }
        throw new DoesNotApply("no trace is waited for");
    }

    /** A pull that was broken off still needs its rest; a lead-in does not. */
    @Override
    public State trialInterrupted(Event.TrialInterrupted event) {
        fits().trial(event.place(), event.trial());
        boolean pulled =
                before.doing().running().filter(Activity.Pulling.class::isInstance).isPresent();
        Doing idle = before.doing().idle();
        return before.with(pulled ? idle.pulledAt(at) : idle);
    }

    @Override
    public State voidOffered(Event.VoidOffered event) {
        return running(new Activity.VoidAsked(event.entry(), event.why()));
    }

    @Override
    public State voidDeclined(Event.VoidDeclined event) {
        return idle();
    }

    @Override
    public State restFinished(Event.RestFinished event) {
        return before.with(before.doing().rested(fits().trials(event.place()).restSeconds()));
    }

    @Override
    public State noteRead(Event.NoteRead event) {
        fits().note(event.place());
        return before.with(before.course().with(event.place(), 1));
    }

    @Override
    public State gateStarted(Event.GateStarted event) {
        fits().gate(event.place(), event.gate());
        return running(new Activity.Gating(event.place(), event.gate(), OptionalLong.of(at)))
                .with(before.course().withBegun(event.place(), event.gate(), at));
    }

    @Override
    public State gateFinished(Event.GateFinished event) {
        fits().gate(event.place(), event.gate());
        return idle().with(before.course().with(event.place(), event.gate() + 1));
    }

    @Override
    public State gateInterrupted(Event.GateInterrupted event) {
        fits().gate(event.place(), event.gate());
        return idle();
    }

    @Override
    public State gateReopened(Event.GateReopened event) {
        fits().gate(event.place(), event.gate());
        return idle().with(before.course().with(event.place(), event.gate()));
    }

    @Override
    public State entryDoubted(Event.EntryDoubted event) {
        fits().slot(event.slot());
        return running(new Activity.Doubting(event.slot(), event.value(), event.why()));
    }

    @Override
    public State doubtDropped(Event.DoubtDropped event) {
        return idle();
    }

    @Override
    public State entryCaptured(Event.EntryCaptured event) {
        if (event.entry() != before.captured().entries().size() + 1) {
            throw new DoesNotApply(
                    "entry " + event.entry() + " does not follow the entries before it");
        }
        fits().slot(event.slot());
        Entry entry =
                new Entry(
                        event.entry(),
                        event.slot(),
                        event.value(),
                        event.source(),
                        at,
                        Optional.empty(),
                        Optional.empty(),
                        event.seconds(),
                        traceMissingFor(event.slot()),
                        before.captured().looks().size(),
                        List.of());
        return idle().with(
                        before.captured()
                                .withEntries(Lists.plus(before.captured().entries(), entry)));
    }

    private Optional<String> traceMissingFor(Slot slot) {
        return before.doing().running().orElse(null) instanceof Activity.HoldAsked asked
                        && slot.equals(new Slot.Trial(asked.place(), asked.trial()))
                ? asked.why()
                : Optional.empty();
    }

    @Override
    public State entryTraced(Event.EntryTraced event) {
        return before.with(
                before.captured()
                        .withEntries(
                                Lists.changed(
                                        before.captured().entries(),
                                        entry -> entry.number() == event.entry(),
                                        entry -> entry.traced(event.trace()))));
    }

    @Override
    public State entryVoided(Event.EntryVoided event) {
        int looks = before.captured().looks().size();
        List<Entry> entries =
                Lists.changed(
                        before.captured().entries(),
                        entry -> entry.number() == event.entry() && entry.stands(),
                        entry -> entry.struck(event.reason(), looks));
        boolean asked =
                before.doing()
                        .running()
                        .filter(activity -> asksAbout(activity, event.entry()))
                        .isPresent();
        return (asked ? idle() : before)
                .with(readAgain(event.entry()))
                .with(before.captured().withEntries(entries));
    }

    @Override
    public State entryAmended(Event.EntryAmended event) {
        int looks = before.captured().looks().size();
        List<Entry> entries =
                Lists.changed(
                        before.captured().entries(),
                        entry ->
                                entry.number() == event.entry()
                                        && entry.stands()
                                        && entry.value().getClass() == event.value().getClass(),
                        entry -> entry.amended(event.value(), event.reason(), looks, at));
        return before.with(before.captured().amended(event.entry(), entries));
    }

    /** What it was amended to is kept as a note: nothing that was on record goes silently. */
    @Override
    public State amendmentWithdrawn(Event.AmendmentWithdrawn event) {
        Entry amended =
                before.captured()
                        .entry(event.entry())
                        .filter(entry -> entry.stands() && entry.isAmended())
                        .orElseThrow(() -> new DoesNotApply("the entry is not amended"));
        State noted =
                noted(
                        "taken back: entry "
                                + amended.number()
                                + " was amended to "
                                + amended.value()
                                + " ("
                                + amended.lastAmendment().orElseThrow().reason()
                                + ")");
        List<Entry> entries =
                Lists.changed(
                        before.captured().entries(),
                        entry -> entry.number() == event.entry(),
                        Entry::withdrawn);
        return noted.with(noted.captured().withdrawn(event.entry(), entries));
    }

    /** Air changes: a gate whose value is struck out is read afresh, not filled in. */
    private Course readAgain(int entry) {
        return before.captured()
                .entry(entry)
                .map(Entry::slot)
                .filter(Slot.Gate.class::isInstance)
                .map(Slot.Gate.class::cast)
                .filter(gate -> before.course().progress(gate.place()) > gate.gate())
                .map(gate -> before.course().with(gate.place(), gate.gate()))
                .orElse(before.course());
    }

    @Override
    public State slotLeftOut(Event.SlotLeftOut event) {
        fits().slot(event.slot());
        return before.with(leftOut(before.captured(), event.slot(), event.reason()));
    }

    @Override
    public State leaveOutWithdrawn(Event.LeaveOutWithdrawn event) {
        return before.with(before.captured().without(event.slot()));
    }

    @Override
    public State exerciseLeftOut(Event.ExerciseLeftOut event) {
        Captured captured = before.captured();
        for (Slot slot : fits().slotsOf(event.place(), event.exercise())) {
            captured = leftOut(captured, slot, event.reason());
        }
        return idle().with(before.course().with(event.place(), event.exercise() + 1))
                .with(captured);
    }

    @Override
    public State exerciseReopened(Event.ExerciseReopened event) {
        Captured captured = before.captured();
        for (Slot slot : fits().slotsOf(event.place(), event.exercise())) {
            captured = captured.without(slot);
        }
        return idle().with(before.course().with(event.place(), event.exercise())).with(captured);
    }

    private static Captured leftOut(Captured captured, Slot slot, String reason) {
        return captured.with(new Captured.LeftOut(slot, reason, captured.entries().size()));
    }

    @Override
    public State noteWritten(Event.NoteWritten event) {
        return noted(event.text());
    }

    private State noted(String text) {
        int donning = before.course().open().map(Donning::number).orElse(0);
        return before.with(before.captured().with(new Captured.Note(text, donning, at)));
    }

    /** What an instrument did is kept as a note too, for whoever reads the session later. */
    @Override
    public State feedFailed(Event.FeedFailed event) {
        return noted(event.why()).with(before.feeds().failing(event.feed(), event.why()));
    }

    @Override
    public State feedBack(Event.FeedBack event) {
        return noted(event.words()).with(before.feeds().well(event.feed()));
    }

    /** Only an inhalation suffers; that it happened is kept as a note all the same. */
    @Override
    public State timeDoubted(Event.TimeDoubted event) {
        State noted = noted(event.why());
        boolean suffers =
                before.doing()
                        .running()
                        .filter(
                                running ->
                                        event.ended()
                                                ? running instanceof Activity.Tracing
                                                        || running instanceof Activity.HoldAsked
                                                : running instanceof Activity.Pulling)
                        .isPresent();
        return suffers ? noted.with(before.doing().doubted(event.why())) : noted;
    }

    @Override
    public State selfTested(Event.SelfTested event) {
        return before.with(event);
    }

    @Override
    public State cued(Event.Cued event) {
        return before;
    }

    @Override
    public State halted(Event.Halted event) {
        return before.with(before.doing().halted(event.why()));
    }

    @Override
    public State continued(Event.Continued event) {
        return before.with(before.doing().goingOn());
    }

    @Override
    public State lookTaken(Event.LookTaken event) {
        return before.with(
                before.captured().with(event.look(), Schedule.donningsOfCompleteRounds(before)));
    }

    @Override
    public State wentOn(Event.WentOn event) {
        return before.with(before.course().withWentOnAt(before.captured().looks().size()));
    }

    @Override
    public State repeatsEnded(Event.RepeatsEnded event) {
        return before.with(before.course().withEnded(event.reason()));
    }

    @Override
    public State sessionClosed(Event.SessionClosed event) {
        return before.with(before.course().withClosed());
    }

    private Fits fits() {
        return new Fits(before);
    }

    private static boolean asksAbout(Activity activity, int entry) {
        return activity instanceof Activity.VoidAsked asked && asked.entry() == entry;
    }

    private State running(Activity activity) {
        return before.with(before.doing().running(activity));
    }

    private State idle() {
        return before.with(before.doing().idle());
    }
}
