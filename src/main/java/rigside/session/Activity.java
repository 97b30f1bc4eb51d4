package rigside.session;

import java.util.Optional;
import java.util.OptionalLong;

/** What is going on now, and so what the tester sees and which inputs mean something. */
public sealed interface Activity {
    <R> R match(Cases<R> cases);

    /** One case for each kind of activity. */
    interface Cases<R> {
        R cautions(Cautions activity);

        R nextDonning(NextDonning activity);

        R checking(Checking activity);

        R filling(Filling activity);

        R waiting(Waiting activity);

        R exercising(Exercising activity);

        R trialReady(TrialReady activity);

        R leadIn(LeadIn activity);

        R pulling(Pulling activity);

        R tracing(Tracing activity);

        R holdAsked(HoldAsked activity);

        R voidAsked(VoidAsked activity);

        R doubting(Doubting activity);

        R resting(Resting activity);

        R reading(Reading activity);

        R gating(Gating activity);

        R gateMissed(GateMissed activity);

        R donningDone(DonningDone activity);

        R recommended(Recommended activity);

        R halted(Halted activity);

        R closing(Closing activity);

        R closed(Closed activity);
    }

    /** The cautions wait to be acknowledged. */
    record Cautions() implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cautions(this);
        }
    }

    /** Between donnings: the next condition is to be put on. */
    record NextDonning(int round, int turn, String condition) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.nextDonning(this);
        }
    }

    /** An item of a checklist waits to be confirmed. */
    record Checking(Place place, int item) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.checking(this);
        }
    }

    /** A gap waits for typed text or a reading: a field, a concentration, a pressure. */
    record Filling(Slot slot) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.filling(this);
        }
    }

    /**
     * A countdown.
     *
     * @param startedAt when it began, in nanoseconds of session time; empty while it waits to be
     *     started
     */
    record Waiting(Place place, OptionalLong startedAt) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.waiting(this);
        }
    }

    /**
     * An exercise.
     *
     * @param startedAt when it began, in nanoseconds of session time; empty while it waits to be
     *     started
     */
    record Exercising(Place place, int exercise, OptionalLong startedAt) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.exercising(this);
        }
    }

    /** A trial waits for its lead-in to be started. */
    record TrialReady(Place place, int trial) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trialReady(this);
        }
    }

    /** The lead-in counts down, or has ended and the trigger is awaited. */
    record LeadIn(Place place, int trial, long startedAt) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leadIn(this);
        }
    }

    /** The inhalation is being timed. */
    record Pulling(Place place, int trial, long startedAt) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pulling(this);
        }
    }

    /**
     * The inhalation ended, and its pressure trace is waited for: instruments are late.
     *
     * @param seconds how long it took, between the trigger's presses
     * @param pressedAt when the first press came, in nanoseconds of session time
     * @param since when the second came
     */
    record Tracing(Place place, int trial, double seconds, long pressedAt, long since)
            implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.tracing(this);
        }
    }

    /**
     * Was the pull held? Asked before the time is shown.
     *
     * @param seconds how long it took, between the trigger's presses
     * @param why why no pressure trace answers it, in words; empty without an instrument
     */
    record HoldAsked(Place place, int trial, double seconds, Optional<String> why)
            implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.holdAsked(this);
        }
    }

    /** An implausible entry is offered for voiding. */
    record VoidAsked(int entry, String why) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.voidAsked(this);
        }
    }

    /** A typed value outside its plausible range is asked about once more. */
    record Doubting(Slot slot, Value value, String why) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.doubting(this);
        }
    }

    /**
     * The rest between two trials.
     *
     * @param trial the trial that comes next
     * @param since when the last pull ended, in nanoseconds of session time
     */
    record Resting(Place place, int trial, long since) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.resting(this);
        }
    }

    /** Words to read. */
    record Reading(Place place) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reading(this);
        }
    }

    /**
     * What a gate needs is being read.
     *
     * @param startedAt when reading began, in nanoseconds of session time; empty while it waits to
     *     be started
     */
    record Gating(Place place, int gate, OptionalLong startedAt) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gating(this);
        }
    }

    /**
     * A gate read what it must not: to be read again, or passed over with a reason.
     *
     * @param entry the number of the entry read
     */
    record GateMissed(Place place, int gate, int entry) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateMissed(this);
        }
    }

    /**
     * Every step of the donning is done; it waits to be completed, while its last entry can still
     * be undone.
     */
    record DonningDone(int donning) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.donningDone(this);
        }
    }

    /**
     * Enough is known, or the plan is used up.
     *
     * @param mayGoOn whether the plan allows further rounds
     */
    record Recommended(boolean mayGoOn) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.recommended(this);
        }
    }

    /** Everything stands still, with the reason. */
    record Halted(String why) implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.halted(this);
        }
    }

    /** Everything is done; the session waits to be closed. */
    record Closing() implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.closing(this);
        }
    }

    record Closed() implements Activity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.closed(this);
        }
    }
}
