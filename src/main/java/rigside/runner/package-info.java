/**
 * A session without a terminal: inputs become events, events go to the journal before anything is
 * confirmed, a look is taken after each complete round, the rig is asked when a reading is due, and
 * cues come out. The time is passed in; a rehearsal is this with a fast clock.
 *
 * <p>Read {@link rigside.runner.Runner} first. May import {@code journal}, {@code rig}, {@code
 * analysis}, {@code session}, {@code protocol}, {@code measure}, {@code yaml}.
 */
package rigside.runner;
