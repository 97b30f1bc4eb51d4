package rigside.session;

import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;

/** Everything that can come in: keys, typed text, time, readings, and looks. */
public sealed interface Input {
    <R> R match(Cases<R> cases);

    /** One case for each kind of input. */
    interface Cases<R> {
        R goOnPressed(GoOnPressed input);

        R triggerPressed(TriggerPressed input);

        R answered(Answered input);

        R checkFailed(CheckFailed input);

        R typed(Typed input);

        R ticked(Ticked input);

        R readingArrived(ReadingArrived input);

        R pullEnded(PullEnded input);

        R pullTraced(PullTraced input);

        R pullNotTraced(PullNotTraced input);

        R breathsFound(BreathsFound input);

        R undoAsked(UndoAsked input);

        R voidAsked(VoidAsked input);

        R amendAsked(AmendAsked input);

        R strikeAsked(StrikeAsked input);

        R leaveOutAsked(LeaveOutAsked input);

        R retakeAsked(RetakeAsked input);

        R noteTyped(NoteTyped input);

        R timeDoubted(TimeDoubted input);

        R feedNoticed(FeedNoticed input);

        R haltPressed(HaltPressed input);

        R abandonAsked(AbandonAsked input);

        R moreAsked(MoreAsked input);

        R endAsked(EndAsked input);

        R leaveAsked(LeaveAsked input);

        R reopened(Reopened input);

        R lookArrived(LookArrived input);
    }

    /** The go-on key (Enter). */
    record GoOnPressed() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.goOnPressed(this);
        }
    }

    /**
     * The trigger key (Space, or what a foot switch sends).
     *
     * @param traced whether an instrument follows the pressure now
     */
    record TriggerPressed(boolean traced) implements Input {
        /** While nothing follows the pressure. */
        public TriggerPressed() {
            this(false);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.triggerPressed(this);
        }
    }

    /** Yes or no. */
    record Answered(boolean yes) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.answered(this);
        }
    }

    /** The item that waits is not so, and where that leads is meant: said with what was seen. */
    record CheckFailed(String what) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.checkFailed(this);
        }
    }

    /** A line of text, finished with Enter. */
    record Typed(String text) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.typed(this);
        }
    }

    /** Time went by. */
    record Ticked() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ticked(this);
        }
    }

    /**
     * The rig answers for the gap that waits.
     *
     * @param seconds how long it was really sampled; 0 for as long as its window, or where that is
     *     not known
     */
    record ReadingArrived(Slot slot, Quantity quantity, Source source, double seconds)
            implements Input {
        /** A reading sampled as long as its window. */
        public ReadingArrived(Slot slot, Quantity quantity, Source source) {
            this(slot, quantity, source, 0);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.readingArrived(this);
        }
    }

    /**
     * The rig saw the inhalation end.
     *
     * @param seconds how long it took
     * @param traced whether an instrument follows the pressure now
     */
    record PullEnded(double seconds, boolean traced) implements Input {
        /** While nothing follows the pressure. */
        public PullEnded(double seconds) {
            this(seconds, false);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullEnded(this);
        }
    }

    /**
     * The pressure trace that is waited for shows the inhalation.
     *
     * @param inhalation its seconds counted from the trigger's first press
     */
    record PullTraced(TracedInhalation inhalation) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullTraced(this);
        }
    }

    /**
     * The pressure trace that is waited for does not show the inhalation.
     *
     * @param why in words
     */
    record PullNotTraced(String why) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullNotTraced(this);
        }
    }

    /** The pressure trace of an exercise shows breaths, and the gap for their peak waits. */
    record BreathsFound(Slot.Pressure slot, Trace.Breaths breaths) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.breathsFound(this);
        }
    }

    /** The last entry of this part was wrong. */
    record UndoAsked() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.undoAsked(this);
        }
    }

    record VoidAsked(int entry, String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.voidAsked(this);
        }
    }

    /**
     * An entry was found wrong and is to hold another value.
     *
     * @param text what was typed for it, as it would have been typed at first
     * @param reason why
     * @param sure whether it is meant even where it is not plausible
     */
    record AmendAsked(int entry, String text, String reason, boolean sure) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.amendAsked(this);
        }
    }

    /** A complete donning is to be struck out and done again. */
    record StrikeAsked(int donning, String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.strikeAsked(this);
        }
    }

    /** The gap that waits cannot be filled. */
    record LeaveOutAsked(String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leaveOutAsked(this);
        }
    }

    /** The exercise done last was spoilt and is to be done again. */
    record RetakeAsked(String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.retakeAsked(this);
        }
    }

    record NoteTyped(String text) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noteTyped(this);
        }
    }

    /**
     * The clock cannot be trusted across this moment.
     *
     * @param why what was noticed, in words
     * @param ended whether the inhalation that has just ended is meant
     */
    record TimeDoubted(String why, boolean ended) implements Input {
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
     * An instrument fails, or is back.
     *
     * @param feed its id in the rig file
     * @param failing whether it fails
     * @param words what there is to say, beginning with the id
     */
    record FeedNoticed(String feed, boolean failing, String words) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.feedNoticed(this);
        }
    }

    /** The stop key. */
    record HaltPressed() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.haltPressed(this);
        }
    }

    record AbandonAsked(String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.abandonAsked(this);
        }
    }

    /** Further rounds although every deciding measure has settled. */
    record MoreAsked() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.moreAsked(this);
        }
    }

    /** No further donnings. */
    record EndAsked(String reason) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.endAsked(this);
        }
    }

    /** The program is about to be left. */
    record LeaveAsked() implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leaveAsked(this);
        }
    }

    /** The program took an open session up again. */
    record Reopened(String programVersion) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reopened(this);
        }
    }

    record LookArrived(Look look) implements Input {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lookArrived(this);
        }
    }
}
