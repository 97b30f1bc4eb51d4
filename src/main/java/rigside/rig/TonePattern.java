package rigside.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * The rhythm of a cue: tones and the silence between them. Each cue has a rhythm of its own in
 * short and long tones, so that it can be told by somebody to whom all pitches sound alike; the
 * pitches only help.
 *
 * @param tones in order, none overlapping; at least one
 */
record TonePattern(List<Tone> tones) {
    private static final int SHORT = 80;
    private static final int LONG = 400;
    private static final int GAP = 80;

    private static final double LOW = 440;
    private static final double MIDDLE = 660;
    private static final double HIGH = 880;

    TonePattern {
        tones = List.copyOf(tones);
    }

    /**
     * One tone.
     *
     * @param from when it begins, in milliseconds from the cue
     * @param length in milliseconds
     * @param hertz its pitch
     */
    record Tone(int from, int length, double hertz) {
        int to() {
            return from + length;
        }
    }

    /** The rhythm of a cue. */
    static TonePattern of(Cue cue) {
        return switch (cue) {
            case LEAD_IN -> new Rhythm().tone(SHORT, MIDDLE).pattern();
            case GO -> new Rhythm().tone(LONG, HIGH).pattern();
            case START -> new Rhythm().tone(SHORT, HIGH).gap(GAP).tone(SHORT, HIGH).pattern();
            case HALF_WAY -> new Rhythm().tone(LONG, MIDDLE).gap(GAP).tone(LONG, MIDDLE).pattern();
            case LAST_SECONDS ->
                    new Rhythm()
                            .tone(SHORT, MIDDLE)
                            .gap(1000 - SHORT)
                            .tone(SHORT, MIDDLE)
                            .gap(1000 - SHORT)
                            .tone(SHORT, MIDDLE)
                            .pattern();
            case STOP -> new Rhythm().tone(LONG, MIDDLE).gap(GAP).tone(SHORT, LOW).pattern();
            case NEXT -> new Rhythm().tone(SHORT, MIDDLE).gap(GAP).tone(LONG, HIGH).pattern();
            case PROBLEM -> {
                Rhythm rhythm = new Rhythm();
                for (int i = 0; i < 5; i++) {
                    rhythm.tone(SHORT, i % 2 == 0 ? HIGH : LOW).gap(GAP);
                }
                yield rhythm.pattern();
            }
        };
    }

    /** From the beginning of the first tone to the end of the last, in milliseconds. */
    int length() {
        return tones.get(tones.size() - 1).to();
    }

    /** A rhythm being written, one tone or gap after the other. */
    private static final class Rhythm {
        private final List<Tone> tones = new ArrayList<>();
        private int at;

        Rhythm tone(int length, double hertz) {
            tones.add(new Tone(at, length, hertz));
            at += length;
            return this;
        }

        Rhythm gap(int length) {
            at += length;
            return this;
        }

        TonePattern pattern() {
            return new TonePattern(tones);
        }
    }
}
