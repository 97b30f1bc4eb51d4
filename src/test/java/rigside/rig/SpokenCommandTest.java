package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real commands of the shell, run one after the other. */
class SpokenCommandTest {
    private static final long PATIENCE_MILLIS = 20_000;

    @TempDir Path folder;

    private SpokenCommand speaks(String command) {
        return SpokenCommand.on(Runnable::run, command, PATIENCE_MILLIS);
    }

    @Test
    void theWordsAreALineOfTheCommandsInput() throws IOException {
        Path heard = folder.resolve("heard");
        SpokenCommand spoken = speaks("cat >> '" + heard + "'");
        spoken.say("half way");
        spoken.say("nächste: vorbeugen; $(touch x)");
        assertEquals("half way\nnächste: vorbeugen; $(touch x)\n", Files.readString(heard));
        assertEquals(Optional.empty(), spoken.trouble());
    }

    @Test
    void whatWentWrongIsToldOnce() {
        SpokenCommand spoken = speaks("no-such-voice");
        spoken.say("pull");
        String trouble = spoken.trouble().orElseThrow();
        assertEquals(
                "spoken cues: 'no-such-voice' does not work, it ends with 127; try it in a"
                        + " terminal",
                trouble);
        spoken.say("stop");
        assertEquals(Optional.empty(), spoken.trouble());
    }

    @Test
    void aCommandThatDoesNotReadIsNoTrouble() {
        SpokenCommand spoken = speaks("true");
        spoken.say("pull");
        assertEquals(Optional.empty(), spoken.trouble());
    }

    @Test
    void aCommandThatTakesTooLongIsEnded() {
        SpokenCommand spoken = SpokenCommand.on(Runnable::run, "sleep 60 | cat", 50);
        spoken.say("pull");
        assertTrue(spoken.trouble().orElseThrow().contains("it takes longer than 0.05 s"));
    }

    @Test
    void whatWaitedToBeSaidIsDroppedForWhatIsSaidLater() throws IOException {
        Queue<Runnable> work = new ArrayDeque<>();
        Path heard = folder.resolve("heard");
        SpokenCommand spoken =
                SpokenCommand.on(work::add, "cat >> '" + heard + "'", PATIENCE_MILLIS);
        spoken.say("three seconds");
        spoken.say("stop");
        work.forEach(Runnable::run);
        assertEquals("stop\n", Files.readString(heard));
    }

    /** The command says the rest of it only after a minute; it is cut by the one that follows. */
    @Test
    void whatIsBeingSaidIsCutByWhatIsSaidLater() throws IOException {
        Path heard = folder.resolve("heard");
        Queue<Runnable> work = new ArrayDeque<>();
        String command =
                "read words; echo $words >> '"
                        + heard
                        + "'; if [ \"$words\" = long ]; then sleep 60; fi";
        SpokenCommand spoken = SpokenCommand.on(work::add, command, PATIENCE_MILLIS);
        spoken.say("long");
        Thread voice = new Thread(work.remove());
        voice.start();
        while (!Files.exists(heard)) {
            Thread.onSpinWait();
        }
        spoken.say("stop");
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> voice.join());
        work.remove().run();
        assertEquals("long\nstop\n", Files.readString(heard));
        assertEquals(Optional.empty(), spoken.trouble());
    }
}
