package rigside.bench;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rigside.rig.Cue;
import rigside.rig.SoundPlayer;
import rigside.rig.SoundVolume;
import rigside.rig.SpokenCommand;
import rigside.runner.SpokenWords;
import rigside.session.State;

/** Gives cues to the ear: tones, or the terminal's bell where there are none, and words. */
final class Signals implements AutoCloseable {
    private static final String MUTED = "muted";

    private final Tones tones;
    private final Voice voice;
    private final Runnable bell;
    private final Runnable end;

    /** What sounds a cue. */
    interface Tones {
        /** Whether it is sounded; never waits. */
        boolean play(Cue cue, double gain);
    }

    /** What speaks. */
    interface Voice {
        /** Never waits. */
        void say(String words);

        /** What went wrong, told once. */
        Optional<String> trouble();

        /** Says nothing. */
        Voice NONE =
                new Voice() {
                    @Override
                    public void say(String words) {}

                    @Override
                    public Optional<String> trouble() {
                        return Optional.empty();
                    }
                };
    }

    /**
     * A cue that was given.
     *
     * @param how tones, bell or muted
     */
    record Given(Cue cue, String how) {}

    Signals(Tones tones, Voice voice, Runnable bell, Runnable end) {
        this.tones = tones;
        this.voice = voice;
        this.bell = bell;
        this.end = end;
    }

    /**
     * On the computer's sound device, if one answers.
     *
     * @param speak the command that speaks, if any
     */
    static Signals of(Optional<String> speak, Runnable bell) {
        SoundPlayer player = SoundPlayer.onDevice();
        Optional<SpokenCommand> spoken = speak.map(SpokenCommand::of);
        return new Signals(
                player::play,
                spoken.map(Signals::voice).orElse(Voice.NONE),
                bell,
                () -> {
                    player.close();
                    spoken.ifPresent(SpokenCommand::close);
                });
    }

    private static Voice voice(SpokenCommand command) {
        return new Voice() {
            @Override
            public void say(String words) {
                command.say(words);
            }

            @Override
            public Optional<String> trouble() {
                return command.trouble();
            }
        };
    }

    /** Sounds the most pressing of some cues: of two at once neither would be understood. */
    Optional<Given> give(List<Cue> cues, SoundVolume volume) {
        if (cues.isEmpty()) {
            return Optional.empty();
        }
        Cue cue = Collections.max(cues);
        if (volume.muted()) {
            return Optional.of(new Given(cue, MUTED));
        }
        boolean sounded = tones.play(cue, volume.gain());
        if (!sounded) {
            bell.run();
        }
        return Optional.of(new Given(cue, sounded ? "tones" : "bell"));
    }

    /**
     * Says what was given, if it was not muted.
     *
     * @param state where the session stands after what is cued
     */
    void say(Given given, State state) {
        if (!given.how().equals(MUTED)) {
            SpokenWords.of(given.cue(), state).ifPresent(voice::say);
        }
    }

    /** What went wrong with speaking, in words for the tester, told once. */
    Optional<String> trouble() {
        return voice.trouble();
    }

    @Override
    public void close() {
        end.run();
    }
}
