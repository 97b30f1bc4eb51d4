package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.rig.SoundVolume;

class KeptVolumeTest {
    @TempDir Path home;

    @Test
    void itIsAsItWasLeft() {
        Path below = home.resolve("not/there/yet");
        for (int level = 1; level <= SoundVolume.LOUDEST; level++) {
            for (boolean muted : new boolean[] {false, true}) {
                SoundVolume volume = new SoundVolume(level, muted);
                KeptVolume.in(below, false).remember(volume);
                assertEquals(volume, KeptVolume.in(below, false).volume());
            }
        }
    }

    @Test
    void beginningWithoutSoundChangesNothingThatIsKept() {
        KeptVolume.in(home, false).remember(new SoundVolume(5, false));
        assertEquals(new SoundVolume(5, true), KeptVolume.in(home, true).volume());
        assertEquals(new SoundVolume(5, false), KeptVolume.in(home, false).volume());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "volume: 0\nmuted: no\n", "volume: 11\nmuted: no\n", "loud"})
    void whatMakesNoSenseIsTheUsualVolume(String text) throws IOException {
        Files.writeString(home.resolve("sound.yaml"), text);
        assertEquals(SoundVolume.USUAL, KeptVolume.in(home, false).volume());
    }
}
