package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.archive.SomeValues;
import rigside.bench.Pressed;
import rigside.screen.DraftView;
import rigside.screen.DraftView.Mode;
import rigside.screen.View;

/** The interview by its keys, from the first question to the file. */
class DraftingTest {
    private static final View.Style PLAIN = new View.Style(View.Colours.NONE, false);

    @TempDir Path folder;

    private final Deque<KeyStroke> keys = new ArrayDeque<>();
    private final List<DraftView> drawn = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();

    private final class Keyboard implements Drafting.World {
        @Override
        public Optional<Pressed> next(long waitNanos) {
            KeyStroke key = keys.isEmpty() ? new KeyStroke(KeyType.EOF) : keys.poll();
            return Optional.of(new Pressed(key, 0, Pressed.FIRST));
        }

        @Override
        public TerminalSize size() {
            return new TerminalSize(80, 24);
        }

        @Override
        public void draw(DraftView view) {
            drawn.add(view);
        }
    }

    private DraftingTest types(String text) {
        text.chars().forEach(each -> keys.add(new KeyStroke((char) each, false, false)));
        return this;
    }

    private DraftingTest presses(KeyType key, int times) {
        for (int time = 0; time < times; time++) {
            keys.add(new KeyStroke(key));
        }
        return this;
    }

    private DraftingTest presses(KeyType key) {
        return presses(key, 1);
    }

    private Optional<Path> drafted() {
        return drafted(DraftRecord.of(List.of()));
    }

    private Optional<Path> drafted(DraftRecord record) {
        return new Drafting(
                        new Keyboard(),
                        Runnable::run,
                        new OwnFolder(folder.resolve("protocols")),
                        text -> {
                            asked.add(text);
                            return List.of("what it brings");
                        },
                        () -> record,
                        0.15,
                        PLAIN)
                .run();
    }

    private DraftView last() {
        return drawn.get(drawn.size() - 1);
    }

    /** Title, two conditions with their pieces, then Enter up to the end. */
    private DraftingTest answersAll() {
        types("Disc (invented)").presses(KeyType.Enter, 2);
        types("plain").presses(KeyType.Enter, 3);
        types("with disc").presses(KeyType.Enter, 3);
        return presses(KeyType.Enter, 17);
    }

    @Test
    void whatIsAnsweredIsSavedUnderItsTitleAndCanBeRun() throws IOException {
        answersAll().presses(KeyType.Enter, 2);
        Path file = drafted().orElseThrow();
        assertEquals(folder.resolve("protocols/disc-invented.yaml"), file);
        assertEquals(asked, List.of(Files.readString(file)));
        ProtocolFile read = Shelf.all(folder.resolve("protocols")).get(0);
        assertEquals(List.of(), read.problems());
        assertEquals("Disc (invented)", read.protocol().orElseThrow().title());
    }

    @Test
    void downBringsTheSpreadOfSessionsOnRecordIntoTheLine() {
        types("Disc (invented)").presses(KeyType.Enter, 2);
        types("plain").presses(KeyType.Enter, 3);
        types("with disc").presses(KeyType.Enter, 3);
        // Breathing alone: suction, trials, what would matter, which way.
        types(" ").presses(KeyType.Enter, 5).presses(KeyType.ArrowDown).types("0");
        double[] plain = {6.1, 6.3, 5.9};
        double[] disc = {7.2, 7.9, 7.1};
        drafted(DraftRecord.of(List.of(SomeValues.on("2026-03-02", plain, disc).session())));
        DraftView question = last();
        assertTrue(question.ask().contains("inhalation times"), question.ask());
        assertTrue(question.offered());
        assertEquals(question.why().get(0).split("[:(]", -1)[1].strip() + "0", question.typed());
    }

    @Test
    void aNameThatIsTakenIsRefusedAndAnotherIsAsked() throws IOException {
        Files.createDirectories(folder.resolve("protocols"));
        Path there = Files.writeString(folder.resolve("protocols/disc-invented.yaml"), "mine");
        answersAll().presses(KeyType.Enter, 2).types("second").presses(KeyType.Enter);
        assertEquals(folder.resolve("protocols/second.yaml"), drafted().orElseThrow());
        assertEquals("mine", Files.readString(there));
        assertTrue(drawn.stream().anyMatch(each -> each.message().contains("already")));
    }

    @Test
    void fromWhatItBringsOneGoesBackToTheAnswersAndItIsWorkedOutAnew() {
        answersAll().presses(KeyType.ArrowLeft).types("!").presses(KeyType.Enter);
        assertEquals(Optional.empty(), drafted());
        assertEquals(Mode.RESULT, last().mode());
        assertEquals(List.of("what it brings"), last().why());
        assertEquals(2, asked.size());
        assertFalse(asked.get(0).equals(asked.get(1)));
    }

    @Test
    void nothingIsSavedBeforeItIsSeenWhatItBrings() {
        answersAll().presses(KeyType.Enter, 3);
        Optional<Path> saved =
                new Drafting(
                                new Keyboard(),
                                never -> {},
                                new OwnFolder(folder.resolve("protocols")),
                                text -> List.of(),
                                () -> DraftRecord.of(List.of()),
                                0.15,
                                PLAIN)
                        .run();
        assertEquals(Optional.empty(), saved);
        assertEquals(Mode.WORKING, last().mode());
    }

    @Test
    void leavingIsAskedAboutAndWritesNothing() {
        types("Disc").presses(KeyType.Escape).types("n").presses(KeyType.Enter);
        presses(KeyType.Escape).types("y").types("never read");
        assertEquals(Optional.empty(), drafted());
        assertFalse(Files.exists(folder.resolve("protocols")));
        assertEquals(Mode.LEAVING, last().mode());
        assertEquals("never read".length(), keys.size());
        assertTrue(
                drawn.stream()
                        .anyMatch(each -> each.mode() == Mode.LINE && each.typed().equals("Disc")));
    }

    @Test
    void whatIsTypedIsErasedByWholeCharacters() {
        types("a\ud83d\ude37").presses(KeyType.Backspace).types("b");
        drafted();
        assertEquals("ab", last().typed());
    }

    @Test
    void whatADraftBringsIsAdvicePlanAndRehearsal() {
        Draft draft = Draft.begin().typing("Disc (invented)").take();
        String all =
                String.join(
                        "\n",
                        DraftResult.of(
                                draft.text(), ZonedDateTime.parse("2026-01-05T08:00:00Z"), "test"));
        assertTrue(all.startsWith("The protocol has no problems."), all);
        assertTrue(all.contains("this plan settles"), all);
        assertTrue(all.contains("One rehearsal: every value is invented"), all);
        assertTrue(all.contains("compared with Condition 1"), all);
    }
}
