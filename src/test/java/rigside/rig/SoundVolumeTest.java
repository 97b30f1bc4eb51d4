package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoundVolumeTest {
    /** 3 dB a level below the loudest: 10^(-3 n / 20). */
    @ParameterizedTest(name = "level {0}")
    @CsvSource({"10, 1", "9, 0.70795", "8, 0.50119", "1, 0.044668"})
    void eachLevelIsThreeDecibelsBelowTheNext(int level, double gain) {
        assertEquals(gain, new SoundVolume(level, false).gain(), 5e-6);
    }

    @Test
    void mutedIsSilentAndComesBackAtTheSameLevel() {
        SoundVolume muted = SoundVolume.USUAL.toggled();
        assertEquals(0, muted.gain());
        assertEquals(SoundVolume.USUAL, muted.toggled());
    }

    @Test
    void aChangeOfLevelIsHeardAndStaysWithinTheRange() {
        assertEquals(new SoundVolume(9, false), new SoundVolume(8, true).louder());
        assertEquals(new SoundVolume(10, false), new SoundVolume(10, false).louder());
        assertEquals(new SoundVolume(1, false), new SoundVolume(1, false).softer());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 11, -3})
    void aLevelOutsideItsRangeIsRefused(int level) {
        assertEquals(
                "volume " + level + ", must be 1 to 10",
                assertThrows(IllegalArgumentException.class, () -> new SoundVolume(level, false))
                        .getMessage());
    }
}
