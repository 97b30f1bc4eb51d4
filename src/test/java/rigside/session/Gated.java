package rigside.session;

/** The small comparison with two gates: filtered air and the room, before the first donning. */
public final class Gated {
    private Gated() {}

    public static String text() {
        return Story.text("/session/small.yaml")
                .replace(
                        "before:\n",
                        """
                        before:
                          - step: gates
                            title: Air and counter
                            gates:
                              - gate: zero
                                at-most: 0.01 /cm3
                              - gate: ambient
                                at-least: 1000 /cm3
                                do: Light the candle by the window and wait ten minutes
                        """);
    }

    public static Event.SessionOpened opening() {
        return new Event.SessionOpened("test", "gated.yaml", text(), 7, "typed", "", false, 1);
    }

    /** Cautions read, facts entered: the first gate waits to be read. */
    public static Story atGates() {
        return Story.opened(opening()).goOn().type("W1").type("21");
    }

    /** Filtered air is read and its value wanted. */
    public static Story zeroRead() {
        return atGates().goOn().pass(60);
    }

    /** The room is read and its value wanted. */
    public static Story roomRead() {
        return zeroRead().type("0").goOn().pass(10);
    }
}
