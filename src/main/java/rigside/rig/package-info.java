/**
 * The instruments beside the tester: what answers when a reading is due, and what makes cues heard.
 * Typed rigs answer nothing, simulated ones from an invented wearer, attached ones from the lines
 * that instruments send.
 *
 * <p>Read {@link rigside.rig.Rig} first, then {@link rigside.rig.Feeds}. May import {@code measure}
 * and {@code yaml}.
 */
package rigside.rig;
