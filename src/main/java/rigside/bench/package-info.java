/**
 * A session at the terminal: the key reader that stamps each press when it arrives, the drawing
 * loop, the cues to the ear, the self-test. The one place with a real clock, and nothing of the
 * trade.
 *
 * <p>Read {@link rigside.bench.Bench} first, then {@code Sitting}. May import {@code screen},
 * {@code runner}, {@code journal}, {@code rig}, {@code analysis}, {@code session}, {@code
 * protocol}, {@code measure}, and Lanterna.
 */
package rigside.bench;
