package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing here was listened to: cues are judged by their samples. */
class ToneSamplesTest {
    /** Longer than half a period of the lowest tone, shorter than any gap. */
    private static final double SILENT_MS = 5;

    /** A tone's edge is soft: its first and last few milliseconds are all but silent. */
    private static final double EDGE_MS = 3;

    /** A stretch that is heard, in milliseconds. */
    private record Heard(double from, double to) {
        double length() {
            return to - from;
        }
    }

    /** What is heard, from the samples alone: apart where they are silent for a while. */
    private static List<Heard> heard(short[] samples) {
        List<Heard> heard = new ArrayList<>();
        int from = -1;
        int last = -1;
        for (int i = 0; i < samples.length; i++) {
            if (Math.abs(samples[i]) > ToneSamples.PEAK / 50) {
                if (last >= 0 && milliseconds(i - last) > SILENT_MS) {
                    heard.add(new Heard(milliseconds(from), milliseconds(last)));
                    from = i;
                }
                from = from < 0 ? i : from;
                last = i;
            }
        }
        heard.add(new Heard(milliseconds(from), milliseconds(last)));
        return heard;
    }

    private static double milliseconds(int samples) {
        return 1000.0 * samples / ToneSamples.RATE;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "LEAD_IN, 0-80",
        "GO, 0-400",
        "START, 0-80 160-240",
        "HALF_WAY, 0-400 480-880",
        "LAST_SECONDS, 0-80 1000-1080 2000-2080",
        "STOP, 0-400 480-560",
        "NEXT, 0-80 160-560",
        "PROBLEM, 0-80 160-240 320-400 480-560 640-720"
    })
    void tonesBeginAndEndWhenTheyShould(Cue cue, String expected) {
        List<Heard> heard = heard(ToneSamples.of(cue, 1));
        String[] tones = expected.split(" ", -1);
        assertEquals(tones.length, heard.size(), heard::toString);
        for (int i = 0; i < tones.length; i++) {
            String[] ends = tones[i].split("-", -1);
            assertEquals(Double.parseDouble(ends[0]), heard.get(i).from(), EDGE_MS);
            assertEquals(Double.parseDouble(ends[1]), heard.get(i).to(), EDGE_MS);
        }
    }

    @Test
    void everyCueHasARhythmOfItsOwnWhateverThePitch() {
        Set<String> rhythms = new HashSet<>();
        for (Cue cue : Cue.values()) {
            StringBuilder rhythm = new StringBuilder();
            for (Heard tone : heard(ToneSamples.of(cue, 1))) {
                rhythm.append(tone.length() < 200 ? '.' : '-');
            }
            assertTrue(rhythms.add(rhythm.toString()), () -> cue + " sounds like another");
        }
    }

    /** On and off on a grid of 10 ms: never less apart than by one whole short tone. */
    @Test
    void anyTwoCuesDifferInWhenTheyAreOnByAToneOrMore() {
        for (Cue one : Cue.values()) {
            for (Cue other : Cue.values()) {
                int differ = 0;
                for (int at = 5; at < 2200; at += 10) {
                    differ += on(one, at) != on(other, at) ? 10 : 0;
                }
                int apart = differ;
                assertTrue(
                        one == other ? apart == 0 : apart >= 80,
                        () -> one + " and " + other + " differ for " + apart + " ms");
            }
        }
    }

    private static boolean on(Cue cue, int milliseconds) {
        return heard(ToneSamples.of(cue, 1)).stream()
                .anyMatch(tone -> tone.from() <= milliseconds && milliseconds <= tone.to());
    }

    @ParameterizedTest
    @EnumSource
    void nothingClipsAtFullVolumeAndNothingClicks(Cue cue) {
        short[] samples = ToneSamples.of(cue, 1);
        int last = 0;
        for (short sample : samples) {
            assertTrue(Math.abs(sample) <= ToneSamples.PEAK);
            // A sine of the highest pitch moves by at most this from one sample to the next.
            double steepest = ToneSamples.PEAK * 2 * Math.PI * 880 / ToneSamples.RATE;
            assertTrue(Math.abs(sample - last) <= 1.05 * steepest);
            last = sample;
        }
        assertEquals(0, samples[0]);
        assertEquals(0, last);
        int loudest = 0;
        for (short sample : samples) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        assertTrue(loudest > 0.99 * ToneSamples.PEAK);
    }

    @Test
    void gainScalesEverySampleAndNoGainIsSilence() {
        short[] full = ToneSamples.of(Cue.STOP, 1);
        short[] half = ToneSamples.of(Cue.STOP, 0.5);
        for (int i = 0; i < full.length; i++) {
            assertEquals(full[i] / 2.0, half[i], 0.75);
        }
        short[] none = ToneSamples.of(Cue.STOP, 0);
        assertEquals(full.length, none.length);
        assertTrue(Arrays.equals(new short[none.length], none));
    }

    @Test
    void pitchIsTheOneMeant() {
        short[] samples = ToneSamples.of(Cue.GO, 1);
        int rises = 0;
        for (int i = 1; i < samples.length; i++) {
            rises += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
        }
        assertEquals(880 * 0.4, rises, 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void aGainOutsideItsRangeIsRefused(double gain) {
        String message =
                assertThrows(IllegalArgumentException.class, () -> ToneSamples.of(Cue.GO, gain))
                        .getMessage();
        assertEquals("gain " + gain + ", must be from 0 to 1", message);
    }
}
