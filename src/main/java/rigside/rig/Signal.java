package rigside.rig;

/** A quantity that a rig follows over time. */
public enum Signal {
    /** The pressure in the mask against the room, Pa; negative while breathing in. */
    PRESSURE,
    /** The particle concentration of the room, 1/m3. */
    AMBIENT,
    /** The particle concentration in the mask, 1/m3. */
    MASK
}
