package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.KeyType;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.screen.Stroke;

class TriggerTest {
    @Test
    void namesAreKnownInAnyCase() {
        assertEquals(Optional.of(Stroke.SPACE), Trigger.parse("Space"));
        assertEquals(Optional.of(Stroke.of(KeyType.PageDown)), Trigger.parse("pagedown"));
        assertEquals(Optional.of(Stroke.of(KeyType.F9)), Trigger.parse("F9"));
        assertEquals(Optional.of(Stroke.of(KeyType.Enter)), Trigger.parse("enter"));
        assertEquals(Optional.of(Stroke.of(KeyType.ArrowRight)), Trigger.parse("right"));
    }

    @Test
    void aDigitASignOrALetterWithoutAnotherUseMeansItself() {
        assertEquals(Optional.of(Stroke.of('b')), Trigger.parse("B"));
        assertEquals(Optional.of(Stroke.of('1')), Trigger.parse("1"));
        assertEquals(Optional.of(Stroke.of('+')), Trigger.parse("+"));
    }

    /** Each has another use, or could never arrive. */
    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {"", " ", "a", "Q", "?", "up", "escape", "F1", "F13", "12", "\u00e9", "\t"})
    void otherKeysAreNoTriggers(String name) {
        assertEquals(Optional.empty(), Trigger.parse(name));
    }

    @Test
    void aRefusalNamesWhatWouldDo() {
        assertTrue(Trigger.refusal("a").startsWith("'a' cannot be the trigger; use a digit"));
        assertTrue(Trigger.refusal("a").contains("PageDown"));
    }
}
