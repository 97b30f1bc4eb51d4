package rigside.rig;

/** Something the tester has to notice without looking. */
public enum Cue {
    /** A second of the lead-in begins. */
    LEAD_IN("lead-in"),
    /** Begin to pull. */
    GO("go"),
    /** The clock of a pull, an exercise or a countdown was started by a press and runs. */
    START("start"),
    /** Half of an exercise or a countdown is over. */
    HALF_WAY("half-way"),
    /** The last three seconds of an exercise, a countdown or a rest begin. */
    LAST_SECONDS("last-seconds"),
    /** A pull ended and its time is taken, or everything was stopped. */
    STOP("stop"),
    /** A countdown, rest or exercise is over: what comes next. */
    NEXT("next"),
    /** Something is not as it should be: look at the screen. */
    PROBLEM("problem");

    private final String word;

    Cue(String word) {
        this.word = word;
    }

    /** The cue as the journal names it. */
    public String word() {
        return word;
    }
}
