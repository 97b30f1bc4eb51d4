package rigside.analysis;

/** What an interval says against the band of changes too small to matter. */
public enum Verdict {
    MEANINGFUL_DIFFERENCE("meaningful-difference"),
    NO_MEANINGFUL_DIFFERENCE("no-meaningful-difference"),
    /** There is a difference; whether it matters is open. */
    DIFFERENCE_SIZE_UNSETTLED("difference-size-unsettled"),
    NOT_SETTLED("not-settled"),
    TOO_FEW_ROUNDS("too-few-rounds");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** As written in files. */
    public String word() {
        return word;
    }

    /** Whether it answers the question, so that no further repeat is needed for it. */
    public boolean settles() {
        return this == MEANINGFUL_DIFFERENCE || this == NO_MEANINGFUL_DIFFERENCE;
    }
}
