package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.screen.SessionScreen;
import rigside.screen.View;
import rigside.screen.View.Page;
import rigside.screen.View.Prompt;
import rigside.screen.View.Style;
import rigside.session.Gated;
import rigside.session.Input;
import rigside.session.State;
import rigside.session.Story;

/** Keys, told one after another; nothing answers, so the state stays. */
class ReactionTest {
    private State state = Story.of("/session/small.yaml").state();
    private Ui ui = Ui.START;
    private Optional<Input> input = Optional.empty();
    private boolean leaves;

    private ReactionTest in(State other) {
        state = other;
        return this;
    }

    private ReactionTest press(KeyStroke key) {
        Shown shown = Shown.of(state, Analysis.of(state));
        View plain = ui.view(state, shown, 0, new Style(View.Colours.NONE, false));
        View view = plain.with(SessionScreen.seen(plain, new TerminalSize(80, 24)));
        Reaction reaction = Reaction.to(ui, view, key);
        ui = reaction.ui();
        input = reaction.input();
        leaves = reaction.leaves();
        return this;
    }

    private ReactionTest press(KeyType type) {
        return press(new KeyStroke(type));
    }

    private ReactionTest press(char character) {
        return press(new KeyStroke(character, false, false));
    }

    private ReactionTest ctrl(char character) {
        return press(new KeyStroke(character, true, false));
    }

    private ReactionTest type(String text) {
        text.chars().forEach(each -> press((char) each));
        return this;
    }

    @Test
    void aNoThatEndsADonningAsksWhatWasSeenAndEnterAloneTakesItBack() {
        State atSealCheck = Story.atFirstDonning().goOn().goOn().state();
        in(atSealCheck).press('n').press(KeyType.Enter);
        assertEquals(Optional.empty(), input);
        press('n').type("air").press(KeyType.Enter);
        assertEquals(Optional.of(new Input.CheckFailed("air")), input);
    }

    @Test
    void aNoThatOnlyRepeatsIsTakenAtOnce() {
        in(Story.atFirstDonning().goOn().state()).press('n');
        assertEquals(Optional.of(new Input.Answered(false)), input);
    }

    private static State filling() {
        return Story.of("/session/small.yaml").goOn().state();
    }

    private void says(Input expected) {
        assertEquals(Optional.of(expected), input);
    }

    private void saysNothing() {
        assertEquals(Optional.empty(), input);
    }

    @Test
    void enterGoesOn() {
        press(KeyType.Enter).says(new Input.GoOnPressed());
    }

    @Test
    void whatIsTypedIsTakenByEnter() {
        in(filling()).type("W 1").press(KeyType.Enter).says(new Input.Typed("W 1"));
        assertEquals("W 1", ui.typed());
    }

    @Test
    void lettersThatAreKeysElsewhereAreTextWhereTextIsTyped() {
        in(filling()).type("quote").saysNothing();
        assertEquals("quote", ui.typed());
        assertFalse(leaves);
    }

    @Test
    void atTheValueOfAGateCtrlRReadsItAgainWithoutAQuestionAndDropsWhatWasTyped() {
        in(Gated.zeroRead().state()).type("0.5").ctrl('r').says(new Input.RetakeAsked(""));
        assertEquals("", ui.typed());
        assertEquals(Optional.empty(), ui.prompt());
        in(Gated.zeroRead().state()).press('r').saysNothing();
        assertEquals("r", ui.typed());
    }

    @Test
    void atAGateThatIsNotMetAReasonIsAskedBeforeGoingOnAllTheSame() {
        State missed = Gated.zeroRead().type("5").state();
        in(missed).press('l').saysNothing();
        assertEquals(Optional.of(Prompt.GATE_REASON), ui.prompt());
        press(KeyType.Enter).saysNothing();
        press('l').type("no filter").press(KeyType.Enter);
        says(new Input.LeaveOutAsked("no filter"));
    }

    @Test
    void atAGateThatIsNotMetEnterReadsItAgain() {
        in(Gated.zeroRead().type("5").state()).press(KeyType.Enter).says(new Input.GoOnPressed());
    }

    @Test
    void backspaceTakesTheLastCharacterBackWhateverItsSize() {
        in(filling()).type("a\ud83d\ude00");
        press(KeyType.Backspace);
        assertEquals("a", ui.typed());
        press(KeyType.Backspace).press(KeyType.Backspace);
        assertEquals("", ui.typed());
    }

    @Test
    void noMoreIsTypedThanALineTakes() {
        in(filling()).type("x".repeat(600));
        assertEquals(500, ui.typed().length());
    }

    @Test
    void aNoteIsAskedForAndWritten() {
        press('o').saysNothing();
        assertEquals(Optional.of(Prompt.NOTE), ui.prompt());
        type("cold room").press(KeyType.Enter).says(new Input.NoteTyped("cold room"));
    }

    @Test
    void anEmptyPromptIsDropped() {
        press('o').press(KeyType.Enter).saysNothing();
        assertEquals(Optional.empty(), ui.prompt());
    }

    @Test
    void aPromptDoesNotSwallowWhatWasTypedBeforeIntoItself() {
        in(filling()).type("W1").ctrl('o').type("n").press(KeyType.Enter);
        says(new Input.NoteTyped("n"));
    }

    @Test
    void escapeStopsAtOnceAndDropsThePrompt() {
        press('o').type("ab").press(KeyType.Escape).says(new Input.HaltPressed());
        assertEquals(Optional.empty(), ui.prompt());
        assertEquals("", ui.typed());
        assertEquals(Page.STEP, ui.page());
    }

    @Test
    void pagesAreTurned() {
        press('t');
        assertEquals(Page.TALLY, ui.page());
        press('e');
        assertEquals(Page.ENTRIES, ui.page());
        press(KeyType.F1);
        assertEquals(Page.HELP, ui.page());
        press(KeyType.Enter).saysNothing();
        assertEquals(Page.STEP, ui.page());
    }

    @Test
    void anEntryIsStruckOutByTheNumberOfTheSelectedLine() {
        State one = Story.of("/session/small.yaml").goOn().type("W1").state();
        in(one).ctrl('e').press('v');
        assertEquals(Optional.empty(), ui.prompt(), "a heading cannot be struck out");
        press(KeyType.ArrowDown).press('v');
        assertEquals(Optional.of(Prompt.VOID_REASON), ui.prompt());
        type("wrong code").press(KeyType.Enter).says(new Input.VoidAsked(1, "wrong code"));
    }

    @Test
    void aDonningIsStruckOutWhole() {
        State whole = Story.atFirstDonning().donning("20", 6).state();
        in(whole).press('e').press('v');
        assertEquals(Optional.of(Prompt.STRIKE_REASON), ui.prompt());
        type("strap").press(KeyType.Enter).says(new Input.StrikeAsked(1, "strap"));
    }

    @Test
    void theSelectionNeverGoesAboveTheFirstLine() {
        press('e').press(KeyType.ArrowUp);
        assertEquals(0, ui.selected());
    }

    @Test
    void ctrlCAndTheEndOfInputLeaveWhateverIsGoingOn() {
        in(filling()).ctrl('c');
        assertTrue(leaves);
        leaves = false;
        press('o').press(KeyType.EOF);
        assertTrue(leaves);
    }

    @Test
    void keysThatMeanNothingChangeNothing() {
        Ui before = ui;
        for (KeyType type : KeyType.values()) {
            if (type == KeyType.Home || type == KeyType.Insert || type == KeyType.F12) {
                press(type).saysNothing();
            }
        }
        ctrl('z').saysNothing();
        assertEquals(before, ui);
        assertFalse(leaves);
    }

    @Test
    void aMessageIsGoneWithTheNextKey() {
        ui = ui.saying("something");
        press(KeyType.Home);
        assertEquals(Optional.empty(), ui.message());
    }

    @Test
    void oneKeyClearsWhatIsTypedAndUndoesOnlyWithNothingTyped() {
        State one = Story.of("/session/small.yaml").goOn().type("W1").state();
        in(one).type("21.55").ctrl('u').saysNothing();
        assertEquals("", ui.typed());
        ctrl('u').says(new Input.UndoAsked());
        press(KeyType.Escape);
    }

    @Test
    void aPromptIsClearedByTheSameKeyAndStaysOpen() {
        press('o').type("cold").ctrl('u').saysNothing();
        assertEquals("", ui.typed());
        assertEquals(Optional.of(Prompt.NOTE), ui.prompt());
    }

    @Test
    void pagesGoNoFurtherThanThereIsToSee() {
        press(KeyType.F1).press(KeyType.PageUp);
        assertEquals(0, ui.selected());
        press(KeyType.PageDown);
        int page = ui.selected();
        press(KeyType.End);
        int end = ui.selected();
        assertTrue(page > 1 && end > page, page + " to " + end);
        press(KeyType.PageDown);
        assertEquals(end, ui.selected());
        press(KeyType.Home);
        assertEquals(0, ui.selected());
    }

    @Test
    void soundIsPutOffAndOnByOneKeyAndByCtrlWhereTextIsTyped() {
        press('s');
        assertTrue(ui.volume().muted());
        assertEquals(Optional.of("sound off"), ui.message());
        assertEquals(Optional.empty(), input);
        ctrl('s');
        assertFalse(ui.volume().muted());
        assertEquals(Optional.of("sound on, volume 8 of 10"), ui.message());
    }

    @Test
    void onTheHelpPageSignsChangeTheVolume() {
        press(KeyType.F1).press('+');
        assertEquals(9, ui.volume().level());
        press('=').press('-').press('-');
        assertEquals(8, ui.volume().level());
        press(KeyType.Enter).press('+');
        assertEquals(8, ui.volume().level());
    }

    @Test
    void typedLettersAreTextAndNoSound() {
        in(Story.of("/session/small.yaml").goOn().state()).type("s-+");
        assertEquals("s-+", ui.typed());
        assertFalse(ui.volume().muted());
    }
}
