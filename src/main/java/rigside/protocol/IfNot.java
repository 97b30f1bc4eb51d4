package rigside.protocol;

/** Where a failed item leads. */
public enum IfNot {
    /** The whole checklist from its first item. */
    REPEAT,
    /** The donning is abandoned, with a reason, and done again. */
    ABANDON,
    /** The session ends. */
    STOP,
    /** The next item: the no is an outcome like any other, and other steps may need it. */
    GO_ON;

    /** Whether the donning going on is over then. */
    public boolean endsDonning() {
        return this == ABANDON || this == STOP;
    }
}
