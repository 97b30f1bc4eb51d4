package rigside.bench;

import rigside.screen.View;

/**
 * How the bench looks and sounds.
 *
 * @param style what the terminal can show, and the trigger
 * @param mute whether the bell is silent
 * @param version of the program, for the journal
 */
public record Settings(View.Style style, boolean mute, String version) {}
