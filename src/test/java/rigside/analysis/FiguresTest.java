package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

    @ParameterizedTest
    @CsvSource({"0,0 %", "0.004,less than 1 %", "0.123,12 %", "0.996,more than 99 %", "1,100 %"})
    void aChanceIsNeverRoundedToCertainty(double share, String words) {
        assertEquals(words, Figures.percent(share));
    }

    @Test
    void aListReadsLikeOne() {
        assertEquals("", Figures.list(List.of()));
        assertEquals("3", Figures.list(List.of(3)));
        assertEquals("3 and 5", Figures.list(List.of(3, 5)));
        assertEquals("3, 5 and 6", Figures.list(List.of(3, 5, 6)));
    }
}
