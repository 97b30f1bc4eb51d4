package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ConsoleTest {
    private static final long LONG = TimeUnit.SECONDS.toNanos(20);

    private final DefaultVirtualTerminal terminal =
            new DefaultVirtualTerminal(new TerminalSize(20, 5));
    private final AtomicInteger restored = new AtomicInteger();
    private final Presses keys = new Presses();
    private Console console;

    @BeforeEach
    void open() throws IOException {
        console = new Console(terminal, keys, restored::incrementAndGet);
    }

    @AfterEach
    void close() {
        console.close();
    }

    @Test
    void aPictureIsDrawn() {
        console.draw(graphics -> graphics.putString(2, 1, "hello"));
        assertEquals("  hello", line(1));
    }

    @Test
    void whatAPictureNoLongerHoldsIsGone() {
        console.draw(graphics -> graphics.putString(0, 0, "first"));
        console.draw(graphics -> graphics.putString(0, 1, "second"));
        assertEquals("", line(0));
        assertEquals("second", line(1));
    }

    @Test
    void keysComeInTheOrderPressedWithStampsInThatOrder() {
        keys.press(new KeyStroke('a', false, false));
        keys.press(new KeyStroke(KeyType.Enter));
        Pressed first = console.next(LONG).orElseThrow();
        Pressed second = console.next(LONG).orElseThrow();
        assertEquals('a', first.key().getCharacter());
        assertEquals(KeyType.Enter, second.key().getKeyType());
        assertTrue(first.nanos() <= second.nanos());
    }

    @Test
    void aKeyboardThatFailsInAnyWayHasGoneAway() {
        keys.failing(new IllegalStateException("a sequence nobody understands"));
        assertTrue(console.next(LONG).orElseThrow().isEnd());
    }

    @Test
    void withoutAKeyWaitingEnds() {
        assertTrue(console.next(1).isEmpty());
    }

    @Test
    void aChangeOfSizeWantsANewPictureOfThatSize() {
        console.draw(graphics -> {});
        assertFalse(console.isStale());
        terminal.setTerminalSize(new TerminalSize(30, 8));
        assertTrue(console.isStale());
        console.draw(graphics -> graphics.putString(25, 7, "end"));
        assertEquals(new TerminalSize(30, 8), console.size());
        assertEquals(" ".repeat(25) + "end", line(7));
        assertFalse(console.isStale());
    }

    @Test
    void theTerminalIsPutBackOnce() {
        console.close();
        console.close();
        assertEquals(1, restored.get());
    }

    private String line(int row) {
        StringBuilder text = new StringBuilder();
        for (int column = 0; column < terminal.getTerminalSize().getColumns(); column++) {
            text.append(terminal.getCharacter(column, row).getCharacterString());
        }
        return text.toString().stripTrailing();
    }
}
