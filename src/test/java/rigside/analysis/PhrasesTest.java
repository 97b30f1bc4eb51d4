package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PhrasesTest {

    @Test
    void aListReadsLikeOne() {
        assertEquals("", Phrases.list(List.of()));
        assertEquals("3", Phrases.list(List.of(3)));
        assertEquals("3 and 5", Phrases.list(List.of(3, 5)));
        assertEquals("3, 5 and 6", Phrases.list(List.of(3, 5, 6)));
    }
}
