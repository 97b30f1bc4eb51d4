package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FiguresTest {

    @Test
    void aListReadsLikeOne() {
        assertEquals("", Figures.list(List.of()));
        assertEquals("3", Figures.list(List.of(3)));
        assertEquals("3 and 5", Figures.list(List.of(3, 5)));
        assertEquals("3, 5 and 6", Figures.list(List.of(3, 5, 6)));
    }
}
