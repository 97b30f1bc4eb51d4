/**
 * The instruments beside the tester: what answers when a reading is due. Typed rigs answer nothing,
 * simulated ones from an invented wearer.
 *
 * <p>Read {@link rigside.rig.Rig} first. May import {@code measure} and {@code yaml}.
 */
package rigside.rig;
