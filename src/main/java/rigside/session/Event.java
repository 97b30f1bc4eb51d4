package rigside.session;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Everything that can have happened in a session: the journal is a list of these. */
public sealed interface Event {
    <R> R match(Cases<R> cases);

    /** One case for each kind of event. */
    interface Cases<R> {
        R sessionOpened(SessionOpened event);

        R sessionLeft(SessionLeft event);

        R sessionReopened(SessionReopened event);

        R cautionsAcknowledged(CautionsAcknowledged event);

        R donningStarted(DonningStarted event);

        R donningCompleted(DonningCompleted event);

        R donningAbandoned(DonningAbandoned event);

        R donningStruck(DonningStruck event);

        R itemConfirmed(ItemConfirmed event);

        R itemFailed(ItemFailed event);

        R countdownStarted(CountdownStarted event);

        R countdownFinished(CountdownFinished event);

        R exerciseStarted(ExerciseStarted event);

        R exerciseFinished(ExerciseFinished event);

        R exerciseInterrupted(ExerciseInterrupted event);

        R leadInStarted(LeadInStarted event);

        R trialStarted(TrialStarted event);

        R trialStopped(TrialStopped event);

        R trialInterrupted(TrialInterrupted event);

        R traceMissing(TraceMissing event);

        R voidOffered(VoidOffered event);

        R voidDeclined(VoidDeclined event);

        R restFinished(RestFinished event);

        R noteRead(NoteRead event);

        R gateStarted(GateStarted event);

        R gateFinished(GateFinished event);

        R gateInterrupted(GateInterrupted event);

        R gateReopened(GateReopened event);

        R entryDoubted(EntryDoubted event);

        R doubtDropped(DoubtDropped event);

        R entryCaptured(EntryCaptured event);

        R entryTraced(EntryTraced event);

        R entryVoided(EntryVoided event);

        R entryAmended(EntryAmended event);

        R amendmentWithdrawn(AmendmentWithdrawn event);

        R slotLeftOut(SlotLeftOut event);

        R leaveOutWithdrawn(LeaveOutWithdrawn event);

        R itemLeftOut(ItemLeftOut event);

        R itemReopened(ItemReopened event);

        R exerciseLeftOut(ExerciseLeftOut event);

        R exerciseReopened(ExerciseReopened event);

        R noteWritten(NoteWritten event);

        R timeDoubted(TimeDoubted event);

        R feedFailed(FeedFailed event);

        R feedBack(FeedBack event);

        R cued(Cued event);

        R selfTested(SelfTested event);

        R halted(Halted event);

        R continued(Continued event);

        R lookTaken(LookTaken event);

        R wentOn(WentOn event);

        R repeatsEnded(RepeatsEnded event);

        R sessionClosed(SessionClosed event);
    }

    /**
     * Always the first event.
     *
     * @param programVersion the version that wrote it
     * @param protocolName the file's name as the tester knows it
     * @param protocolText the exact text of the protocol
     * @param seed drives the order of conditions and the simulated rig
     * @param rig what answers for the instruments, in words
     * @param rigText the exact text of the rig file, so that a resumed session goes on with the
     *     same rig; empty without one
     * @param simulated whether the rig is simulated: every value is then invented
     * @param speed how many seconds of session time pass in one second; 1 unless simulated
     * @param rigFolder the folder that paths in the rig file start from; empty without one
     * @param paper the form it is entered from, when nothing in it is timed by the program
     */
    record SessionOpened(
            String programVersion,
            String protocolName,
            String protocolText,
            long seed,
            String rig,
            String rigText,
            boolean simulated,
            double speed,
            String rigFolder,
            Optional<Paper> paper)
            implements Event {
        /** At the bench. */
        public SessionOpened(
                String programVersion,
                String protocolName,
                String protocolText,
                long seed,
                String rig,
                String rigText,
                boolean simulated,
                double speed,
                String rigFolder) {
            this(
                    programVersion,
                    protocolName,
                    protocolText,
                    seed,
                    rig,
                    rigText,
                    simulated,
                    speed,
                    rigFolder,
                    Optional.empty());
        }

        /** At the bench, without a rig file whose paths have to start somewhere. */
        public SessionOpened(
                String programVersion,
                String protocolName,
                String protocolText,
                long seed,
                String rig,
                String rigText,
                boolean simulated,
                double speed) {
            this(
                    programVersion,
                    protocolName,
                    protocolText,
                    seed,
                    rig,
                    rigText,
                    simulated,
                    speed,
                    "");
        }

        /** The protocol's name without folders: those may tell who the tester is. */
        public String protocolFile() {
            return protocolName.substring(protocolName.replace('\\', '/').lastIndexOf('/') + 1);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sessionOpened(this);
        }
    }

    /**
     * A form that was filled in by hand.
     *
     * @param on the day it was filled in, as far as it is known
     */
    record Paper(Optional<LocalDate> on) {
        private static final DateTimeFormatter DAY =
                DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

        /** In words: {@code entered from a paper form of 20 Nov 2026}. */
        public String words() {
            return "entered from a paper form" + on.map(day -> " of " + DAY.format(day)).orElse("");
        }
    }

    /** The program was left in an orderly way. */
    record SessionLeft() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sessionLeft(this);
        }
    }

    /**
     * The session was taken up again, after it was left or the program was killed.
     *
     * @param programVersion the version that took it up
     */
    record SessionReopened(String programVersion) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sessionReopened(this);
        }
    }

    record CautionsAcknowledged() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cautionsAcknowledged(this);
        }
    }

    record DonningStarted(int donning, int round, int turn, String condition) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.donningStarted(this);
        }
    }

    record DonningCompleted(int donning) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.donningCompleted(this);
        }
    }

    record DonningAbandoned(int donning, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.donningAbandoned(this);
        }
    }

    /**
     * A complete donning was struck out as a whole; it is done again in the same turn of the same
     * round.
     */
    record DonningStruck(int donning, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.donningStruck(this);
        }
    }

    record ItemConfirmed(Place place, int item) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.itemConfirmed(this);
        }
    }

    record ItemFailed(Place place, int item) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.itemFailed(this);
        }
    }

    record CountdownStarted(Place place) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.countdownStarted(this);
        }
    }

    record CountdownFinished(Place place) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.countdownFinished(this);
        }
    }

    record ExerciseStarted(Place place, int exercise) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exerciseStarted(this);
        }
    }

    record ExerciseFinished(Place place, int exercise) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exerciseFinished(this);
        }
    }

    /** It did not run to its end and is offered afresh from its beginning. */
    record ExerciseInterrupted(Place place, int exercise) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exerciseInterrupted(this);
        }
    }

    record LeadInStarted(Place place, int trial) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leadInStarted(this);
        }
    }

    record TrialStarted(Place place, int trial) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trialStarted(this);
        }
    }

    /**
     * The inhalation ended.
     *
     * @param seconds how long it took, between the trigger's presses
     * @param traced whether an instrument follows the pressure, so that the trace is waited for
     */
    record TrialStopped(Place place, int trial, double seconds, boolean traced) implements Event {
        /** Without a trace. */
        public TrialStopped(Place place, int trial, double seconds) {
            this(place, trial, seconds, false);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trialStopped(this);
        }
    }

    /** It was broken off before its time was taken and is offered afresh. */
    record TrialInterrupted(Place place, int trial) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trialInterrupted(this);
        }
    }

    /**
     * The trace that was waited for does not show the inhalation: the tester is asked, as without
     * one.
     *
     * @param why in words
     */
    record TraceMissing(Place place, int trial, String why) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.traceMissing(this);
        }
    }

    /**
     * An entry looks implausible and the tester is asked whether to strike it out.
     *
     * @param why what is implausible, in words
     */
    record VoidOffered(int entry, String why) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.voidOffered(this);
        }
    }

    /** The entry offered for voiding is kept. */
    record VoidDeclined(int entry) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.voidDeclined(this);
        }
    }

    record RestFinished(Place place) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.restFinished(this);
        }
    }

    record NoteRead(Place place) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noteRead(this);
        }
    }

    /** What a gate needs begins to be read. */
    record GateStarted(Place place, int gate) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateStarted(this);
        }
    }

    /** It was read as long as it has to be; the value is an entry of its own. */
    record GateFinished(Place place, int gate) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateFinished(this);
        }
    }

    /** It was not read to the end and is offered afresh. */
    record GateInterrupted(Place place, int gate) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateInterrupted(this);
        }
    }

    /** It was read to the end, no value came of it, and it is read again. */
    record GateReopened(Place place, int gate) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateReopened(this);
        }
    }

    /**
     * A value outside its plausible range was typed and is asked about once more.
     *
     * @param why what is implausible, in words
     */
    record EntryDoubted(Slot slot, Value value, String why) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entryDoubted(this);
        }
    }

    /** The doubted value was a mistake and is typed again. */
    record DoubtDropped(Slot slot) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.doubtDropped(this);
        }
    }

    /**
     * A value is taken.
     *
     * @param seconds how long an instrument really sampled it; 0 for as long as its window, or
     *     where that is not known
     */
    record EntryCaptured(int entry, Slot slot, Value value, Source source, double seconds)
            implements Event {
        /** A value sampled as long as its window, or not sampled at all. */
        public EntryCaptured(int entry, Slot slot, Value value, Source source) {
            this(entry, slot, value, source, 0);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entryCaptured(this);
        }
    }

    /** What the pressure trace behind an entry says; nothing else is needed to judge it again. */
    record EntryTraced(int entry, Trace trace) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entryTraced(this);
        }
    }

    record EntryVoided(int entry, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entryVoided(this);
        }
    }

    /**
     * An entry was found wrong and holds another value from now on, typed by hand; its number, its
     * gap and its time stay, and so does the value before it, on record.
     *
     * @param value of the same kind as the one before
     * @param reason why, in the tester's words
     */
    record EntryAmended(int entry, Value value, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.entryAmended(this);
        }
    }

    /** The last amendment of an entry was a mistake itself: the value before it holds again. */
    record AmendmentWithdrawn(int entry) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.amendmentWithdrawn(this);
        }
    }

    /** A gap stays empty, with the reason. */
    record SlotLeftOut(Slot slot, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.slotLeftOut(this);
        }
    }

    /** A gap that was left out is asked for again. */
    record LeaveOutWithdrawn(Slot slot) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leaveOutWithdrawn(this);
        }
    }

    /** Outside donnings, an item that cannot be made so is passed over, with the reason. */
    record ItemLeftOut(Place place, int item, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.itemLeftOut(this);
        }
    }

    /** The answer to a check that lets its list go on is taken back, and it is asked again. */
    record ItemReopened(Place place, int item) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.itemReopened(this);
        }
    }

    /** An exercise that cannot be done is passed over, with all its readings and the reason. */
    record ExerciseLeftOut(Place place, int exercise, String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exerciseLeftOut(this);
        }
    }

    /** The exercise done last is done again; its readings are struck out by events of their own. */
    record ExerciseReopened(Place place, int exercise) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exerciseReopened(this);
        }
    }

    record NoteWritten(String text) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noteWritten(this);
        }
    }

    /**
     * The clock cannot be trusted across this moment: an inhalation timed over it is offered for
     * voiding.
     *
     * @param why what was noticed, in words
     * @param ended whether the inhalation that has just ended is meant, whose time is not captured
     *     yet; else one that is being timed
     */
    record TimeDoubted(String why, boolean ended) implements Event {
        /** A moment within what is being timed. */
        public TimeDoubted(String why) {
            this(why, false);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.timeDoubted(this);
        }
    }

    /**
     * An instrument fails; its values are typed while it does.
     *
     * @param feed its id in the rig file
     * @param why what is wrong, in words that begin with the id
     */
    record FeedFailed(String feed, String why) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.feedFailed(this);
        }
    }

    /**
     * An instrument that failed reads well again.
     *
     * @param feed its id in the rig file
     * @param words that say so
     */
    record FeedBack(String feed, String words) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.feedBack(this);
        }
    }

    /**
     * The tester was given a cue for the ear.
     *
     * @param cue which one, in a word
     * @param how it was given, in a word: sounded, muted, ...
     */
    record Cued(String cue, String how) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cued(this);
        }
    }

    /**
     * What the last self-test before the session found, recorded as it was opened.
     *
     * @param when it was made: a date and time with its zone, as text
     * @param terminal what kind the terminal was, as it calls itself
     * @param answers how often the terminal was asked and answered; the three times are 0 without
     *     any
     * @param median of the time an answer took, in seconds
     * @param p99 the 99 % quantile of it, in seconds
     * @param most the longest of it, in seconds
     * @param signal what the tester reacted to, in a word: tones, bell, or the picture alone
     * @param reactions the tester's times from the signal to the trigger, in seconds, in whole
     *     microseconds; they hold the sound system's delay, so only their spread means anything
     * @param heard the cues that were heard, by their words, and {@code unheard} those that were
     *     not
     */
    record SelfTested(
            String when,
            String terminal,
            int answers,
            double median,
            double p99,
            double most,
            String signal,
            List<Double> reactions,
            List<String> heard,
            List<String> unheard)
            implements Event {
        public SelfTested {
            reactions = List.copyOf(reactions);
            heard = List.copyOf(heard);
            unheard = List.copyOf(unheard);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.selfTested(this);
        }
    }

    /**
     * Everything stands still.
     *
     * @param why what stopped it, in words
     */
    record Halted(String why) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.halted(this);
        }
    }

    /** The tester goes on after a halt; in a donning this says that the mask stayed on. */
    record Continued() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.continued(this);
        }
    }

    record LookTaken(Look look) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lookTaken(this);
        }
    }

    /** The tester goes on although every deciding measure has settled. */
    record WentOn() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.wentOn(this);
        }
    }

    /** No further donning: the session goes on with what comes after. */
    record RepeatsEnded(String reason) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.repeatsEnded(this);
        }
    }

    record SessionClosed() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sessionClosed(this);
        }
    }
}
