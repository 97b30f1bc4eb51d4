package rigside.archive;

/** Told how far the reading of journals has come; by one thread at a time. */
public interface Progress {
    /** Nobody wants to know. */
    Progress NONE = (read, all) -> {};

    /**
     * A journal more is read.
     *
     * @param read how many are, from 1
     * @param all how many have to be
     */
    void reading(int read, int all);
}
