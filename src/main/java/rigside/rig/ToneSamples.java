package rigside.rig;

/** Cues as sound samples: signed, 16 bit, one channel. */
final class ToneSamples {
    /** Samples a second. */
    static final int RATE = 44_100;

    /** A tone rises and falls in so many milliseconds, or its edges would click. */
    static final double EDGE = 5;

    /** The largest sample at full volume: some way below clipping, for what comes after us. */
    static final int PEAK = 29_000;

    private ToneSamples() {}

    /**
     * A cue's samples, from its first tone to the end of its last.
     *
     * @param gain from 0, silence, to 1, as loud as is sensible
     * @throws IllegalArgumentException if the gain is outside its range or NaN
     */
    static short[] of(Cue cue, double gain) {
        if (!(gain >= 0 && gain <= 1)) {
            throw new IllegalArgumentException("gain " + gain + ", must be from 0 to 1");
        }
        TonePattern pattern = TonePattern.of(cue);
        short[] samples = new short[count(pattern.length())];
        for (TonePattern.Tone tone : pattern.tones()) {
            int from = count(tone.from());
            int length = count(tone.length());
            for (int i = 0; i < length; i++) {
                double wave = Math.sin(2 * Math.PI * tone.hertz() * i / RATE);
                samples[from + i] = (short) Math.round(PEAK * gain * edge(i, length) * wave);
            }
        }
        return samples;
    }

    /** Half a cosine up at the beginning of a tone and down at its end. */
    private static double edge(int i, int length) {
        double into = Math.min(i, length - 1 - i) / (EDGE / 1000 * RATE);
        return into >= 1 ? 1 : (1 - Math.cos(Math.PI * into)) / 2;
    }

    /** Samples in so many milliseconds. */
    static int count(int milliseconds) {
        return (int) ((long) milliseconds * RATE / 1000);
    }
}
