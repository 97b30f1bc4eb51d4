package rigside.protocol;

import java.util.Optional;

/** Whom or what an answer is about: what may be told to others goes by it. */
public enum Subject {
    WEARER_CODE("the code that stands for the wearer, never a name"),
    WEARER("the wearer: body, health, habits, practice"),
    MASK("the mask: kind, size, parts, condition"),
    ROOM("the room: its air, and what stands in it"),
    INSTRUMENT("an instrument, and its last calibration");

    private final String meaning;

    Subject(String meaning) {
        this.meaning = meaning;
    }

    /** What the word stands for. */
    public String meaning() {
        return meaning;
    }

    /**
     * What an answer is about where its file does not say, by the ids files commonly use; nothing
     * where the id tells nothing.
     */
    static Optional<Subject> of(String id) {
        if (id.equals("wearer")) {
            return Optional.of(WEARER_CODE);
        }
        if (id.startsWith("mask")) {
            return Optional.of(MASK);
        }
        if (id.startsWith("room-")) {
            return Optional.of(ROOM);
        }
        boolean isInstrument = id.equals("counter") || id.equals("gauge");
        return isInstrument ? Optional.of(INSTRUMENT) : Optional.empty();
    }
}
