package rigside.rig;

/** How the lines of each origin are got at. */
final class Wires {
    private Wires() {}

    /** Opens the wire of an origin that is read as it comes. */
    static Wire.Opener to(Origin origin) {
        if (origin instanceof Origin.Serial serial) {
            return () -> SerialWire.open(serial);
        }
        if (origin instanceof Origin.Appended appended) {
            return FileWire.follow(appended.file());
        }
        if (origin instanceof Origin.Piped piped) {
            return () -> PipeWire.open(piped.pipe());
        }
        throw new IllegalArgumentException(origin.words() + " has no wire");
    }
}
