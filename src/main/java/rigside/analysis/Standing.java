package rigside.analysis;

/** What becomes of a donning's value. */
public enum Standing {
    /** The donning is complete and its value enters the comparisons. */
    COUNTS,
    /** The donning is still going on. */
    OPEN,
    /** The donning is complete, but has no value for this measure. */
    WITHOUT_VALUE,
    /** The donning was broken off. */
    ABANDONED,
    /** The donning was struck out as a whole. */
    STRUCK
}
