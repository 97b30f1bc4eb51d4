package rigside.bench;

import java.util.Optional;
import rigside.rig.SoundVolume;
import rigside.screen.View;

/**
 * How the bench looks and sounds.
 *
 * @param style what the terminal can show, and the trigger
 * @param volume how loud cues are at first; keys change it
 * @param speak the command that speaks cues, if any
 * @param version of the program, for the journal
 */
public record Settings(
        View.Style style, SoundVolume volume, Optional<String> speak, String version) {}
