package rigside.rig;

/**
 * How loud cues are.
 *
 * @param level from 1 to {@link #LOUDEST}
 * @param muted whether nothing is heard whatever the level
 */
public record SoundVolume(int level, boolean muted) {
    public static final int LOUDEST = 10;

    /** Each level is so many decibels below the next; 3 is well told apart (common practice). */
    private static final double DECIBELS = 3;

    /** A middle level, heard. */
    public static final SoundVolume USUAL = new SoundVolume(8, false);

    /**
     * @throws IllegalArgumentException if the level is outside its range
     */
    public SoundVolume {
        if (level < 1 || level > LOUDEST) {
            throw new IllegalArgumentException("volume " + level + ", must be 1 to " + LOUDEST);
        }
    }

    /** Louder by a level, if there is one, and heard. */
    public SoundVolume louder() {
        return new SoundVolume(Math.min(LOUDEST, level + 1), false);
    }

    /** Softer by a level, if there is one, and heard. */
    public SoundVolume softer() {
        return new SoundVolume(Math.max(1, level - 1), false);
    }

    /** Muted if it is heard, heard if it is muted. */
    public SoundVolume toggled() {
        return new SoundVolume(level, !muted);
    }

    /** From 0, muted, to 1. */
    public double gain() {
        return muted ? 0 : Math.pow(10, DECIBELS * (level - LOUDEST) / 20);
    }
}
