package rigside.rig;

/** Something the tester has to notice without looking. */
public enum Cue {
    /** A second of the lead-in begins. */
    LEAD_IN,
    /** Begin to pull. */
    GO,
    /** A pull ended and its time is taken. */
    STOP,
    /** A countdown, rest or exercise is over. */
    NEXT
}
