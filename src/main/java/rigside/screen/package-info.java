/**
 * Pictures of a session: what the tester sees, from the state, what may be shown, the time and the
 * size. Keys are tables here, so that the bottom line and what a key does cannot differ; nothing
 * here reads a key, a file or a clock.
 *
 * <p>Read {@link rigside.screen.View} first (what a picture depends on), then {@link
 * rigside.screen.Keys} and {@link rigside.screen.SessionScreen}; {@link rigside.screen.HomeView} is
 * the same away from a session. A picture is a list of lines until it is painted. May import {@code
 * analysis}, {@code session}, {@code protocol}, {@code measure}, {@code decide}, and Lanterna.
 */
package rigside.screen;
