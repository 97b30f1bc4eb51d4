package rigside.analysis;

import rigside.session.State;

/** Whether further rounds may follow in a session, and why not. */
enum Onward {
    OPEN,
    /** The tester ended the repeats. */
    ENDED,
    /** Its journal is damaged, so nothing can be written into it any more. */
    DAMAGED;

    static Onward of(State state, boolean readOnly) {
        if (state.course().ended().isPresent()) {
            return ENDED;
        }
        return readOnly ? DAMAGED : OPEN;
    }
}
