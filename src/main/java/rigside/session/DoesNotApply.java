package rigside.session;

/** An event that cannot follow the ones before it: the journal it came from is damaged. */
public final class DoesNotApply extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Says in plain words what does not fit. */
    public DoesNotApply(String what) {
        super(what);
    }
}
