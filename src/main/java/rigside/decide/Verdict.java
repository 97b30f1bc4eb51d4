package rigside.decide;

/** What an interval says against the band. */
public enum Verdict {
    /** No interval yet: fewer values than the plan's first look needs. */
    TOO_FEW_ROUNDS("too-few-rounds", false),
    /** The interval is wholly beyond the band. */
    MEANINGFUL_DIFFERENCE("meaningful-difference", true),
    /** The interval is wholly inside the band. */
    NO_MEANINGFUL_DIFFERENCE("no-meaningful-difference", true),
    /** There is a difference; whether it matters is not settled. */
    DIFFERENCE_SIZE_UNSETTLED("difference-size-unsettled", false),
    /** Neither. */
    NOT_SETTLED("not-settled", false);

    private final String word;
    private final boolean settled;

    Verdict(String word, boolean settled) {
        this.word = word;
        this.settled = settled;
    }

    /** Whether the question is answered, so that testing may stop. */
    public boolean settled() {
        return settled;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }
}
