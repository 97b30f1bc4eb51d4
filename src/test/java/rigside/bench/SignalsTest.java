package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.rig.Cue;
import rigside.rig.SoundVolume;
import rigside.session.State;
import rigside.session.Story;

class SignalsTest {
    private static final State STATE = Story.atFirstDonning().state();
    private static final SoundVolume LOUD = new SoundVolume(10, false);

    private final List<String> heard = new ArrayList<>();
    private boolean device = true;

    private final Signals signals =
            new Signals(
                    (cue, gain) -> {
                        if (device) {
                            heard.add(cue.word() + " at " + gain);
                        }
                        return device;
                    },
                    new Signals.Voice() {
                        @Override
                        public void say(String words) {
                            heard.add("'" + words + "'");
                        }

                        @Override
                        public Optional<String> trouble() {
                            return Optional.empty();
                        }
                    },
                    () -> heard.add("bell"),
                    () -> heard.add("end"));

    @Test
    void aCueIsSoundedAndSpoken() {
        assertEquals("tones", given(LOUD, Cue.GO));
        assertEquals(List.of("go at 1.0", "'pull'"), heard);
    }

    @Test
    void whereNoDeviceAnswersTheBellRingsOnce() {
        device = false;
        assertEquals("bell", given(LOUD, Cue.START));
        assertEquals(List.of("bell"), heard);
    }

    @Test
    void mutedNothingIsHeardAndTheRecordSaysSo() {
        device = false;
        assertEquals("muted", given(LOUD.toggled(), Cue.GO));
        device = true;
        assertEquals("muted", given(LOUD.toggled(), Cue.GO));
        assertEquals(List.of(), heard);
    }

    @Test
    void theVolumeIsThatOfTheMoment() {
        given(LOUD.softer().softer(), Cue.LEAD_IN);
        assertEquals(List.of("lead-in at " + new SoundVolume(8, false).gain()), heard);
    }

    @Test
    void ofSeveralAtOnceTheMostPressingIsGiven() {
        assertEquals("tones", given(LOUD, Cue.LAST_SECONDS, Cue.PROBLEM, Cue.NEXT));
        assertEquals("problem at 1.0", heard.get(0));
        assertEquals(2, heard.size());
    }

    @Test
    void noCueIsNothing() {
        assertEquals(Optional.empty(), signals.give(List.of(), LOUD));
        assertEquals(List.of(), heard);
    }

    @Test
    void closingEndsWhatSoundsAndSpeaks() {
        signals.close();
        assertEquals(List.of("end"), heard);
    }

    private String given(SoundVolume volume, Cue... cues) {
        Signals.Given given = signals.give(List.of(cues), volume).orElseThrow();
        signals.say(given, STATE);
        return given.how();
    }
}
