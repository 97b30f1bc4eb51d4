package rigside.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.bench.Loudness;
import rigside.rig.SoundVolume;

/**
 * The volume of cues, kept in a small file that may be edited: {@code volume: 8}, {@code muted}.
 */
public final class KeptVolume implements Loudness {
    private static final String NAME = "sound.yaml";

    private static final Pattern WRITTEN =
            Pattern.compile("volume: (10|[1-9])\\Rmuted: (yes|no)\\R?");

    private final Path file;
    private SoundVolume volume;

    private KeptVolume(Path file, SoundVolume volume) {
        this.file = file;
        this.volume = volume;
    }

    /**
     * As it was left last; the usual volume where nothing is kept, or nothing that can be read.
     *
     * @param home the folder below which everything is kept
     * @param mute whether to begin without sound, whatever is kept
     */
    public static KeptVolume in(Path home, boolean mute) {
        Path file = home.resolve(NAME);
        SoundVolume kept = read(file);
        return new KeptVolume(file, mute && !kept.muted() ? kept.toggled() : kept);
    }

    private static SoundVolume read(Path file) {
        try {
            Matcher written = WRITTEN.matcher(Files.readString(file, StandardCharsets.UTF_8));
            return written.matches()
                    ? new SoundVolume(
                            Integer.parseInt(written.group(1)), written.group(2).equals("yes"))
                    : SoundVolume.USUAL;
        } catch (IOException none) {
            return SoundVolume.USUAL;
        }
    }

    @Override
    public SoundVolume volume() {
        return volume;
    }

    /** Where it cannot be written it is remembered until the program ends. */
    @Override
    public void remember(SoundVolume changed) {
        volume = changed;
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    "volume: "
                            + changed.level()
                            + "\nmuted: "
                            + (changed.muted() ? "yes" : "no")
                            + "\n");
        } catch (IOException unwritable) {
            // Nothing depends on it.
        }
    }
}
