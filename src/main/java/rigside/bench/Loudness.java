package rigside.bench;

import rigside.rig.SoundVolume;

/** How loud cues are, from one session to the next. */
public interface Loudness {
    /** As it was left last. */
    SoundVolume volume();

    /** Remembers what a key changed it to. */
    void remember(SoundVolume volume);

    /** One that nothing changes. */
    static Loudness of(SoundVolume always) {
        return new Loudness() {
            @Override
            public SoundVolume volume() {
                return always;
            }

            @Override
            public void remember(SoundVolume volume) {}
        };
    }
}
