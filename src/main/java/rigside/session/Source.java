package rigside.session;

/** Where a value came from. */
public enum Source {
    TYPED,
    /** Timed by the trigger key. */
    TIMED,
    /** Read from an instrument. */
    INSTRUMENT,
    /** Made by the simulated rig. */
    SIMULATED
}
