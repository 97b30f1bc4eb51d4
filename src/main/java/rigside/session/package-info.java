/**
 * A session as a fold: inputs lead to events, events to a state, and nothing else changes anything.
 * No clock, no file and no statistics here; the time comes in as nanoseconds since the session was
 * opened.
 *
 * <p>Read {@link rigside.session.Event} first, then {@link rigside.session.Respond} (input to
 * events) and {@link rigside.session.Evolve} (events to state). May import {@code protocol} and
 * {@code measure}.
 */
package rigside.session;
